package tuttarco.demo;

/**
 * A player's own axes in the room.
 *
 * @param floor where the chair stands in the room, metres
 * @param azimuthRad where the chest points, clockwise from above, from straight into the picture
 * @param leftHanded whether left and right are exchanged
 */
record Axes(Vec floor, double azimuthRad, boolean leftHanded) {
    /** A point of the room from one in the player's own axes. */
    Vec room(Vec own) {
        return direction(own).plus(floor);
    }

    /** A direction in the room from one in the player's own axes. */
    Vec direction(Vec own) {
        Vec handed = leftHanded ? new Vec(-own.x(), own.y(), own.z()) : own;
        return handed.turned(azimuthRad);
    }
}
