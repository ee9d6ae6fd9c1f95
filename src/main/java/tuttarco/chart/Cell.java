package tuttarco.chart;

import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * What stands in one cell of a section by beat: how a player's bow went, and how that is to what it is compared with.
 *
 * @param direction empty where none is claimed
 * @param source where the direction comes from, or that there is none
 */
public record Cell(State state, Optional<BowDirection> direction, Stroke.Source source) {
    /** How a cell is drawn; each differs from the others in shape. */
    public enum State {
        /** Nothing to compare with, but a direction to show: the marking itself, or the leader. */
        SHOWN,
        WITH,
        AGAINST,
        UNSURE,
        UNSEEN,
        /** The player was not there, as somebody said. */
        ABSENT,
        EMPTY
    }

    /** A cell that nobody set. */
    public Cell(State state, Optional<BowDirection> direction) {
        this(state, direction, Stroke.Source.READ);
    }

    public static Cell marked(BeatReading reading) {
        return new Cell(reading.marked().isPresent() ? State.SHOWN : State.EMPTY, reading.marked());
    }

    /** What a player did, beside the marking or the leader. */
    public static Cell played(BeatReading reading, Against reference) {
        Verdict verdict = reference == Against.MARKING ? reading.verdict() : reading.leaderVerdict();
        State state = reading.played() == StrokeKind.ABSENT ? State.ABSENT : state(verdict);
        return new Cell(state, reading.played().direction(), reading.source());
    }

    /** The leader's own way, which the others are compared with. */
    public static Cell led(BeatReading reading) {
        return new Cell(shown(reading), reading.played().direction(), reading.source());
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
            case ABSENT -> State.ABSENT;
        };
    }

    public boolean byHand() {
        return source == Stroke.Source.BY_HAND;
    }

    /** In words, for the table: {@code down, with, by hand}. */
    public String spoken() {
        String played = direction.map(BowDirection::word).orElse("");
        String said = switch (state) {
            case SHOWN -> played;
            case WITH -> joined(played, "with");
            case AGAINST -> joined(played, "against");
            case UNSURE -> "unsure";
            case UNSEEN -> "unseen";
            case ABSENT -> "absent";
            case EMPTY -> "";
        };
        return byHand() ? joined(said, "by hand") : said;
    }

    private static String joined(String said, String more) {
        return said.isEmpty() ? more : said + ", " + more;
    }
}
