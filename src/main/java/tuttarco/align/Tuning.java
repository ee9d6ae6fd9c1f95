package tuttarco.align;

/**
 * How far the players' A lies above 440 Hz, from where the peaks of the spectra lie between the semitones: the direction of
 * their mean on the circle, weighted by their amplitude.
 */
final class Tuning {
    /** Peaks between these lie wide enough apart for the spectrum, and are loud in strings; hertz. */
    private static final double LOWEST_HZ = 250;

    private static final double HIGHEST_HZ = 2000;

    private double east;
    private double north;

    /** Takes a power spectrum into account. */
    void add(double[] power) {
        int last = (int) SemitoneBands.binOf(HIGHEST_HZ);
        for (int k = (int) SemitoneBands.binOf(LOWEST_HZ); k < last; k++) {
            if (power[k] > power[k - 1] && power[k] >= power[k + 1]) {
                double semitone = SemitoneBands.semitone(SemitoneBands.hzOf(k + peakOffset(power, k)));
                double amplitude = Math.sqrt(power[k]);
                east += amplitude * Math.cos(2 * Math.PI * semitone);
                north += amplitude * Math.sin(2 * Math.PI * semitone);
            }
        }
    }

    /** Where the parabola through the logarithms of three neighbours has its top, in bins from the middle one. */
    private static double peakOffset(double[] power, int k) {
        double before = Math.log(power[k - 1] + Double.MIN_NORMAL);
        double here = Math.log(power[k] + Double.MIN_NORMAL);
        double after = Math.log(power[k + 1] + Double.MIN_NORMAL);
        double bend = before - 2 * here + after;
        return bend < 0 ? 0.5 * (before - after) / bend : 0;
    }

    /** Semitones, -0.5 to 0.5; 0 if nothing was heard. */
    double semitones() {
        return Math.atan2(north, east) / (2 * Math.PI);
    }
}
