package tuttarco.stats;

import java.util.List;

/**
 * How closely phases lie together: the length of the mean of unit vectors that point their way, called order parameter (Y.
 * Kuramoto, Chemical Oscillations, Waves, and Turbulence, 1984) or mean resultant length (K. V. Mardia, P. E. Jupp,
 * Directional Statistics, 2000).
 */
public final class PhaseOrder {
    private PhaseOrder() {}

    /**
     * 1 where all are equal, 0 where they cancel; of {@code n} phases by chance about {@code 0.9 / sqrt(n)}.
     *
     * @param phasesRad at least one, radians
     */
    public static double of(List<Double> phasesRad) {
        if (phasesRad.isEmpty()) {
            throw new IllegalArgumentException("without phases there is no order");
        }
        double x = phasesRad.stream().mapToDouble(Math::cos).average().orElseThrow();
        double y = phasesRad.stream().mapToDouble(Math::sin).average().orElseThrow();
        return Math.min(1, Math.hypot(x, y));
    }
}
