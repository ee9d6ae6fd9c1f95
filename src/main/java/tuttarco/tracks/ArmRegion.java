package tuttarco.tracks;

import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * The part of a seat in which a bow arm can be. A box much taller than wide holds the whole seated figure: its lower part
 * shows legs, and in a section the heads and bows of the row before.
 */
final class ArmRegion {
    /** From this height to width on, a box holds the whole figure; an upper body is about as wide as high. */
    private static final double WHOLE_FIGURE = 1.25;

    /** Share of a whole figure's height, from the top, below which no bow hand comes; seated, chosen on rendered scenes. */
    private static final double SHOULDER_SHARE = 0.62;

    private static final double STANDING_SHARE = 0.82;

    private ArmRegion() {}

    static SeatBox of(Player player) {
        SeatBox seat = player.seat();
        if (seat.heightPx() < WHOLE_FIGURE * seat.widthPx()) {
            return seat;
        }
        double share = player.instrument().onShoulder() ? SHOULDER_SHARE : STANDING_SHARE;
        int heightPx = Math.max(1, (int) Math.round(share * seat.heightPx()));
        return new SeatBox(seat.xPx(), seat.yPx(), seat.widthPx(), heightPx);
    }
}
