package tuttarco.demo;

/**
 * A pinhole camera that looks level into the room or slightly down.
 *
 * @param distanceM how far before the room's origin it stands
 * @param heightM above the floor
 * @param pitchRad how far it looks down
 * @param focalPx focal length in pixels
 * @param centreXPx picture column of the optical axis
 * @param centreYPx picture row of the optical axis
 */
record Camera(double distanceM, double heightM, double pitchRad, double focalPx, double centreXPx, double centreYPx) {
    /** A point of the picture with its distance along the optical axis and the picture's scale there. */
    record Spot(double xPx, double yPx, double depthM, double pxPerM) {}

    Spot see(Vec p) {
        double up = p.z() - heightM;
        double in = p.y() + distanceM;
        double depth = in * Math.cos(pitchRad) - up * Math.sin(pitchRad);
        double high = in * Math.sin(pitchRad) + up * Math.cos(pitchRad);
        double scale = focalPx / depth;
        return new Spot(centreXPx + scale * p.x(), centreYPx - scale * high, depth, scale);
    }

    /** Unit direction from a point to the camera. */
    Vec towards(Vec p) {
        return new Vec(0, -distanceM, heightM).minus(p).unit();
    }

    /** The same camera with focal length and centre changed so that one box of its picture fills another. */
    Camera framing(double x0, double y0, double x1, double y1, double toX0, double toY0, double toX1, double toY1) {
        double k = Math.min((toX1 - toX0) / (x1 - x0), (toY1 - toY0) / (y1 - y0));
        double cx = (toX0 + toX1) / 2 + k * (centreXPx - (x0 + x1) / 2);
        double cy = (toY0 + toY1) / 2 + k * (centreYPx - (y0 + y1) / 2);
        return new Camera(distanceM, heightM, pitchRad, focalPx * k, cx, cy);
    }
}
