package tuttarco.align;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * When the moments of one recording come in another that plays the same, and how sure that is. Between two moments the one is
 * stretched evenly onto the other; how alike they sound so, how alike they grow louder and how evenly the tempo runs are
 * weighed together over all moments in a {@linkplain Chain chain}.
 */
final class CarryTimer {
    /** Worth of a half hop's fit: neighbouring spectra overlap and tell much the same (chosen on synthesised sound). */
    private static final double FIT_WEIGHT = 1;

    /** Worth of growing louder together, by the usual spread of each (chosen on synthesised sound). */
    private static final double FLUX_WEIGHT = 0.05;

    /** Moments further apart have others between them, so that the tempo may change; seconds (chosen). */
    private static final double FURTHEST_S = 1;

    /** How unevenly one playing goes along the other, as the spread of the logarithm of their tempi (chosen as those are). */
    private static final double UNEVENNESS = 0.1;

    private final SoundFeatures from;
    private final SoundFeatures to;
    private final Guide guide;
    private final Fit fit;
    private final float[] fromGrowth;
    private final float[] toGrowth;

    /** @param guide what the first recording holds, frame by frame */
    CarryTimer(SoundFeatures from, SoundFeatures to, Guide guide) {
        this.from = from;
        this.to = to;
        this.guide = guide;
        fit = new Fit(guide, to.bands());
        fromGrowth = growth(from.flux());
        toGrowth = growth(to.flux());
    }

    /** A moment's time in the second recording, seconds, and its standard error. */
    record Carried(double timeS, double stderrS) {}

    /**
     * Carries moments over.
     *
     * @param passage seconds of the first recording against those of the second
     * @param momentsS of the first recording, rising strictly, at least one
     * @param endS until when the first recording is played after the last of them
     */
    List<Carried> carried(Passage passage, double[] momentsS, double endS) {
        List<Double> knotsS = new ArrayList<>();
        int[] knotOf = new int[momentsS.length];
        for (int k = 0; k < momentsS.length; k++) {
            knotOf[k] = knotsS.size();
            addEvenly(knotsS, momentsS[k], k + 1 < momentsS.length ? momentsS[k + 1] : endS);
        }
        if (endS > momentsS[momentsS.length - 1]) {
            knotsS.add(endS);
        }
        DoubleUnaryOperator even = passage.smooth(PassageTimer.SMOOTH_S)::timeS;
        int[] guess = knotsS.stream()
                .mapToInt(atS -> (int) Math.round((passage.timeS(atS) - to.startS()) / SoundFeatures.FLUX_HOP_S))
                .toArray();
        List<Chain.Link> links = new ArrayList<>();
        links.add((a, b) -> 0);
        for (int k = 1; k < guess.length; k++) {
            double fromS = knotsS.get(k - 1);
            double toS = knotsS.get(k);
            links.add(link(fromS, toS, even.applyAsDouble(toS) - even.applyAsDouble(fromS), guess[k - 1], guess[k]));
        }
        List<Chain.Found> found = Chain.found(new double[guess.length][OnsetTimer.PLACES], links);
        List<Carried> carried = new ArrayList<>();
        for (int knot : knotOf) {
            Chain.Found place = found.get(knot);
            carried.add(new Carried(
                    to.startS() + (guess[knot] - OnsetTimer.REACH + place.middle()) * SoundFeatures.FLUX_HOP_S,
                    place.spread() * SoundFeatures.FLUX_HOP_S));
        }
        return carried;
    }

    /** The flux by how much it stands out against {@link OnsetTimer#AROUND_S} each side of it, in its spreads there. */
    private static float[] growth(float[] flux) {
        int around = (int) (OnsetTimer.AROUND_S / SoundFeatures.FLUX_HOP_S);
        double[] sums = new double[flux.length + 1];
        double[] squares = new double[flux.length + 1];
        for (int i = 0; i < flux.length; i++) {
            sums[i + 1] = sums[i] + flux[i];
            squares[i + 1] = squares[i] + (double) flux[i] * flux[i];
        }
        float[] growth = new float[flux.length];
        for (int i = 0; i < flux.length; i++) {
            int from = Math.max(0, i - around);
            int to = Math.min(flux.length, i + around);
            double mean = (sums[to] - sums[from]) / (to - from);
            double variance = (squares[to] - squares[from]) / (to - from) - mean * mean;
            growth[i] = (float) Math.min(
                    OnsetTimer.MOST_SPREADS,
                    (flux[i] - mean) / Math.sqrt(Math.max(variance, OnsetTimer.LEAST_VARIANCE)));
        }
        return growth;
    }

    /** Adds a moment and others evenly between it and the next. */
    private static void addEvenly(List<Double> knotsS, double fromS, double toS) {
        int count = Math.max(1, (int) Math.ceil((toS - fromS) / FURTHEST_S));
        for (int i = 0; i < count; i++) {
            knotsS.add(fromS + (toS - fromS) * i / count);
        }
    }

    /** What speaks for two moments to lie at two places, by place of the first and the second. */
    private Chain.Link link(double fromS, double toS, double expectedS, int guessBefore, int guess) {
        int apart = guess - guessBefore;
        int steps = Math.max(1, (int) Math.round((toS - fromS) / SoundFeatures.FLUX_HOP_S));
        int first = guessBefore - OnsetTimer.REACH;
        double[][] worths = new double[steps][apart + OnsetTimer.PLACES];
        for (int i = 0; i < steps; i++) {
            add(worths[i], fromS + (i + 0.5) / steps * (toS - fromS), first);
        }
        float[][] together = new float[OnsetTimer.PLACES][OnsetTimer.PLACES];
        for (int a = 0; a < OnsetTimer.PLACES; a++) {
            for (int b = 0; b < OnsetTimer.PLACES; b++) {
                together[a][b] = (float) together(worths, a, apart + b, expectedS);
            }
        }
        return (a, b) -> together[a][b];
    }

    /** Adds how well a moment of the first recording fits each place of the second from one on. */
    private void add(double[] worths, double atS, int first) {
        int sound = guide.soundAt(atS);
        float growth = at(fromGrowth, from.fluxIndex(atS));
        double before = fit(Math.floorDiv(first, 2), sound);
        for (int i = 0; i < worths.length; i++) {
            int place = first + i;
            // an even place is the middle of a frame, an odd one lies between two
            double here = fit(Math.floorDiv(place + 1, 2), sound);
            double grown = growth * at(toGrowth, to.fluxIndex(to.startS() + place * SoundFeatures.FLUX_HOP_S));
            worths[i] = FIT_WEIGHT * (before + here) / 2 + FLUX_WEIGHT * grown;
            before = here;
        }
    }

    private double fit(int frame, int sound) {
        boolean heard = frame >= 0 && frame < to.shapes().size();
        return heard ? fit.of(to.shapes().get(frame), sound) : -Fit.WELL;
    }

    private static float at(float[] growth, int index) {
        return index >= 0 && index < growth.length ? growth[index] : 0;
    }

    private static double together(double[][] worths, int start, int end, double expectedS) {
        if (end < start) {
            return Double.NEGATIVE_INFINITY;
        }
        double lasts = Math.max(0.5, end - start);
        double much = Math.log(lasts * SoundFeatures.FLUX_HOP_S / expectedS) / UNEVENNESS;
        double worth = -much * much / 2;
        for (int i = 0; i < worths.length; i++) {
            int place = (int) Math.round(start + (i + 0.5) / worths.length * (end - start));
            worth += worths[i][Math.min(place, worths[i].length - 1)];
        }
        return worth;
    }
}
