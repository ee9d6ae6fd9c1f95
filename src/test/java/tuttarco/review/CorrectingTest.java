package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.ReadByHand;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.files.OutputException;
import tuttarco.report.AnalysedTake;
import tuttarco.strokes.StrokeKind;

/** Corrections as the window makes them; this thread plays the window's. */
class CorrectingTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-26T07:12:03Z"), ZoneOffset.UTC);

    private final Analysis analysis = Analysis.standard("test");
    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final Background background = new Background(window::add);
    private final Session session = new Session(background, new Keeping() {
        @Override
        public void opened(Draft draft) {}

        @Override
        public String keep(Draft draft) {
            return "Saved.";
        }
    });
    private final AtomicInteger judgements = new AtomicInteger();
    /** Judging waits for one of these. */
    private final Semaphore may = new Semaphore(1000);

    private final Correcting correcting = new Correcting(session, this::judged, CLOCK);

    @TempDir
    Path folder;

    private Uncorrected read;

    private AnalysedTake judged(Uncorrected uncorrected, CorrectionLog log) {
        may.acquireUninterruptibly();
        judgements.incrementAndGet();
        try {
            return analysis.judged(uncorrected, log);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @BeforeEach
    void readATake() throws Exception {
        read = ReadByHand.take(folder);
        session.open(Draft.of(read.take()));
        session.read(read, analysis.judged(read, CorrectionLog.EMPTY));
        windowRunsNext();
    }

    @AfterEach
    void end() {
        background.close();
    }

    private void windowRunsNext() throws InterruptedException {
        Runnable next = window.poll(30, TimeUnit.SECONDS);
        assertTrue(next != null, "nothing was told to the window");
        next.run();
    }

    private static Correction set(double fromS, StrokeKind kind) {
        return new Correction.StrokeSet("Jon", fromS, fromS + 1, kind);
    }

    private List<Correction> inForce() {
        return session.analysed().orElseThrow().corrected().stream()
                .map(LogEntry.Done::correction)
                .toList();
    }

    private List<LogEntry> logged() throws Exception {
        return CorrectionLog.of(read.take().file()).entries();
    }

    @Test
    void aCorrectionIsLoggedWithItsOldValueAndTheSectionJudgedAnew() throws Exception {
        assertTrue(correcting.ready());
        assertFalse(correcting.canUndo() || correcting.canRedo());
        correcting.apply(set(1, StrokeKind.STILL));
        assertTrue(correcting.canUndo());
        assertEquals(
                "Corrected: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up).",
                session.message().sentence());
        windowRunsNext();
        assertEquals(List.of(set(1, StrokeKind.STILL)), inForce());
        assertEquals(Map.of(StrokeKind.UP, 1.0), ((LogEntry.Done) logged().get(0)).wasS());
        assertEquals(
                List.of("2026-11-26 07:12:03: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up)."),
                correcting.history());

        correcting.apply(set(1, StrokeKind.UNSEEN));
        windowRunsNext();
        assertEquals(Map.of(StrokeKind.STILL, 1.0), ((LogEntry.Done) logged().get(1)).wasS(), "as corrected before");
    }

    @Test
    void whatIsDoneCanBeUndoneAndRedone() throws Exception {
        correcting.apply(set(1, StrokeKind.STILL));
        windowRunsNext();
        correcting.undo();
        assertEquals(
                "Taken back: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up).",
                session.message().sentence());
        windowRunsNext();
        assertEquals(List.of(), inForce());
        assertFalse(correcting.canUndo());
        assertTrue(correcting.canRedo());
        correcting.redo();
        windowRunsNext();
        assertEquals(List.of(set(1, StrokeKind.STILL)), inForce());
        assertEquals(
                List.of(
                        "2026-11-26 07:12:03: counts again: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up).",
                        "2026-11-26 07:12:03: taken back: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up).",
                        "2026-11-26 07:12:03: Jon, bar 1 beat 2 (1.00 to 2.00 s): still (was up)."),
                correcting.history());
        assertEquals(3, logged().size());
        correcting.redo();
        assertEquals(3, correcting.history().size(), "there is nothing more to redo");
    }

    /** While one judgement goes on three more corrections come: one more judgement shows all. */
    @Test
    void ofSeveralThatComeQuicklyOnlyTheLastIsJudged() throws Exception {
        may.drainPermits();
        AtomicInteger told = new AtomicInteger();
        session.onAnalysed().add(told::incrementAndGet);
        for (double fromS : new double[] {1, 3, 5, 7}) {
            correcting.apply(set(fromS, StrokeKind.STILL));
        }
        assertTrue(correcting.canUndo());
        assertEquals(4, correcting.history().size());
        may.release(10);
        windowRunsNext();
        assertEquals(0, told.get(), "what came meanwhile is waited for");
        windowRunsNext();
        assertEquals(1, told.get());
        assertEquals(2, judgements.get());
        assertEquals(4, inForce().size());
        assertEquals(4, logged().size());
        assertEquals(set(1, StrokeKind.STILL), ((LogEntry.Done) logged().get(0)).correction(), "in order");
    }

    @Test
    void whatStandsThereAlreadyIsNoCorrection() throws Exception {
        correcting.apply(set(1, StrokeKind.UP));
        assertEquals(
                "That is what stands there already; nothing was set.",
                session.message().sentence());
        assertFalse(correcting.canUndo());
        assertEquals(List.of(), logged());
    }

    @Test
    void whatFindsNoPlaceIsToldAndNotLogged() {
        correcting.apply(new Correction.StrokeSet("Nobody", 1, 2, StrokeKind.UP));
        assertEquals(Message.Kind.TROUBLE, session.message().kind());
        assertTrue(
                session.message().sentence().contains("no such player"),
                session.message().sentence());
        correcting.apply(new Correction.ChangeMoved("Jon", 1, 4));
        correcting.apply(new Correction.BeatMoved("99", 1, 1, 2));
        assertTrue(
                session.message().sentence().contains("no such beat"),
                session.message().sentence());
        assertFalse(correcting.canUndo());
        assertFalse(Files.exists(CorrectionLog.beside(read.take().file())));
    }

    @Test
    void linesOfAnotherWindowAreKeptAndFound() throws Exception {
        LogEntry.Done theirs = new LogEntry.Done(UUID.randomUUID(), Instant.EPOCH, set(3, StrokeKind.UNSEEN), Map.of());
        CorrectionLog.append(read.take().file(), theirs);
        correcting.apply(set(1, StrokeKind.STILL));
        windowRunsNext();
        assertEquals(List.of(set(3, StrokeKind.UNSEEN), set(1, StrokeKind.STILL)), inForce());
        assertEquals(2, correcting.history().size());
        LogEntry.Undone back = new LogEntry.Undone(UUID.randomUUID(), Instant.EPOCH, theirs.id());
        CorrectionLog.append(read.take().file(), back);
        correcting.reload();
        windowRunsNext();
        windowRunsNext();
        int judged = judgements.get();
        correcting.reload();
        windowRunsNext();
        assertEquals(judged, judgements.get(), "nothing is new");
        assertEquals(List.of(set(1, StrokeKind.STILL)), inForce());
        assertEquals(3, correcting.history().size());
    }

    @Test
    void whatWasCorrectedEarlierCanBeUndoneWhenTheTakeIsReadAgain() throws Exception {
        correcting.apply(set(1, StrokeKind.STILL));
        windowRunsNext();
        Uncorrected again = ReadByHand.again(read);
        session.analysed(Optional.empty());
        assertFalse(correcting.ready());
        assertFalse(correcting.canUndo());
        correcting.apply(set(3, StrokeKind.STILL));
        assertEquals(Message.Kind.TROUBLE, session.message().kind());
        session.read(again, analysis.judged(again, CorrectionLog.of(read.take().file())));
        assertTrue(correcting.canUndo(), "at once");
        windowRunsNext();
        assertEquals(1, correcting.history().size());
        correcting.undo();
        windowRunsNext();
        assertEquals(List.of(), inForce());
    }

    @Test
    void aLogThatCantBeWrittenIsToldAndNothingIsShownAsCorrected() throws Exception {
        Files.createDirectory(CorrectionLog.beside(read.take().file()));
        correcting.apply(set(1, StrokeKind.STILL));
        windowRunsNext();
        assertEquals(Message.Kind.TROUBLE, session.message().kind());
        assertTrue(
                session.message().sentence().contains("it is a folder"),
                session.message().sentence());
        assertEquals(List.of(), inForce());
    }

    @Test
    void closingWritesWhatIsNotWrittenYet() throws Exception {
        may.drainPermits();
        correcting.apply(set(1, StrokeKind.STILL));
        correcting.apply(set(3, StrokeKind.STILL));
        background.close();
        try {
            correcting.close();
        } catch (OutputException e) {
            throw new AssertionError(e);
        }
        assertEquals(2, logged().size());
        may.release(10);
    }
}
