package tuttarco.chart;

import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;

/**
 * What stands in one cell of a section by beat: how a player's bow went, and how that is to what it is compared with.
 *
 * @param direction empty where none is claimed
 */
public record Cell(State state, Optional<BowDirection> direction) {
    /** How a cell is drawn; each differs from the others in shape. */
    public enum State {
        /** Nothing to compare with, but a direction to show: the marking itself, or the leader. */
        SHOWN,
        WITH,
        AGAINST,
        UNSURE,
        UNSEEN,
        EMPTY
    }

    public static Cell marked(BeatReading reading) {
        return new Cell(reading.marked().isPresent() ? State.SHOWN : State.EMPTY, reading.marked());
    }

    /** What a player did, beside the marking or the leader. */
    public static Cell played(BeatReading reading, Against reference) {
        Verdict verdict = reference == Against.MARKING ? reading.verdict() : reading.leaderVerdict();
        return new Cell(state(verdict), reading.played().direction());
    }

    /** The leader's own way, which the others are compared with. */
    public static Cell led(BeatReading reading) {
        return new Cell(shown(reading), reading.played().direction());
    }

    private static State state(Verdict verdict) {
        return switch (verdict) {
            case WITH -> State.WITH;
            case AGAINST -> State.AGAINST;
            case UNSURE -> State.UNSURE;
            case UNSEEN -> State.UNSEEN;
            case REST -> State.EMPTY;
        };
    }

    private static State shown(BeatReading reading) {
        return switch (reading.played()) {
            case DOWN, UP -> State.SHOWN;
            case STILL -> State.EMPTY;
            case TREMOLO, UNSURE -> State.UNSURE;
            case UNSEEN -> State.UNSEEN;
        };
    }

    /** In words, for the table: {@code down, with}. */
    public String spoken() {
        String played = direction.map(BowDirection::word).orElse("");
        return switch (state) {
            case SHOWN -> played;
            case WITH -> joined(played, "with");
            case AGAINST -> joined(played, "against");
            case UNSURE -> "unsure";
            case UNSEEN -> "unseen";
            case EMPTY -> "";
        };
    }

    private static String joined(String played, String verdict) {
        return played.isEmpty() ? verdict : played + ", " + verdict;
    }
}
