package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.beats.ListedOrder;
import tuttarco.beats.PartTimes;
import tuttarco.beats.TimedSpan;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Comparison;
import tuttarco.compare.Listening;
import tuttarco.compare.Togetherness;
import tuttarco.compare.UnityByShifts;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.CorrectionWords;
import tuttarco.files.Cache;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Sha256;
import tuttarco.report.AnalysedTake;
import tuttarco.score.Part;
import tuttarco.strokes.Reading;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;
import tuttarco.take.TakeSeats;
import tuttarco.video.Clip;

/**
 * The whole way on one screen.
 *
 * <pre>
 * clip, seats ... arm tracks ... strokes ---.
 *                           corrections ---- >-- comparison ... charts and report
 * part, beats ... marked strokes -----------'
 * </pre>
 */
public final class Analysis {
    private final SectionReader sectionReader;
    private final CompareSettings compareSettings;
    private final String programVersion;

    public Analysis(SectionReader sectionReader, CompareSettings compareSettings, String programVersion) {
        this.sectionReader = sectionReader;
        this.compareSettings = compareSettings;
        this.programVersion = programVersion;
    }

    /** The standard analysis, which keeps nothing. */
    public static Analysis standard(String programVersion) {
        return standard(programVersion, Optional.empty());
    }

    /** The standard analysis; tracks are kept in the cache for another run. */
    public static Analysis standard(String programVersion, Optional<Cache> cache) {
        return new Analysis(SectionReader.standard(cache), CompareSettings.DEFAULT, programVersion);
    }

    /**
     * Analyses a take, with the corrections that lie beside it.
     *
     * @throws InputException if the take or a file it names can't be read or is not valid
     * @throws NothingSeenException if nothing could be read from the picture
     * @throws InterruptedException if the thread was interrupted
     */
    public AnalysedTake of(Path takeFile, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        Take take = TakeFile.read(takeFile);
        CorrectionLog log = CorrectionLog.of(takeFile);
        return judged(read(take, progress), log);
    }

    /**
     * Reads a take from picture, sound and part: what takes long. The arms' tracks are kept, so that another time is quicker.
     *
     * @throws InputException if a file the take names can't be read or is not valid
     * @throws NothingSeenException if nothing could be read from the picture
     * @throws InterruptedException if the thread was interrupted
     */
    public Uncorrected read(Take take, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        Optional<Part> part = TakeParts.part(take);
        Optional<BeatSource.Told> told = TakeParts.toldUnlessLed(take, part);
        if (told.isPresent()) {
            // what doesn't fit is told before the long work, not after it
            Timed.of(part, told.get().beats());
        }
        requireSeatsInside(take);
        SectionReading section = sectionReader.read(take.video(), take.players(), progress);
        return new Uncorrected(take, part, told, section, HeardLevel.of(take.video()), fingerprints(take));
    }

    /**
     * Lays the corrections over what was read and judges the section by that: what is quick. Tracks are not looked at again, and
     * of players whom no correction touches readings and bows are the very same.
     *
     * @throws InputException if the beats, as they are moved, don't fit the part
     * @throws NothingSeenException if there is nothing left to compare with
     */
    public AnalysedTake judged(Uncorrected read, CorrectionLog log) throws InputException, NothingSeenException {
        Corrected corrected = Corrected.of(read, log.corrections());
        Optional<Timed> timed = corrected.beats().isPresent()
                ? Optional.of(Timed.of(read.part(), corrected.beats().get()))
                : Optional.empty();
        Comparison comparison = timed.isPresent()
                ? Comparing.compare(
                        corrected.readings(), timed.get().beats(), timed.get().marked(), compareSettings)
                : byLeader(read.take(), corrected.readings());
        Map<String, String> sha256 = new LinkedHashMap<>(read.sha256());
        log.sha256().ifPresent(hash -> sha256.put("corrections", hash));
        return new AnalysedTake(
                read.take(),
                read.section().clip(),
                read.section().endS(),
                read.section().tracks(),
                corrected.readings(),
                corrected.bows(),
                read.part(),
                comparison,
                UnityByShifts.of(comparison),
                read.heard().curve().map(level -> Listening.to(level, corrected.readings(), comparison.beats())),
                Togetherness.of(comparison, corrected.bows(), compareSettings),
                corrected.applied(),
                sha256,
                settings(),
                programVersion,
                notes(read, log, corrected));
    }

    private static List<String> notes(Uncorrected read, CorrectionLog log, Corrected corrected) {
        List<String> notes = new ArrayList<>();
        read.told().ifPresent(told -> notes.addAll(told.notes()));
        notes.addAll(read.section().notes());
        read.heard().trouble().ifPresent(notes::add);
        CorrectionWords.sum(corrected.applied()).ifPresent(notes::add);
        notes.addAll(corrected.notes());
        notes.addAll(log.notes());
        return notes;
    }

    /** The beats with their runs, and the part's strokes and rests in time where there is a part. */
    private record Timed(BeatMap beats, List<TimedSpan> marked) {
        static Timed of(Optional<Part> part, BeatMap told) throws InputException {
            if (part.isEmpty()) {
                return new Timed(ListedOrder.withRuns(told), List.of());
            }
            PartTimes times = PartTimes.of(part.get(), told);
            return new Timed(times.beats(), times.spans());
        }
    }

    private Comparison byLeader(Take take, List<Reading> readings) throws NothingSeenException {
        return Comparing.withLeader(readings, compareSettings)
                .orElseThrow(() -> new NothingSeenException("Without beats the section is compared with its leader's"
                        + " strokes, and no two of them could be read; check the leader's seat, or add beats to "
                        + InputBytes.name(take.file()) + "."));
    }

    private static void requireSeatsInside(Take take) throws InputException {
        try (Clip clip = Clip.open(take.video())) {
            TakeSeats.requireInside(take, clip.facts().widthPx(), clip.facts().heightPx());
        }
    }

    private static Map<String, String> fingerprints(Take take) throws InputException {
        Map<String, String> sha256 = new LinkedHashMap<>();
        sha256.put("take", Sha256.of(take.file()));
        sha256.put("video", Sha256.of(take.video()));
        if (take.part().isPresent()) {
            sha256.put("part", Sha256.of(take.part().get()));
        }
        if (take.over().isPresent()) {
            sha256.put("over", Sha256.of(take.over().get()));
        }
        if (take.beats().file().isPresent()) {
            sha256.put("beats", Sha256.of(take.beats().file().get()));
        }
        return sha256;
    }

    /** Settings by name, as text: what a reader needs to repeat the run. */
    private Map<String, String> settings() {
        return Map.of(
                "tracker and reader", sectionReader.settings(),
                "comparison", compareSettings.toString());
    }
}
