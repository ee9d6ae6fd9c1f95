package tuttarco.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tuttarco.analysis.HandOut;
import tuttarco.analysis.MarkedPart;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.faces.Faces;
import tuttarco.files.InputBytes;
import tuttarco.files.Plain;
import tuttarco.report.Outputs;
import tuttarco.seats.Names;
import tuttarco.seats.Player;

/** Hands out what was read of the session's take. It belongs to the window's thread. */
public final class HandingOut {
    /** How it stands. */
    public sealed interface State {
        record Ready() implements State {}

        /** @param share of the pictures that is done, 0 to 1; 0 while none is made */
        record Going(double share) implements State {}

        /**
         * @param page the report's page, if it was written
         * @param warning what to know before the folder is given away
         */
        record Done(Path folder, Optional<Path> page, Optional<String> warning) implements State {}

        record Failed(String sentence) implements State {}

        record Stopped() implements State {}
    }

    /** A share of the work that is told anew. */
    private static final double WORTH_TELLING = 0.01;

    private final Session session;
    private final HandOut handOut;
    private final Listeners onState = new Listeners();
    private State state = new State.Ready();
    private Background.Going going = new Background.Going();

    public HandingOut(Session session, HandOut handOut) {
        this.session = session;
        this.handOut = handOut;
        session.onAnalysed().add(() -> {
            if (!(state instanceof State.Going)) {
                become(new State.Ready());
            }
        });
    }

    public State state() {
        return state;
    }

    public Listeners onState() {
        return onState;
    }

    /** What must be done before there is something to hand out; empty if nothing. */
    public Optional<TakeReading.State.NotYet> first() {
        return Reviewing.first(session);
    }

    /** Where it goes if nobody says otherwise: a folder of its own beside the take. */
    public Optional<Path> usualFolder() {
        return session.draft().map(draft -> draft.beside(" for the section"));
    }

    /** Whose bowing can be written into the part: nobody's where there is no MusicXML part. */
    public List<Player> markable() {
        return session.uncorrected()
                .map(Uncorrected::take)
                .filter(take -> take.part().flatMap(MarkedPart::title).isPresent())
                .map(take -> take.players())
                .orElse(List.of());
    }

    /**
     * Begins to write; does nothing while that goes or while there is nothing to hand out.
     *
     * @param folder as somebody typed or chose it; the others as {@link HandOut.Wanted} has them
     */
    public void begin(
            String folder, Set<Outputs.Kind> kinds, List<String> marked, boolean every, Names names, Faces faces) {
        HandOut.Wanted wanted = new HandOut.Wanted(kinds, marked, every, names, faces);
        Optional<Uncorrected> read = session.uncorrected();
        if (state instanceof State.Going || read.isEmpty()) {
            return;
        }
        if (!wanted.something()) {
            become(new State.Failed("Nothing is chosen; tick what you want to hand out."));
            return;
        }
        if (folder.isBlank()) {
            become(new State.Failed("Choose a folder to write to."));
            return;
        }
        become(new State.Going(0));
        going = session.background()
                .run(
                        () -> {
                            Path into = Path.of(folder.strip()).toAbsolutePath().normalize();
                            HandOut.Handed handed = handOut.write(
                                    read.get(),
                                    CorrectionLog.of(read.get().take().file()),
                                    wanted,
                                    into,
                                    this::reached);
                            return new State.Done(
                                    into,
                                    kinds.contains(Outputs.Kind.REPORT)
                                            ? Optional.of(into.resolve(Outputs.PAGE))
                                            : Optional.empty(),
                                    handed.warning());
                        },
                        this::become,
                        sentence -> become(new State.Failed(sentence)),
                        this::ended);
    }

    /** From the work's own thread. */
    private void reached(double share) {
        session.background().tell(() -> {
            if (state instanceof State.Going before && share - before.share() >= WORTH_TELLING) {
                become(new State.Going(share));
            }
        });
    }

    /** Stops writing; the folder is then as it was before. */
    public void stop() {
        going.stop();
    }

    private void ended() {
        if (state instanceof State.Going) {
            become(new State.Stopped());
        }
    }

    /** What is given away by what is written, in a sentence or two. */
    public String privacy(Names names, Faces faces) {
        return (names == Names.BY_DESK
                        ? "Players are called by desk and place. "
                        : "Names are written: whoever gets a file knows who did what. ")
                + (faces == Faces.BLURRED
                        ? "Faces are blurred where they are found: look at the pictures before you hand them out. "
                        : "Faces are shown as filmed: ask everybody in the picture first, and of minors the parents. ")
                + "The take's title and the names of its files stay as they are. Nothing leaves this computer by itself.";
    }

    /** How it stands, in a sentence; empty before anything was begun. */
    public String spoken() {
        if (state instanceof State.Going) {
            return "Writing; this takes a moment.";
        }
        if (state instanceof State.Done done) {
            String written = "Written to " + Plain.text(done.folder().toString()) + ".";
            String page = done.page()
                    .map(file -> " The report is " + InputBytes.name(file) + " in it; a web browser shows it.")
                    .orElse("");
            return written + page + done.warning().map(warning -> " " + warning).orElse("");
        }
        if (state instanceof State.Stopped) {
            return "Stopped; nothing was left half written.";
        }
        return state instanceof State.Failed failed ? failed.sentence() : "";
    }

    private void become(State other) {
        state = other;
        onState.tell();
    }
}
