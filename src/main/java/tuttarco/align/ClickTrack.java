package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Clicks that follow each other regularly: of all {@link Ticks} the chain that is least likely by chance, by dynamic
 * programming over ticks and periods (after D. Ellis, Beat tracking by dynamic programming, J. New Music Res. 36, 2007,
 * whose period is fixed). The period may drift, jump at a cost, and clicks may be missing at a cost.
 *
 * @param timesS when each sounds, seconds from the clip's start; those that are missing lie evenly between those heard
 * @param jitterS by how much those heard stray from regularity, as a standard deviation, seconds
 */
record ClickTrack(double[] timesS, double jitterS) {
    /** Periods a metronome has, seconds: 240 to 30 a minute (common practice, no source). */
    private static final double SHORTEST_S = 0.25;

    private static final double LONGEST_S = 2;

    /** Each period to try is longer than the one before by this share. */
    private static final double STEP = 0.02;

    private static final int PERIODS = 1 + (int) Math.ceil(Math.log(LONGEST_S / SHORTEST_S) / Math.log(1 + STEP));

    /** Clicks that may be missing between two that are heard: but one of a bar of five (chosen). */
    private static final int MOST_MISSING = 3;

    /** How far ticks stray, seconds, against how finely they are looked for (chosen: about one hop). */
    private static final double STRAY_S = 0.005;

    /** Ticks further off than so many standard deviations are others. */
    private static final double FURTHEST = 2.5;

    /** Worth of a tick of which chance alone offers another nearby (chosen on noise and music without clicks). */
    private static final double CHANCE = 2.5;

    /** What a missing click costs, and a step and a jump to another period; as logarithms of odds (chosen). */
    private static final double MISSING = 1.5;

    private static final double DRIFT = 0.3;
    private static final double JUMP = 3;

    /** Fewer clicks are no track (chosen: two bars of four). */
    private static final int FEWEST = 8;

    /**
     * Clicks must be worth so many times the best chain of the same ticks, shaken (chosen: 9.7 and more with clicks, 1.3 and
     * less without, on synthesised sound and on two recordings of a violin).
     */
    private static final double BETTER = 3;

    /** Ticks are shaken by so much either way, seconds. */
    private static final double SHAKING_S = 0.5;

    /** Clicks stray no more than this, seconds (chosen: twice as much as those in synthesised sound). */
    private static final double MOST_JITTER_S = 0.008;

    /** The clicks in what was heard, or nothing if nothing regular is in it. */
    static Optional<ClickTrack> in(Ticks ticks) {
        Chain chain = Chain.best(ticks);
        if (chain.ticks().size() < FEWEST
                || !(chain.worth() > BETTER * Chain.best(shaken(ticks)).worth())) {
            return Optional.empty();
        }
        return Optional.of(of(ticks, chain)).filter(track -> track.jitterS <= MOST_JITTER_S);
    }

