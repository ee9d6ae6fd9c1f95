package tuttarco.demo;

import tuttarco.strokes.StrokeKind;

/**
 * One span of a player's bow: it goes from one place of the usable bow to another (0 frog, 1 tip) or stays.
 *
 * <p>The speed rises and falls as a squared sine at both ends and is level between, so that it is nought at the change
 * itself and its integral has a closed form.
 *
 * @param lifted the bow is off the strings on its way back, which is no stroke
 */
record Travel(double startS, double endS, StrokeKind kind, double from, double to, boolean lifted) {
    /** How long a bow takes to reach its speed, seconds (chosen on rendered scenes). */
    private static final double RISE_S = 0.16;

    Travel {
        if (!(endS > startS)) {
            throw new IllegalArgumentException("a span ends after it starts: " + startS + " to " + endS);
        }
    }

    /** Share of the usable bow between hand and strings at a time within the span. */
    double place(double timeS) {
        double u = share(timeS);
        double rise = rise();
        return from + (to - from) * integral(u, rise) / (1 - rise);
    }

    /** Speed towards the tip at a time within the span, usable bows per second. */
    double speed(double timeS) {
        double u = share(timeS);
        double rise = rise();
        double edge = Math.min(u, 1 - u);
        double level = edge >= rise ? 1 : square(Math.sin(Math.PI * edge / (2 * rise)));
        return (to - from) / (endS - startS) * level / (1 - rise);
    }

    /** How far the bow is off the strings, 0 to 1. */
    double lift(double timeS) {
        return lifted ? Math.sin(Math.PI * share(timeS)) : 0;
    }

    private double share(double timeS) {
        return Math.max(0, Math.min(1, (timeS - startS) / (endS - startS)));
    }

    private double rise() {
        return Math.min(0.5, RISE_S / (endS - startS));
    }

    private static double integral(double u, double rise) {
        if (u < rise) {
            return u / 2 - rise / (2 * Math.PI) * Math.sin(Math.PI * u / rise);
        }
        return u <= 1 - rise ? u - rise / 2 : 1 - rise - integral(1 - u, rise);
    }

    private static double square(double x) {
        return x * x;
    }
}
