package tuttarco.demo;

/**
 * A point or direction in metres. In a player's own axes x is the player's right, y forward, z up; in the room x is the
 * picture's right, y into the picture, z up. The origin of either lies on the floor.
 */
record Vec(double x, double y, double z) {
    static final Vec NONE = new Vec(0, 0, 0);

    Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y, z + o.z);
    }

    Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y, z - o.z);
    }

    Vec times(double k) {
        return new Vec(k * x, k * y, k * z);
    }

    double dot(Vec o) {
        return x * o.x + y * o.y + z * o.z;
    }

    Vec cross(Vec o) {
        return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vec unit() {
        return times(1 / length());
    }

    /** The point a share {@code t} of the way towards {@code o}. */
    Vec towards(Vec o, double t) {
        return plus(o.minus(this).times(t));
    }

    /** Turned about the upright axis, clockwise as seen from above. */
    Vec turned(double azimuthRad) {
        double cos = Math.cos(azimuthRad);
        double sin = Math.sin(azimuthRad);
        return new Vec(x * cos + y * sin, y * cos - x * sin, z);
    }
}
