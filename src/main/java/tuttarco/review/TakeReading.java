package tuttarco.review;

import java.util.Optional;
import java.util.function.LongSupplier;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.SectionReader;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;
import tuttarco.take.BeatsGiven;
import tuttarco.take.TakeFile;

/**
 * Reads the bows of the session's take in the background: how far it is, how long it may still take, stopping and going on.
 * What was read before a stop is kept and not read again. It belongs to the window's thread.
 */
public final class TakeReading {
    /** Before that the pace tells little; seconds of work (chosen). */
    private static final double PACE_KNOWN_S = 2;

    /** How the reading stands. */
    public sealed interface State {
        /**
         * Something else comes first.
         *
         * @param step key of the step that leads there
         */
        record NotYet(String sentence, String step) implements State {}

        /** It can begin. */
        record Ready() implements State {}

        /**
         * @param readS seconds of the clip that were read
         * @param lengthS length of the clip; empty where it is not known
         * @param remainingS how long it may still take at the pace so far, seconds; empty where that can't be told yet
         */
        record Going(double readS, Optional<Double> lengthS, Optional<Double> remainingS) implements State {}

        /** It was asked to stop and keeps what it has. */
        record Stopping() implements State {}

        /** @param readS seconds of the clip that were read and need not be read again */
        record Stopped(double readS) implements State {}

        record Done() implements State {}

        record Failed(String sentence) implements State {}
    }

    /** Reads a take's file. */
    @FunctionalInterface
    public interface Reader {
        Read read(Draft draft, SectionReader.Progress progress) throws Exception;
    }

    /** What was read of a take, and what it comes to with the corrections there are. */
    public record Read(Uncorrected uncorrected, AnalysedTake judged) {}

    private final Session session;
    private final Reader reader;
    private final LongSupplier clockNs;
    private final Listeners onState = new Listeners();
    private State state;
    private Optional<Background.Going> going = Optional.empty();
    private Optional<Pace> pace = Optional.empty();
    private double keptS;
    private boolean busy;
    /** The take was changed while it was read. */
    private boolean outdated;

    private record Pace(double fromS, long sinceNs) {}

    /**
     * @param clockNs counts nanoseconds of the work
     */
    public TakeReading(Session session, Reader reader, LongSupplier clockNs) {
        this.session = session;
        this.reader = reader;
        this.clockNs = clockNs;
        this.state = before();
        session.onDraft().add(this::taken);
        session.onAnalysed().add(this::analysed);
    }

    /** Reads with an analysis. */
    public static Reader by(Analysis analysis) {
        return (draft, progress) -> {
            Uncorrected uncorrected = analysis.read(TakeFile.read(draft.file()), progress);
            return new Read(uncorrected, analysis.judged(uncorrected, CorrectionLog.of(draft.file())));
        };
    }

    public State state() {
        return state;
    }

    public Listeners onState() {
        return onState;
    }

    /** Begins, or goes on after a stop; does nothing while it goes or while something else comes first. */
    public void begin() {
        if (busy || before() instanceof State.NotYet) {
            return;
        }
        busy = true;
        pace = Optional.empty();
        become(new State.Going(0, Optional.empty(), Optional.empty()));
        session.whenSaved(this::saved);
    }

    /** What is read is the take's file, which now holds what the window shows, or can't. */
    private void saved() {
        if (!(state instanceof State.Going)) {
            ended();
        } else if (session.saving() instanceof Saving.Saved) {
            Draft draft = session.draft().orElseThrow();
            going = Optional.of(session.background()
                    .run(
                            () -> reader.read(draft, told()),
                            read -> session.read(read.uncorrected(), read.judged()),
                            sentence -> become(new State.Failed(sentence)),
                            this::ended));
        } else {
            become(new State.Failed(session.saving().sentence()));
            ended();
        }
    }

    /** Asks it to stop; what was read is kept. */
    public void stop() {
        if (state instanceof State.Going far) {
            keptS = far.readS();
            become(new State.Stopping());
            going.ifPresent(Background.Going::stop);
        }
    }

    private void ended() {
        busy = false;
        going = Optional.empty();
        if (outdated) {
            outdated = false;
            become(before());
        } else if (state instanceof State.Stopping) {
            become(new State.Stopped(keptS));
        }
    }

    /** The take is another one now, and what is read of the old one is of no use. */
    private void taken() {
        if (busy) {
            outdated = true;
            become(new State.Stopping());
            going.ifPresent(Background.Going::stop);
        } else {
            become(before());
        }
    }

    private void analysed() {
        if (session.analysed().isPresent()) {
            become(new State.Done());
        }
    }

    private State before() {
        return missing(session.draft()).<State>map(m -> m).orElse(new State.Ready());
    }

    /** What must be done before a take's bows can be read; empty if nothing. */
    static Optional<State.NotYet> missing(Optional<Draft> draft) {
        if (draft.isEmpty()) {
            return Optional.of(new State.NotYet("Open a video or a take first.", "open"));
        }
        if (draft.get().players().isEmpty()) {
            return Optional.of(new State.NotYet("Nobody sits in this take yet; say who sits where first.", "seats"));
        }
        return comparable(draft.get())
                ? Optional.empty()
                : Optional.of(new State.NotYet(
                        "There is nothing to compare the section with: choose the part, or say in Seats who leads.",
                        "music"));
    }

    /** Whether there is a part, or beats, or a leader to go by. */
    private static boolean comparable(Draft draft) {
        return draft.part().isPresent()
                || !(draft.beats() instanceof BeatsGiven.Missing)
                || draft.players().stream().anyMatch(Player::leader);
    }

    private SectionReader.Progress told() {
        return new SectionReader.Progress() {
            @Override
            public void reached(double clipTimeS, double lengthS) {
                session.background().tell(() -> far(clipTimeS, lengthS));
            }

            @Override
            public void said(String sentence) {
                session.background().tell(() -> session.say(sentence));
            }
        };
    }

    private void far(double readS, double lengthS) {
        if (!(state instanceof State.Going) || going.isEmpty()) {
            return;
        }
        long nowNs = clockNs.getAsLong();
        if (pace.isEmpty() && readS > 0) {
            pace = Optional.of(new Pace(readS, nowNs));
        }
        Optional<Double> length = lengthS > 0 ? Optional.of(lengthS) : Optional.empty();
        become(new State.Going(readS, length, remainingS(readS, length, nowNs)));
    }

    /** The rest of the clip at the pace since the first picture of this run: what an earlier run read took no time now. */
    private Optional<Double> remainingS(double readS, Optional<Double> lengthS, long nowNs) {
        if (pace.isEmpty() || lengthS.isEmpty()) {
            return Optional.empty();
        }
        double workedS = (nowNs - pace.get().sinceNs()) / 1e9;
        double doneS = readS - pace.get().fromS();
        return workedS < PACE_KNOWN_S || doneS <= 0
                ? Optional.empty()
                : Optional.of(Math.max(0, lengthS.get() - readS) * workedS / doneS);
    }

    private void become(State other) {
        state = other;
        onState.tell();
    }
}
