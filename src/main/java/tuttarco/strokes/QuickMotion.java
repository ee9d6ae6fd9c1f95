package tuttarco.strokes;

import java.util.Arrays;
import java.util.List;
import tuttarco.tracks.ArmSample;

/** Where an arm goes to and fro too quickly for one stroke to be told from the next. */
final class QuickMotion {
    /** Motion is averaged over this long to either side, seconds. */
    private static final double WITHIN_S = 0.25;

    /** Quick motion is so much of all motion at least, share of the energy; chosen on rendered scenes. */
    private static final double MOST = 0.6;

    /** Slower than this, root mean square in shoulder widths per second, it is noise; chosen on rendered scenes. */
    private static final double NOISE = 0.2;

    /** It lasts at least so long, seconds: three strokes of ten a second. */
    private static final double LEAST_S = 0.3;

    private QuickMotion() {}

    /** For each sample, whether the arm moves too quickly there. */
    static boolean[] of(List<ArmSample.Seen> samples) {
        boolean[] quick = new boolean[samples.size()];
        int first = 0;
        int end = 0;
        double trembling = 0;
        double steady = 0;
        for (int i = 0; i < quick.length; i++) {
            double timeS = samples.get(i).timeS();
            while (end < quick.length && samples.get(end).timeS() <= timeS + WITHIN_S) {
                trembling += trembling(samples.get(end));
                steady += steady(samples.get(end));
                end++;
            }
            while (samples.get(first).timeS() < timeS - WITHIN_S) {
                trembling -= trembling(samples.get(first));
                steady -= steady(samples.get(first));
                first++;
            }
            double all = trembling + steady;
            quick[i] = trembling > MOST * all && all > NOISE * NOISE * (end - first);
        }
        withoutShort(quick, samples);
        return quick;
    }

    private static void withoutShort(boolean[] quick, List<ArmSample.Seen> samples) {
        int first = 0;
        for (int i = 1; i <= quick.length; i++) {
            if (i == quick.length || quick[i] != quick[first]) {
                if (samples.get(i - 1).timeS() - samples.get(first).timeS() < LEAST_S) {
                    Arrays.fill(quick, first, i, false);
                }
                first = i;
            }
        }
    }

    private static double trembling(ArmSample.Seen sample) {
        return sample.gesture().trembling() * sample.gesture().trembling();
    }

    private static double steady(ArmSample.Seen sample) {
        return sample.velocity() * sample.velocity()
                + sample.gesture().across() * sample.gesture().across();
    }
}
