package tuttarco.seating;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.pose.PeopleFinder;
import tuttarco.pose.Pose;
import tuttarco.pose.PoseModel;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Desks;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.Proposal;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.HiddenMarkovReader;
import tuttarco.strokes.OtherMovements;
import tuttarco.strokes.StrokeReader;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.ArmTrackers;
import tuttarco.tracks.BodySeat;
import tuttarco.tracks.SectionTracker;
import tuttarco.video.Clip;
import tuttarco.video.Frame;
import tuttarco.video.Stills;

/**
 * Proposes one seat for each player who bows: who stays in the picture, read like any player, and kept if the arm goes to
 * and fro as bows do.
 */
public final class SeatFinder {
    /** Pictures in which people are looked for at the least; up to twice as many. */
    private static final int STILLS = 5;

    private final PoseModel model;
    private final StrokeReader reader = new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT);

    public SeatFinder(PoseModel model) {
        this.model = model;
    }

    /** Told how far the work has come. */
    @FunctionalInterface
    public interface Progress {
        /**
         * @param clipTimeS seconds of the clip read so far
         * @param lengthS length of the clip; zero where it is not known
         */
        void reached(double clipTimeS, double lengthS);
    }

    /** What a picture of the clip shows, and who stays in it. */
    private record Seen(List<Person> people, BufferedImage picture) {}

    /**
     * The seats in a clip; empty if not a single frame could be decoded.
     *
     * @param instrument what all of them play
     * @throws InputException if the clip can't be opened
     * @throws InterruptedException if the thread was interrupted
     */
    public Optional<Proposal> in(Path video, Instrument instrument, LeaderSide leaderSide, Progress progress)
            throws InputException, InterruptedException {
        Optional<Seen> seen = look(video);
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        try (Clip clip = Clip.open(video);
                ArmTrackers arms = ArmTrackers.byBody(model)) {
            int widthPx = clip.facts().widthPx();
            int heightPx = clip.facts().heightPx();
            double lengthS = clip.facts().durationS().orElse(0.0);
            List<Person> people = seen.get().people();
            List<Player> anybody = people.stream()
                    .map(p -> anybody(BodySeat.of(p.poses(), widthPx, heightPx), instrument))
                    .toList();
            List<ArmTrack> tracks = new SectionTracker(
                            arms::of, Runtime.getRuntime().availableProcessors())
                    .track(clip, anybody, timeS -> progress.reached(timeS, lengthS))
                    .tracks();
            List<Candidate> candidates = IntStream.range(0, people.size())
                    .mapToObj(i -> candidate(people.get(i), tracks.get(i)))
                    .toList();
            return Optional.of(proposal(
                    withoutDoubles(candidates),
                    seen.get().picture(),
                    leaderSide,
                    instrument,
                    clip.trouble().stream().toList()));
        }
    }

    private Optional<Seen> look(Path video) throws InputException, InterruptedException {
        try (Clip clip = Clip.open(video);
                Stills stills = Stills.of(clip, STILLS);
                PoseNets nets = new PoseNets(model)) {
            List<Frame> frames = stills.frames();
            if (frames.isEmpty()) {
                return Optional.empty();
            }
            List<Person> people = People.in(frames, PeopleFinder.ofSection(nets));
            return Optional.of(new Seen(people, frames.get(frames.size() / 2).picture()));
        }
    }

    private static Player anybody(SeatBox seat, Instrument instrument) {
        return new Player("somebody", 1, Place.OUTSIDE, instrument, seat, Optional.empty(), false);
    }

    private Candidate candidate(Person person, ArmTrack track) {
        ArmTrack signed = withSigns(track);
        return new Candidate(person, track, Bowing.of(track, OtherMovements.told(reader.read(signed), signed)));
    }

    /** The track as if it were known which way is down: an arm goes to and fro whichever it is. */
    private static ArmTrack withSigns(ArmTrack track) {
        List<ArmSample> samples =
                track.samples().stream().map(SeatFinder::withSign).toList();
        return new ArmTrack(track.player(), track.startS(), track.endS(), samples, track.body(), track.shots());
    }

    private static ArmSample withSign(ArmSample sample) {
        if (sample instanceof ArmSample.ByBody seen) {
            return new ArmSample.ByBody(seen.timeS(), seen.velocity(), seen.noise(), 1, seen.reach(), seen.gesture());
        }
        return sample instanceof ArmSample.Seen seen
                ? new ArmSample.ByFlow(seen.timeS(), seen.velocity(), seen.noise(), 1, seen.gesture())
                : sample;
    }

    /** Of several who move one arm it belongs to the largest: he or she is in front. */
    static List<Candidate> withoutDoubles(List<Candidate> candidates) {
        List<Candidate> once = new ArrayList<>();
        candidates.stream()
                .filter(c -> c.bowing() != Bowing.NONE)
                .sorted(Comparator.comparingDouble(Candidate::areaPx).reversed())
                .filter(c -> once.stream().noneMatch(c::sameArm))
                .forEach(once::add);
        return once;
    }

    private static Proposal proposal(
            List<Candidate> candidates,
            BufferedImage picture,
            LeaderSide leaderSide,
            Instrument instrument,
            List<String> notes) {
        List<Desks.Spot> spots =
                with(candidates, Bowing.CLEAR).map(SeatFinder::spot).toList();
        List<SeatBox> unsure =
                with(candidates, Bowing.UNSURE).map(Candidate::seat).toList();
        return new Proposal(Desks.of(spots, leaderSide, instrument), unsure, picture, notes);
    }

    private static Stream<Candidate> with(List<Candidate> candidates, Bowing bowing) {
        return candidates.stream().filter(c -> c.bowing() == bowing);
    }

    private static Desks.Spot spot(Candidate candidate) {
        List<Pose> poses = candidate.person().poses();
        return new Desks.Spot(
                candidate.seat(),
                mean(poses, Pose::shouldersXPx),
                mean(poses, Pose::shouldersYPx),
                mean(poses, Pose::radiusPx));
    }

    private static double mean(List<Pose> poses, ToDoubleFunction<Pose> value) {
        return poses.stream().mapToDouble(value).average().orElseThrow();
    }
}
