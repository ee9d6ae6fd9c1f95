package tuttarco.sound;

/** Between the mean square of K-weighted samples and loudness in LUFS (ITU-R BS.1770-4, annex 1). */
final class Loudness {
    /** Makes a sine of 997 Hz read what it would unweighted; LU. */
    private static final double OFFSET_LU = -0.691;

    private Loudness() {}

    /** Minus infinity for silence. */
    static double lufs(double power) {
        return OFFSET_LU + 10 * Math.log10(power);
    }

    static double power(double lufs) {
        return Math.pow(10, (lufs - OFFSET_LU) / 10);
    }
}
