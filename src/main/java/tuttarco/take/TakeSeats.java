package tuttarco.take;

import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.seats.Player;

/** Checks a take's seats against its picture. */
public final class TakeSeats {
    private TakeSeats() {}

    /**
     * Does nothing if every seat lies inside a picture of this size, in pixels of the upright picture.
     *
     * @throws InputException for the first seat that doesn't
     */
    public static void requireInside(Take take, int widthPx, int heightPx) throws InputException {
        for (int i = 0; i < take.players().size(); i++) {
            Player player = take.players().get(i);
            if (!player.seat().fitsInto(widthPx, heightPx)) {
                throw new InputException(InputBytes.name(take.file()) + ": players[" + i + "].seat: the seat of "
                        + Plain.text(player.label()) + " at " + player.seat() + " lies outside the picture of "
                        + widthPx
                        + "x" + heightPx + " pixels; move or shrink it");
            }
        }
    }
}
