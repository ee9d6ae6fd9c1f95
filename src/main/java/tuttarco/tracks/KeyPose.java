package tuttarco.tracks;

import tuttarco.bow.Instrument;
import tuttarco.pose.Landmark;
import tuttarco.pose.Pose;

/** What the pose model saw of a player at one time. All places are pixels of the picture. */
record KeyPose(double timeS, Pose pose) {
    /** A hand of the player's own left or right. A picture that was mirrored swaps the two. */
    enum Hand {
        LEFT,
        RIGHT;

        Hand other() {
            return this == LEFT ? RIGHT : LEFT;
        }
    }

    /**
     * Shoulder width over the length of the trunk of an upright adult (from memory, rounded down), for those who show
     * their side.
     */
    private static final double SHOULDERS_PER_TRUNK = 0.55;

    record Place(double xPx, double yPx) {
        static Place of(Landmark landmark) {
            return new Place(landmark.xPx(), landmark.yPx());
        }

        Place plus(double dxPx, double dyPx) {
            return new Place(xPx + dxPx, yPx + dyPx);
        }

        double distancePx(Place other) {
            return Math.hypot(xPx - other.xPx, yPx - other.yPx);
        }

        static Place middle(Place a, Place b) {
            return new Place((a.xPx + b.xPx) / 2, (a.yPx + b.yPx) / 2);
        }
    }

    Place hand(Hand hand) {
        return Place.of(hand == Hand.LEFT ? pose.leftWrist() : pose.rightWrist());
    }

    Place shoulders() {
        return Place.middle(Place.of(pose.leftShoulder()), Place.of(pose.rightShoulder()));
    }

    private Place hips() {
        return Place.middle(Place.of(pose.leftHip()), Place.of(pose.rightHip()));
    }

    /**
     * About where bow and strings meet: between the shoulders for what is held there, before the middle of the trunk for
     * what stands on the floor (common practice, no source).
     */
    Place strings(Instrument instrument) {
        return instrument.onShoulder() ? shoulders() : Place.middle(shoulders(), hips());
    }

    /** Width of the shoulders if they were seen from the front, pixels; an estimate where the player shows a side. */
    double shoulderWidthPx() {
        return Math.max(
                pose.shoulderWidthPx(), SHOULDERS_PER_TRUNK * shoulders().distancePx(hips()));
    }

    double handsApartPx() {
        return hand(Hand.LEFT).distancePx(hand(Hand.RIGHT));
    }
}
