package tuttarco.review;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.NothingSeenException;
import tuttarco.analysis.Uncorrected;
import tuttarco.beats.BeatSource;
import tuttarco.corrections.CorrectedBeats;
import tuttarco.corrections.CorrectedReadings;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.CorrectionWords;
import tuttarco.corrections.Corrections;
import tuttarco.corrections.LogEntry;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.report.AnalysedTake;
import tuttarco.strokes.Reading;
import tuttarco.strokes.StrokeKind;

/**
 * Corrects what was read of the session's take, and takes corrections back. Each is logged beside the take at once, and the
 * section is judged anew in the background: one judgement at a time, and of several that are wanted meanwhile only the last.
 * Lines that another program adds to the log are found whenever something is judged. It belongs to the window's thread.
 */
public final class Correcting implements AutoCloseable {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final Session session;
    private final Judging judging;
    private final Clock clock;
    private final Listeners onChange = new Listeners();

    /** What is corrected now. */
    private Optional<Uncorrected> uncorrected = Optional.empty();

    private List<LogEntry> entries = List.of();
    private boolean going;
    private boolean wantedAgain;

    /** What is not written yet; threads of the background take from it. */
    private final Queue<Line> unwritten = new ConcurrentLinkedQueue<>();

    private record Line(Path takeFile, LogEntry entry) {}

    /** Judges what was read by the corrections there are. */
    @FunctionalInterface
    public interface Judging {
        AnalysedTake judged(Uncorrected read, CorrectionLog log) throws InputException, NothingSeenException;
    }

    public Correcting(Session session, Analysis analysis) {
        this(session, analysis::judged, Clock.system(ZoneId.systemDefault()));
    }

    /**
     * @param clock tells when something is corrected, and in whose time that is said
     */
    public Correcting(Session session, Judging judging, Clock clock) {
        this.session = session;
        this.judging = judging;
        this.clock = clock;
        session.onAnalysed().add(this::read);
    }

    /** Whether there is something to correct. */
    public boolean ready() {
        return uncorrected.isPresent();
    }

    /** Corrects something; what finds no place is told and not logged. */
    public void apply(Correction correction) {
        if (uncorrected.isEmpty()) {
            session.trouble("Nothing can be corrected before the bows are read.");
            return;
        }
        LogEntry.Done done = new LogEntry.Done(UUID.randomUUID(), clock.instant(), correction, Map.of());
        Optional<String> refusal = refusal(done);
        if (refusal.isPresent()) {
            session.trouble(refusal.get());
            return;
        }
        if (asItIs(correction)) {
            session.say("That is what stands there already; nothing was set.");
            return;
        }
        LogEntry.Done logged = new LogEntry.Done(done.id(), done.at(), correction, was(correction));
        add(logged);
        session.say("Corrected: " + told(logged) + ".");
    }

    public boolean canUndo() {
        return corrections().undoable().isPresent();
    }

    /** Takes the last correction back. */
    public void undo() {
        corrections().undoable().ifPresent(done -> {
            add(new LogEntry.Undone(UUID.randomUUID(), clock.instant(), done.id()));
            session.say("Taken back: " + told(done) + ".");
        });
    }

    public boolean canRedo() {
        return corrections().redoable().isPresent();
    }

    /** Makes the correction count again that was taken back last. */
    public void redo() {
        corrections().redoable().ifPresent(done -> {
            add(new LogEntry.Redone(UUID.randomUUID(), clock.instant(), done.id()));
            session.say("Counts again: " + told(done) + ".");
        });
    }

    /** Looks whether another program has corrected the take, and judges anew if so. */
    public void reload() {
        uncorrected.ifPresent(read -> session.background()
                .run(
                        () -> CorrectionLog.of(read.take().file()).entries(),
                        logged -> {
                            if (current(read) && !logged.equals(entries)) {
                                judge();
                            }
                        },
                        session::trouble));
    }

    /** What was done, the latest first: a sentence each, with when, and what was there before. */
    public List<String> history() {
        Map<UUID, LogEntry.Done> made = entries.stream()
                .filter(LogEntry.Done.class::isInstance)
                .map(LogEntry.Done.class::cast)
                .collect(Collectors.toMap(LogEntry.Done::id, done -> done));
        List<String> sentences = new ArrayList<>();
        for (LogEntry entry : entries) {
            sentences.add(
                    ZonedDateTime.ofInstant(entry.at(), clock.getZone()).format(WHEN) + ": " + sentence(entry, made));
        }
        Collections.reverse(sentences);
        return sentences;
    }

    /** Told when what can be undone, redone or told has changed. */
    public Listeners onChange() {
        return onChange;
    }

    /** Writes what is not written yet. */
    @Override
    public void close() throws OutputException {
        write();
    }

    private String sentence(LogEntry entry, Map<UUID, LogEntry.Done> made) {
        if (entry instanceof LogEntry.Done done) {
            return told(done) + ".";
        }
        boolean back = entry instanceof LogEntry.Undone;
        UUID of = back ? ((LogEntry.Undone) entry).correction() : ((LogEntry.Redone) entry).correction();
        String what = Optional.ofNullable(made.get(of)).map(this::told).orElse("a correction that is not in the log");
        return (back ? "taken back: " : "counts again: ") + what + ".";
    }

