package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import tuttarco.files.Cache;
import tuttarco.files.CacheEntry;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;
import tuttarco.files.Sha256;
import tuttarco.pose.PoseModel;
import tuttarco.seats.Player;
import tuttarco.strokes.Bows;
import tuttarco.strokes.HiddenMarkovReader;
import tuttarco.strokes.OtherMovements;
import tuttarco.strokes.Reading;
import tuttarco.strokes.StrokeKind;
import tuttarco.strokes.StrokeReader;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.ArmTrackers;
import tuttarco.tracks.SectionTracker;
import tuttarco.tracks.SectionTracker.Tracked;
import tuttarco.tracks.TrackKey;
import tuttarco.tracks.UnreadableMemoException;
import tuttarco.video.Clip;

/** From a clip and its seats to what each player's bow did. The marking is unknown here. */
public final class SectionReader {
    private final Supplier<ArmTrackers> trackers;
    private final StrokeReader reader;
    private final int workers;
    private final String settings;
    private final Optional<Cache> cache;

    /**
     * @param workers how many arms are followed at a time; changes nothing in what is read
     * @param settings the trackers' and the reader's settings in words, for the results
     * @param cache where tracks are kept for another run; changes nothing in what is read
     */
    public SectionReader(
            Supplier<ArmTrackers> trackers, StrokeReader reader, int workers, String settings, Optional<Cache> cache) {
        this.trackers = trackers;
        this.settings = settings;
        this.reader = reader;
        this.workers = workers;
        this.cache = cache;
    }

    /** The standard reader, which keeps nothing. */
    public static SectionReader standard() {
        return standard(Optional.empty());
    }

    /** Poses where the model is at hand, flow and hidden Markov model, on all cores. */
    public static SectionReader standard(Optional<Cache> cache) {
        HiddenMarkovReader.Settings settings = HiddenMarkovReader.Settings.DEFAULT;
        Optional<PoseModel> model = PoseModel.installed();
        return new SectionReader(
                () -> model.map(ArmTrackers::byBody).orElseGet(ArmTrackers::byFlow),
                new HiddenMarkovReader(settings),
                Runtime.getRuntime().availableProcessors(),
                (model.isPresent() ? "poses and optical flow" : "optical flow") + "; hidden Markov model " + settings,
                cache);
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
        try (Clip clip = Clip.open(video)) {
            for (Player player : players) {
                requireInside(player, clip);
            }
            progress.reached(0, lengthS(clip));
            Tracked tracked = track(clip, players, progress, cache);
            List<Reading> readings = tracked.tracks().stream()
                    .map(track -> OtherMovements.told(reader.read(track), track))
                    .toList();
            if (readings.stream().allMatch(SectionReader::unseen)) {
                throw new NothingSeenException("No bow arm could be seen in " + InputBytes.name(video)
                        + "; check that the picture is bright enough, that the seats are where the players are,"
                        + " and that the clip has at least ten frames a second.");
            }
            return new SectionReading(
                    clip.facts(),
                    tracked.endS(),
                    tracked.tracks(),
                    readings,
                    bows(tracked.tracks(), readings),
                    clip.trouble(tracked.ending()));
        }
    }

    private static List<Bows> bows(List<ArmTrack> tracks, List<Reading> readings) {
        List<Bows> bows = new ArrayList<>();
        for (int i = 0; i < tracks.size(); i++) {
            bows.add(Bows.of(tracks.get(i), readings.get(i)));
        }
        return bows;
    }

    private Tracked track(Clip clip, List<Player> players, Progress progress, Optional<Cache> keeping)
            throws InputException, InterruptedException {
        try (ArmTrackers arms = trackers.get()) {
            SectionTracker tracker = new SectionTracker(arms::of, workers);
            SectionTracker.Progress told = told(progress, lengthS(clip));
            Optional<CacheEntry> kept =
                    keeping.isEmpty() ? Optional.empty() : entry(keeping.get(), clip, players, arms.kind());
            if (kept.isEmpty()) {
                return tracker.track(clip, players, told);
            }
            try {
                return tracker.track(clip, players, told, kept.get());
            } catch (UnreadableMemoException e) {
                kept.get().drop();
            }
        }
        return track(clip, players, progress, Optional.empty());
    }

    private static Optional<CacheEntry> entry(Cache cache, Clip clip, List<Player> players, String trackers)
            throws InputException {
        return TrackKey.of(Sha256.of(clip.facts().file()), trackers, players).map(cache::entry);
    }

    private static double lengthS(Clip clip) {
        return clip.facts().durationS().orElse(0.0);
    }

    private static SectionTracker.Progress told(Progress progress, double lengthS) {
        return new SectionTracker.Progress() {
            @Override
            public void reached(double clipTimeS) {
                progress.reached(clipTimeS, lengthS);
            }

            @Override
            public void goesOn(double fromS) {
                progress.said(String.format(Locale.ROOT, "An earlier run was stopped; reading goes on at %.1f s", fromS)
                        + (lengthS > 0 ? String.format(Locale.ROOT, " of %.1f.", lengthS) : "."));
            }

            @Override
            public void known() {
                progress.said("The arms were followed in an earlier run.");
            }

            @Override
            public void notKept(OutputException why) {
                progress.said("What is seen can't be kept for another run. " + why.getMessage());
            }
        };
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

    /** Told how far the reading has come. */
    @FunctionalInterface
    public interface Progress {
        /**
         * @param clipTimeS seconds of the clip read so far
         * @param lengthS length of the clip; zero where it is not known
         */
        void reached(double clipTimeS, double lengthS);

        /** Something to tell the user about this run that is nothing to the result; a sentence. */
        default void said(String sentence) {}
    }
}
