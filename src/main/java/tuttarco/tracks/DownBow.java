package tuttarco.tracks;

import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.signal.Axis;

/**
 * Where a down-bow leads in the picture. In a down-bow the bow hand moves away from the strings (common practice, no
 * source); which way that is follows from how the instrument is held and where the chest points.
 *
 * @param x share of the motion to the picture's right, -1 to 1
 * @param y share of the motion to the picture's bottom, -1 to 1
 */
record DownBow(double x, double y) {
    /**
     * Direction of the bow hand at the tip, as seen from above, clockwise from where the chest points, degrees. A violin
     * points about 45 degrees to the player's left and the bow crosses it at a right angle; cello, bass and viol stand
     * before the player and the bow runs to the side (common practice, no source).
     */
    private static final double SHOULDER_BOW_DEG = 45;

    private static final double STANDING_BOW_DEG = 80;

    /** How far the stick slopes down towards the hand, degrees, on the middle strings (common practice, no source). */
    private static final double SHOULDER_SLOPE_DEG = 40;

    private static final double STANDING_SLOPE_DEG = 0;

    /** With less sideways motion than this the arm may be on either side of the seat. */
    private static final double SIDEWAYS = 0.2;

    static DownBow of(Instrument instrument, Facing facing) {
        boolean shoulder = instrument.onShoulder();
        double azimuth = Math.toRadians(facing.azimuthDeg() + (shoulder ? SHOULDER_BOW_DEG : STANDING_BOW_DEG));
        double slope = Math.toRadians(shoulder ? SHOULDER_SLOPE_DEG : STANDING_SLOPE_DEG);
        return new DownBow(Math.sin(azimuth) * Math.cos(slope), Math.sin(slope));
    }

    /** The direction in the picture; its length is lost. */
    Axis axis() {
        return Axis.of(x, y);
    }

    /** How much of the motion shows in the picture, 0 (all of it in depth) to 1. */
    double visibleShare() {
        return Math.hypot(x, y);
    }

    boolean leadsLeft() {
        return x < -SIDEWAYS;
    }

    boolean leadsRight() {
        return x > SIDEWAYS;
    }
}
