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
import tuttarco.files.Cache;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Sha256;
import tuttarco.report.AnalysedTake;
import tuttarco.score.Part;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;
import tuttarco.take.TakeSeats;
import tuttarco.video.Clip;

/**
 * The whole way on one screen.
 *
 * <pre>
 * clip, seats ... arm tracks ... strokes ---.
 *                                            >-- comparison ... charts and report
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
     * Analyses a take.
     *
     * @throws InputException if the take or a file it names can't be read or is not valid
     * @throws NothingSeenException if nothing could be read from the picture
     * @throws InterruptedException if the thread was interrupted
     */
    public AnalysedTake of(Path takeFile, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        Take take = TakeFile.read(takeFile);
        return judged(read(take, progress), CorrectionLog.of(takeFile));
    }

    /**
     * Reads a take from picture, sound and part: what takes long. The arms' tracks are kept, so that another time is quicker.
     *
     * @throws InputException if a file the take names can't be read or is not valid
     * @throws NothingSeenException if nothing could be read from the picture
     * @throws InterruptedException if the thread was interrupted
     */
    public TakeReading read(Take take, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        throw new UnsupportedOperationException();
    }

    /**
     * Lays the corrections over what was read and judges that: what is quick.
     *
     * @throws InputException if the part and the beats don't fit
     * @throws NothingSeenException if there is nothing left to compare with
     */
    public AnalysedTake judged(TakeReading reading, CorrectionLog log) throws InputException, NothingSeenException {
        throw new UnsupportedOperationException();
    }

    private AnalysedTake old(Take take, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        Optional<Part> part = TakeParts.part(take);
        Optional<BeatSource.Told> told = TakeParts.beatsUnlessLed(take, part);
        Optional<BeatMap> listed = told.map(BeatSource.Told::beats);
        Optional<PartTimes> times = part.isPresent() && listed.isPresent()
                ? Optional.of(PartTimes.of(part.get(), listed.get()))
                : Optional.empty();
        Optional<BeatMap> beats = times.isEmpty() && listed.isPresent()
                ? Optional.of(ListedOrder.withRuns(listed.get()))
                : times.map(PartTimes::beats);
        List<TimedSpan> marked = times.map(PartTimes::spans).orElse(List.of());
        requireSeatsInside(take);

        SectionReading read = sectionReader.read(take.video(), take.players(), progress);

        Comparison comparison = beats.isPresent()
                ? Comparing.compare(read.readings(), beats.get(), marked, compareSettings)
                : byLeader(take, read);
        HeardLevel heard = HeardLevel.of(take.video());
        List<String> notes = new ArrayList<>();
        told.ifPresent(t -> notes.addAll(t.notes()));
        notes.addAll(read.notes());
        heard.trouble().ifPresent(notes::add);
        return new AnalysedTake(
                take,
                read.clip(),
                read.endS(),
                read.tracks(),
                read.readings(),
                read.bows(),
                part,
                comparison,
                UnityByShifts.of(comparison),
                heard.curve().map(level -> Listening.to(level, read.readings(), comparison.beats())),
                Togetherness.of(comparison, read.bows(), compareSettings),
                fingerprints(take),
                settings(),
                programVersion,
                notes);
    }

    private Comparison byLeader(Take take, SectionReading read) throws NothingSeenException {
        return Comparing.withLeader(read.readings(), compareSettings)
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
