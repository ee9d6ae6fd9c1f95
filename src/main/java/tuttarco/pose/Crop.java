package tuttarco.pose;

/**
 * The upright square of a picture that the pose model looks at, in pixels of the picture. It may run past the picture's
 * edge, where it shows black. The model wants the whole person in it, hips in the middle, whether or not the picture
 * shows all of them: a crop of the upper body alone fails.
 *
 * @param centreXPx from the picture's left edge
 * @param centreYPx from its top edge
 * @param sidePx length of a side
 */
public record Crop(double centreXPx, double centreYPx, double sidePx) {
    /** Side of the crop over the distance from hips to the rim of the person; the model was trained on such crops. */
    private static final double SIDE_PER_RADIUS = 2.5;

    /** Share of the way to where the person now is that the next crop goes: steady against the model's own trembling. */
    private static final double FOLLOWING = 0.5;

    /** Crops whose places and sizes differ by less than this share are near; rendered scenes: 0.1 finds half-hidden players worse. */
    private static final double NEAR = 0.03;

    public Crop {
        if (!(sidePx > 0) || !Double.isFinite(sidePx) || !Double.isFinite(centreXPx) || !Double.isFinite(centreYPx)) {
            throw new IllegalArgumentException(
                    "a crop is a square somewhere, not " + sidePx + " px at " + centreXPx + "," + centreYPx);
        }
    }

    /** The crop that a pose itself asks for. */
    public static Crop around(Pose pose) {
        Landmark centre = pose.centre();
        double radiusPx = Math.max(1, centre.distancePx(pose.rim()));
        return new Crop(centre.xPx(), centre.yPx(), SIDE_PER_RADIUS * radiusPx);
    }

    /** A crop of so many times the side about the same middle. */
    public Crop wider(double times) {
        return new Crop(centreXPx, centreYPx, times * sidePx);
    }

    /** The crop for a later picture of the same person, steadied. */
    public Crop next(Pose pose) {
        Crop wanted = around(pose);
        return new Crop(
                centreXPx + FOLLOWING * (wanted.centreXPx - centreXPx),
                centreYPx + FOLLOWING * (wanted.centreYPx - centreYPx),
                sidePx + FOLLOWING * (wanted.sidePx - sidePx));
    }

    /** Whether the model sees much the same in both. */
    boolean near(Crop other) {
        return Math.hypot(centreXPx - other.centreXPx, centreYPx - other.centreYPx) < NEAR * sidePx
                && Math.abs(Math.log(other.sidePx / sidePx)) < NEAR;
    }

    double leftPx() {
        return centreXPx - sidePx / 2;
    }

    double topPx() {
        return centreYPx - sidePx / 2;
    }
}
