package tuttarco.corrections;

import java.util.List;
import java.util.Optional;

/**
 * What a log comes to.
 *
 * @param inForce the corrections that count, in the order in which they were made
 * @param redoable the correction that was taken back last, as long as nothing was corrected since
 */
public record Corrections(List<LogEntry.Done> inForce, Optional<LogEntry.Done> redoable) {
    public static final Corrections NONE = new Corrections(List.of(), Optional.empty());

    public Corrections {
        inForce = List.copyOf(inForce);
    }

    public static Corrections of(List<LogEntry> entries) {
        throw new UnsupportedOperationException();
    }

    /** The correction made last of those that count. */
    public Optional<LogEntry.Done> undoable() {
        return inForce.isEmpty() ? Optional.empty() : Optional.of(inForce.get(inForce.size() - 1));
    }
}
