package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.pose.PoseModel;
import tuttarco.seats.Player;
import tuttarco.strokes.HiddenMarkovReader;
import tuttarco.strokes.OtherMovements;
import tuttarco.strokes.Reading;
import tuttarco.strokes.StrokeKind;
import tuttarco.strokes.StrokeReader;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.ArmTrackers;
import tuttarco.tracks.Hand;
import tuttarco.tracks.SectionTracker;
import tuttarco.tracks.SectionTracker.Tracked;
import tuttarco.video.Clip;

/** From a clip and its seats to what each player's bow did. The marking is unknown here. */
public final class SectionReader {
    private final Supplier<ArmTrackers> trackers;
    private final StrokeReader reader;
    private final int workers;
    private final String settings;

    /**
     * @param workers how many arms are followed at a time; changes nothing in what is read
     * @param settings the trackers' and the reader's settings in words, for the results
     */
    public SectionReader(Supplier<ArmTrackers> trackers, StrokeReader reader, int workers, String settings) {
        this.trackers = trackers;
        this.settings = settings;
        this.reader = reader;
        this.workers = workers;
    }

    /** Poses where the model is at hand, flow and hidden Markov model, on all cores. */
    public static SectionReader standard() {
        HiddenMarkovReader.Settings settings = HiddenMarkovReader.Settings.DEFAULT;
        Optional<PoseModel> model = PoseModel.installed();
        return new SectionReader(
                () -> model.map(ArmTrackers::byBody).orElseGet(ArmTrackers::byFlow),
                new HiddenMarkovReader(settings),
                Runtime.getRuntime().availableProcessors(),
                (model.isPresent() ? "poses and optical flow" : "optical flow") + "; hidden Markov model " + settings);
    }

    /** What a reader of the results needs to repeat the reading, in words. */
    public String settings() {
        return settings;
    }

    /**
     * Reads a clip.
     *
     * @throws InputException if the clip can't be opened or a seat lies outside its picture
     * @throws NothingSeenException if no frame could be decoded or no arm was seen at all
     * @throws InterruptedException if the thread was interrupted
     */
    public SectionReading read(Path video, List<Player> players, Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        try (Clip clip = Clip.open(video);
                ArmTrackers arms = trackers.get()) {
            for (Player player : players) {
                requireInside(player, clip);
            }
            double lengthS = clip.facts().durationS().orElse(0.0);
            progress.reached(0, lengthS);
            Tracked tracked = new SectionTracker(arms::of, workers)
                    .track(clip, players, timeS -> progress.reached(timeS, lengthS));
            List<Reading> readings = tracked.tracks().stream()
                    .map(track -> OtherMovements.told(reader.read(track), track))
                    .toList();
            if (readings.stream().allMatch(SectionReader::unseen)) {
                throw new NothingSeenException("No bow arm could be seen in " + InputBytes.name(video)
                        + "; check that the picture is bright enough, that the seats are where the players are,"
                        + " and that the clip has at least ten frames a second.");
            }
            return new SectionReading(
                    clip.facts(), tracked.endS(), tracked.tracks(), readings, notes(clip, tracked.tracks(), readings));
        }
    }

    private static void requireInside(Player player, Clip clip) throws InputException {
        int widthPx = clip.facts().widthPx();
        int heightPx = clip.facts().heightPx();
        if (!player.seat().fitsInto(widthPx, heightPx)) {
            throw new InputException("The seat of " + Plain.text(player.label()) + " (" + player.seat()
                    + ") reaches outside the picture, which is " + widthPx + "x" + heightPx
                    + " pixels; move it inside.");
        }
    }

    private static boolean unseen(Reading reading) {
        return reading.strokes().stream().allMatch(s -> s.kind() == StrokeKind.UNSEEN);
    }

    private static List<String> notes(Clip clip, List<ArmTrack> tracks, List<Reading> readings) {
        List<String> notes = new ArrayList<>();
        clip.trouble().ifPresent(notes::add);
        notes.addAll(leftHands(tracks));
        for (Reading reading : readings) {
            if (unseen(reading)) {
                notes.add(Plain.text(reading.player().label())
                        + " could not be seen: too dark, too small, or too few frames a second.");
            }
        }
        return notes;
    }

    /** Bows in left hands: a mirrored picture if most are, else players to look at. */
    private static List<String> leftHands(List<ArmTrack> tracks) {
        List<ArmTrack> known =
                tracks.stream().filter(t -> t.bowHand().isPresent()).toList();
        List<String> left = known.stream()
                .filter(t -> t.bowHand().get() == Hand.LEFT)
                .map(t -> Plain.text(t.player().label()))
                .toList();
        if (!left.isEmpty() && 2 * left.size() > known.size()) {
            return List.of("The picture seems to be mirrored, as front cameras do: bows are in left hands."
                    + " Strokes are read as the bows go all the same.");
        }
        return left.stream()
                .map(label ->
                        label + " seems to bow with the left hand; if that is wrong, look at this reading with care.")
                .toList();
    }

    /** Told how far the reading has come. */
    @FunctionalInterface
    public interface Progress {
        /**
         * @param clipTimeS seconds of the clip read so far
         * @param lengthS length of the clip; zero where it is not known
         */
        void reached(double clipTimeS, double lengthS);
    }
}
