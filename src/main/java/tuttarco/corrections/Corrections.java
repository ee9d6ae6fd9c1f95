package tuttarco.corrections;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * What a log comes to.
 *
 * @param inForce the corrections that count, in the order in which they were made
 * @param redoable the correction that was taken back last, as long as nothing was corrected since
 */
public record Corrections(List<LogEntry.Done> inForce, Optional<LogEntry.Done> redoable) {
    /** Nothing is corrected. */
    public static final Corrections NONE = new Corrections(List.of(), Optional.empty());

    public Corrections {
        inForce = List.copyOf(inForce);
    }

    /**
     * The corrections that count after the last line. A line names the correction that it takes back or makes count again, so
     * that programs which did not know of each other's lines agree on what they come to; where that is so already, or there
     * is no such correction, the line changes nothing.
     */
    public static Corrections of(List<LogEntry> entries) {
        Map<UUID, LogEntry.Done> made = new LinkedHashMap<>();
        Set<UUID> back = new LinkedHashSet<>();
        Deque<UUID> redoable = new ArrayDeque<>();
        for (LogEntry entry : entries) {
            if (entry instanceof LogEntry.Done done) {
                made.put(done.id(), done);
                redoable.clear();
            } else if (entry instanceof LogEntry.Undone undone && made.containsKey(undone.correction())) {
                if (back.add(undone.correction())) {
                    redoable.push(undone.correction());
                }
            } else if (entry instanceof LogEntry.Redone redone && back.remove(redone.correction())) {
                redoable.remove(redone.correction());
            }
        }
        return new Corrections(
                made.values().stream().filter(done -> !back.contains(done.id())).toList(),
                Optional.ofNullable(redoable.peek()).map(made::get));
    }

    /** The correction made last of those that count. */
    public Optional<LogEntry.Done> undoable() {
        return inForce.isEmpty() ? Optional.empty() : Optional.of(inForce.get(inForce.size() - 1));
    }
}
