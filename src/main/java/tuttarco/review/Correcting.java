package tuttarco.review;

import java.util.List;
import tuttarco.analysis.Analysis;
import tuttarco.corrections.Correction;

/**
 * Corrects what was read of the session's take, and takes corrections back. Each is logged beside the take at once; then the
 * section is judged anew behind, and the session told. It belongs to the window's thread.
 */
public final class Correcting {
    private final Session session;
    private final Analysis analysis;
    private final Listeners onChange = new Listeners();

    public Correcting(Session session, Analysis analysis) {
        this.session = session;
        this.analysis = analysis;
    }

    public void apply(Correction correction) {
        throw new UnsupportedOperationException();
    }

    public boolean canUndo() {
        return false;
    }

    /** Takes the last correction back. */
    public void undo() {
        throw new UnsupportedOperationException();
    }

    public boolean canRedo() {
        return false;
    }

    /** Makes the correction count again that was taken back last. */
    public void redo() {
        throw new UnsupportedOperationException();
    }

    /** What was done, the latest first: a sentence each, with when, and what was there before. */
    public List<String> history() {
        return List.of();
    }

    /** Told when what can be undone, redone or told has changed. */
    public Listeners onChange() {
        return onChange;
    }
}
