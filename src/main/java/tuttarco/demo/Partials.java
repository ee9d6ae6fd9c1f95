package tuttarco.demo;

/**
 * A tone's partials, as the loudness of each.
 *
 * @param loudness of the first, the second and so on
 */
record Partials(double... loudness) {
    /** Their sum at a phase of the first, radians, by the recurrence sin kx = 2 cos x sin (k-1)x - sin (k-2)x. */
    double at(double phase) {
        double before = 0;
        double now = Math.sin(phase);
        double twoCos = 2 * Math.cos(phase);
        double sum = 0;
        for (double loud : loudness) {
            sum += loud * now;
            double next = twoCos * now - before;
            before = now;
            now = next;
        }
        return sum;
    }
}