    private String told(LogEntry.Done done) {
        return CorrectionWords.of(
                        done.correction(),
                        uncorrected.flatMap(Uncorrected::told).map(BeatSource.Told::beats))
                + CorrectionWords.was(done).map(was -> " (" + was + ")").orElse("");
    }

    private Corrections corrections() {
        return Corrections.of(entries);
    }

    /** Why a correction finds no place; empty where it does. */
    private Optional<String> refusal(LogEntry.Done done) {
        Corrections tried =
                Corrections.of(Stream.concat(entries.stream(), Stream.of(done)).toList());
        Uncorrected read = uncorrected.orElseThrow();
        CorrectedReadings readings = CorrectedReadings.of(read.section().readings(), tried);
        CorrectedBeats beats = CorrectedBeats.of(read.told().map(BeatSource.Told::beats), tried);
        boolean applied = readings.applied().contains(done) || beats.applied().contains(done);
        List<String> notes = done.correction() instanceof Correction.BeatMoved ? beats.notes() : readings.notes();
        return applied ? Optional.empty() : Optional.of(notes.get(notes.size() - 1));
    }

    /** Whether it says of a player what the picture, or somebody before, said in the whole span. */
    private boolean asItIs(Correction correction) {
        Set<StrokeKind> was = was(correction).keySet();
        return correction instanceof Correction.StrokeSet set && was.equals(Set.of(set.kind()))
                || correction instanceof Correction.Absent && was.equals(Set.of(StrokeKind.ABSENT));
    }

    private Map<StrokeKind, Double> was(Correction correction) {
        if (correction instanceof Correction.StrokeSet set) {
            return was(set.player(), set.fromS(), set.toS());
        }
        return correction instanceof Correction.Absent absent
                ? was(absent.player(), absent.fromS(), absent.toS())
                : Map.of();
    }

    private Map<StrokeKind, Double> was(String player, double fromS, double toS) {
        List<Reading> read = uncorrected.orElseThrow().section().readings();
        return CorrectedReadings.of(read, corrections()).readings().stream()
                .filter(reading -> reading.player().label().equals(player))
                .map(reading -> CorrectedReadings.wasS(reading, fromS, toS))
                .findFirst()
                .orElse(Map.of());
    }

    /** Another take was read, or none is read any more. */
    private void read() {
        Optional<Uncorrected> other = session.uncorrected();
        if (other.map(this::current).orElse(uncorrected.isEmpty())) {
            return;
        }
        uncorrected = other;
        entries = session.analysed()
                .<List<LogEntry>>map(a -> List.copyOf(a.corrected()))
                .orElse(List.of());
        onChange.tell();
        load();
    }

    /** Whether it is this very reading that is corrected now: to compare what two hold would take long, and they may hold the same. */
    @SuppressWarnings("ReferenceEquality")
    private boolean current(Uncorrected read) {
        return uncorrected.isPresent() && uncorrected.get() == read;
    }

    private void load() {
        uncorrected.ifPresent(read -> session.background()
                .run(() -> CorrectionLog.of(read.take().file()), log -> logged(read, log), session::trouble));
    }

    private void add(LogEntry entry) {
        unwritten.add(new Line(uncorrected.orElseThrow().take().file(), entry));
        entries = Stream.concat(entries.stream(), Stream.of(entry)).toList();
        onChange.tell();
        judge();
    }

    private void judge() {
        if (uncorrected.isEmpty()) {
            return;
        }
        if (going) {
            wantedAgain = true;
            return;
        }
        going = true;
        wantedAgain = false;
        Uncorrected read = uncorrected.get();
        session.background().run(() -> work(read), outcome -> judged(read, outcome), this::failed, this::ended);
    }

    private record Outcome(CorrectionLog log, AnalysedTake judged) {}

    private Outcome work(Uncorrected read) throws OutputException, InputException, NothingSeenException {
        write();
        CorrectionLog log = CorrectionLog.of(read.take().file());
        return new Outcome(log, judging.judged(read, log));
    }

    /** One after the other, so that the lines stay in order; a line that can't be written is dropped, unless this was stopped. */
    private synchronized void write() throws OutputException {
        for (Line line = unwritten.peek(); line != null; line = unwritten.peek()) {
            try {
                CorrectionLog.append(line.takeFile(), line.entry());
            } catch (OutputException e) {
                if (!Thread.currentThread().isInterrupted()) {
                    unwritten.poll();
                }
                throw e;
            }
            unwritten.poll();
        }
    }

    private void judged(Uncorrected read, Outcome outcome) {
        logged(read, outcome.log());
        if (!wantedAgain && current(read)) {
            session.read(read, outcome.judged());
        }
    }

    /** The lines of the file, and after them those that are not written yet. */
    private void logged(Uncorrected read, CorrectionLog log) {
        if (current(read)) {
            entries = Stream.concat(
                            log.entries().stream(),
                            unwritten.stream()
                                    .map(Line::entry)
                                    .filter(e -> !log.entries().contains(e)))
                    .toList();
            onChange.tell();
        }
    }

    private void failed(String sentence) {
        session.trouble(sentence);
        load();
    }

    private void ended() {
        going = false;
        if (wantedAgain) {
            judge();
        }
    }
}