    private static Ticks shaken(Ticks ticks) {
        Random random = new Random(1);
        double[] timesS = Arrays.stream(ticks.timesS())
                .map(t -> t + SHAKING_S * (2 * random.nextDouble() - 1))
                .toArray();
        int[] order = IntStream.range(0, timesS.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> timesS[i]))
                .mapToInt(i -> i)
                .toArray();
        return new Ticks(
                Arrays.stream(order).mapToDouble(i -> timesS[i]).toArray(),
                Arrays.stream(order).mapToDouble(i -> ticks.strengths()[i]).toArray());
    }

    private static ClickTrack of(Ticks ticks, Chain chain) {
        List<Double> timesS = new ArrayList<>();
        List<Double> strays = new ArrayList<>();
        for (int c = 0; c < chain.ticks().size(); c++) {
            double atS = ticks.timesS()[chain.ticks().get(c)];
            int periods = chain.periods().get(c);
            double lastS = timesS.isEmpty() ? atS : timesS.get(timesS.size() - 1);
            for (int k = 1; k < periods; k++) {
                timesS.add(lastS + (atS - lastS) * k / periods);
            }
            timesS.add(atS);
            if (c >= 2 && periods == 1 && chain.periods().get(c - 1) == 1) {
                strays.add(Math.abs(lastS - (timesS.get(timesS.size() - 3) + atS) / 2));
            }
        }
        // a middle one of three strays with the variance of 1 + 1/4 + 1/4; the median of a normal spread is 0.6745 of
        // it
        double jitterS = strays.isEmpty()
                ? Double.POSITIVE_INFINITY
                : new Median().evaluate(strays.stream().mapToDouble(s -> s).toArray()) / 0.6745 / Math.sqrt(1.5);
        return new ClickTrack(timesS.stream().mapToDouble(t -> t).toArray(), jitterS);
    }

    /**
     * Ticks that follow each other regularly.
     *
     * @param ticks their indices
     * @param periods for each how many periods it comes after the one before; 0 for the first
     */
    private record Chain(double worth, List<Integer> ticks, List<Integer> periods) {
        private static final Chain NONE = new Chain(0, List.of(), List.of());

        /** The best chain, sought twice: what chance offers is known only once the clicks are taken out. */
        static Chain best(Ticks ticks) {
            return best(ticks, worths(ticks, best(ticks, worths(ticks, NONE))));
        }

        private static Chain best(Ticks ticks, double[] worths) {
            int count = ticks.timesS().length;
            double[][] totals = new double[count][PERIODS];
            Step[][] steps = new Step[count][PERIODS];
            int[] bestPeriods = new int[count];
            int last = -1;
            for (int i = 0; i < count; i++) {
                for (int p = 0; p < PERIODS; p++) {
                    Step step = step(ticks.timesS(), i, p, totals, bestPeriods);
                    steps[i][p] = step;
                    totals[i][p] = step.total() + worths[i];
                    if (totals[i][p] > totals[i][bestPeriods[i]]) {
                        bestPeriods[i] = p;
                    }
                }
                if (last < 0 || totals[i][bestPeriods[i]] > totals[last][bestPeriods[last]]) {
                    last = i;
                }
            }
            List<Integer> chain = new ArrayList<>();
            List<Integer> periods = new ArrayList<>();
            double worth = last < 0 ? 0 : totals[last][bestPeriods[last]];
            int period = last < 0 ? 0 : bestPeriods[last];
            for (int at = last; at >= 0; ) {
                Step step = steps[at][period];
                chain.add(at);
                periods.add(step.periods());
                at = step.tick();
                period = step.period();
            }
            Collections.reverse(chain);
            Collections.reverse(periods);
            return new Chain(worth, chain, periods);
        }

        /** Where a chain comes from: a tick and a period, so many periods before; none, -1, where it begins. */
        private record Step(double total, int tick, int period, int periods) {}

        private static Step step(double[] timesS, int i, int p, double[][] totals, int[] bestPeriods) {
            Step best = new Step(0, -1, 0, 0);
            double periodS = SHORTEST_S * Math.pow(1 + STEP, p);
            for (int periods = 1; periods <= 1 + MOST_MISSING; periods++) {
                double atS = timesS[i] - periods * periodS;
                // a period between two of those tried is off by half a step at most
                double strayS = Math.hypot(STRAY_S, periods * periodS * STEP / Math.sqrt(12));
                int k = Arrays.binarySearch(timesS, atS - FURTHEST * strayS);
                for (k = k < 0 ? -k - 1 : k; k < i && timesS[k] <= atS + FURTHEST * strayS; k++) {
                    double off = (timesS[k] - atS) / strayS;
                    double cost = MISSING * (periods - 1) + off * off / 2;
                    for (int q = Math.max(0, p - 1); q <= Math.min(PERIODS - 1, p + 1); q++) {
                        double total = totals[k][q] - cost - (q == p ? 0 : DRIFT);
                        best = total > best.total() ? new Step(total, k, q, periods) : best;
                    }
                    double total = totals[k][bestPeriods[k]] - cost - JUMP;
                    best = total > best.total() ? new Step(total, k, bestPeriods[k], periods) : best;
                }
            }
            return best;
        }

        /** By how seldom another tick as strong is near, as the logarithm of odds; the chain's own are no others. */
        private static double[] worths(Ticks ticks, Chain own) {
            int count = ticks.timesS().length;
            double lengthS = count == 0 ? 1 : 1 + ticks.timesS()[count - 1] - ticks.timesS()[0];
            double nearS = 2 * FURTHEST * STRAY_S;
            double[] rising = IntStream.range(0, count)
                    .filter(i -> Collections.binarySearch(own.ticks(), i) < 0)
                    .mapToDouble(i -> ticks.strengths()[i])
                    .sorted()
                    .toArray();
            return Arrays.stream(ticks.strengths())
                    .map(strength -> 1 + rising.length - firstAtLeast(rising, strength))
                    .map(others -> -Math.log(others / lengthS * nearS) - CHANCE)
                    .toArray();
        }

        private static int firstAtLeast(double[] rising, double value) {
            int low = 0;
            int high = rising.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (rising[middle] < value) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }
}
