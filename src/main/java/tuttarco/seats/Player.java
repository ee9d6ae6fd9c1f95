package tuttarco.seats;

import java.util.Optional;
import tuttarco.bow.Instrument;

/**
 * One player of the section and the seat in the picture where the bow arm is looked for.
 *
 * @param label what the player is called in the outputs; any text without control characters, at most 200 characters
 * @param desk number of the desk, counted from the front, from 1
 * @param facing where the chest points, if that was declared
 * @param leader whether this player leads the section; a section has at most one leader
 */
public record Player(
        String label,
        int desk,
        Place place,
        Instrument instrument,
        SeatBox seat,
        Optional<Facing> facing,
        boolean leader)
        implements AtDesk {
    public static final int LONGEST_LABEL = 200;

    public Player {
        if (label == null || label.isBlank()) {
            throw new IllegalArgumentException("a player needs a label");
        }
        if (label.length() > LONGEST_LABEL) {
            throw new IllegalArgumentException("a player's label has at most " + LONGEST_LABEL + " characters");
        }
        if (label.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("a player's label holds no control characters");
        }
        if (desk < 1) {
            throw new IllegalArgumentException("desks are numbered from 1, not " + desk);
        }
    }

    /** The same player under another label. */
    public Player called(String other) {
        return new Player(other, desk, place, instrument, seat, facing, leader);
    }
}
