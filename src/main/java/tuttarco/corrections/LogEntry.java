package tuttarco.corrections;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import tuttarco.strokes.StrokeKind;

/** What one line of the log says was done. */
public sealed interface LogEntry {
    /** Names the line; no two lines of a log bear the same. */
    UUID id();

    Instant at();

    /**
     * Something was corrected.
     *
     * @param wasS the old value: for how long, seconds, the player was said to have done what during the span; empty for a
     *     move, whose old time is its own {@code fromS}
     */
    record Done(UUID id, Instant at, Correction correction, Map<StrokeKind, Double> wasS) implements LogEntry {
        public Done {
            Map<StrokeKind, Double> sorted = new EnumMap<>(StrokeKind.class);
            sorted.putAll(wasS);
            wasS = Map.copyOf(sorted);
        }
    }

    /** A correction was taken back. */
    record Undone(UUID id, Instant at, UUID correction) implements LogEntry {}

    /** A correction that was taken back counts again. */
    record Redone(UUID id, Instant at, UUID correction) implements LogEntry {}
}
