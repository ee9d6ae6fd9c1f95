package tuttarco.sound;

import java.util.OptionalDouble;

/**
 * Integrated loudness with both gates of ITU-R BS.1770: blocks under -70 LUFS don't count, nor those 10 LU and more under the
 * mean of the others. Blocks are kept by their loudness, in classes of a hundredth of a LU, so that a day takes no more memory
 * than a minute; only where the relative gate falls within a class does the result depend on it.
 */
final class GatedLoudness {
    static final double ABSOLUTE_GATE_LUFS = -70;
    private static final double RELATIVE_GATE_LU = 10;
    private static final double HIGHEST_LUFS = 30;
    private static final int PER_LU = 100;

    private final long[] counts = new long[(int) ((HIGHEST_LUFS - ABSOLUTE_GATE_LUFS) * PER_LU) + 1];
    private final double[] powers = new double[counts.length];

    void add(double power) {
        double lufs = Loudness.lufs(power);
        if (lufs > ABSOLUTE_GATE_LUFS) {
            int kind = (int) Math.min(counts.length - 1, (lufs - ABSOLUTE_GATE_LUFS) * PER_LU);
            counts[kind]++;
            powers[kind] += power;
        }
    }

    /** LUFS; empty where nothing was louder than the absolute gate. */
    OptionalDouble lufs() {
        OptionalDouble ungated = meanPower(0);
        if (ungated.isEmpty()) {
            return ungated;
        }
        double gateLufs = Loudness.lufs(ungated.getAsDouble()) - RELATIVE_GATE_LU;
        int first = (int) Math.max(0, Math.ceil((gateLufs - ABSOLUTE_GATE_LUFS) * PER_LU));
        return OptionalDouble.of(Loudness.lufs(meanPower(first).orElseThrow()));
    }

    private OptionalDouble meanPower(int first) {
        long count = 0;
        double sum = 0;
        for (int i = first; i < counts.length; i++) {
            count += counts[i];
            sum += powers[i];
        }
        return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
    }
}
