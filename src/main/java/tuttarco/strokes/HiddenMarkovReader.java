package tuttarco.strokes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import tuttarco.signal.HiddenMarkovChain;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * Reads strokes with a hidden Markov model over the velocity along the bow: the arm goes down, goes up or rests; how long
 * it stays so is exponential in time; what is seen follows {@link BowModel}. The most likely path gives the spans, the
 * posterior says how sure each is, and a change between down and up is set to where the velocity crosses zero, between
 * the frames.
 *
 * <p>Reference: {@link HiddenMarkovChain}.
 *
 * <p>Differences from the paper: successive samples are not independent, since the track is smoothed; each counts for as
 * many independent ones as the smoothing leaves ({@link Settings#independentPerS}). The posterior is mixed with the
 * chance that the track's sign is wrong. A direction that is then less sure than {@link Settings#leastConfidence} is not
 * claimed; the span is {@code unsure} and its confidence is that of the likelier direction. So is a part of a stroke in
 * which the posterior leaves the direction open for long, a rest that is less likely than bowing, and one during which the
 * slowest bowing could have gone unnoticed.
 */
public final class HiddenMarkovReader implements StrokeReader {
    private static final int DOWN = 0;
    private static final int UP = 1;
    private static final int STILL = 2;

    /**
     * A direction that is less sure than this for so long, seconds, is doubted there, whatever the rest of the stroke:
     * there may have been a change that nobody saw. Rendered scenes.
     */
    private static final double DOUBTED_BELOW = 0.6;

    private static final double DOUBTED_S = 0.25;

    /** A rest that is less likely than bowing is not claimed, though it lies on the likeliest way through the clip. */
    private static final double LEAST_REST = 0.5;

    /** A zero crossing is looked for this close to where the path changes, seconds: the smoothing's reach. */
    static final double CROSSING_REACH_S = 0.25;

    /** Of a half-normal distribution, the upper half has a root mean square of this many scales (closed form). */
    private static final double UPPER_HALF_RMS = 1.3664;

    /**
     * Settings of the reader.
     *
     * @param strokeS typical length of a stroke, seconds (common practice, no source: a quarter note at 85 a minute)
     * @param restS typical time from one rest to the next, seconds
     * @param stillS typical length of a rest, seconds
     * @param independentPerS independent samples a second in a smoothed track: twice its cut-off of 4 Hz
     * @param restNoise velocity of a resting arm, shoulder widths per second
     * @param slowestBowing least scale of bow speed, shoulder widths per second; a slower arm rests, if noise leaves
     *     that much to be seen
     * @param leastConfidence a direction less sure than this is not claimed
     */
    public record Settings(
            double strokeS,
            double restS,
            double stillS,
            double independentPerS,
            double restNoise,
            double slowestBowing,
            double leastConfidence) {
        public static final Settings DEFAULT = new Settings(0.7, 20, 1.5, 8, 0.02, 0.1, 0.7);

        public Settings {
            if (!(strokeS > 0
                    && restS > 0
                    && stillS > 0
                    && independentPerS > 0
                    && restNoise > 0
                    && slowestBowing > 0)) {
                throw new IllegalArgumentException("lengths, rates and speeds are positive");
            }
            if (!(leastConfidence >= 0.5 && leastConfidence < 1)) {
                throw new IllegalArgumentException("least confidence lies in 0.5 to 1, not " + leastConfidence);
            }
        }
    }

    private final Settings settings;

    public HiddenMarkovReader(Settings settings) {
        this.settings = settings;
    }

    @Override
    public Reading read(ArmTrack track) {
        List<Stroke> strokes = new ArrayList<>();
        List<ArmSample> samples = track.samples();
        double cursorS = track.startS();
        int first = 0;
        while (first < samples.size()) {
            int end = endOfRun(track, first);
            double untilS = end == samples.size() ? track.endS() : borderS(track, end);
            if (untilS > cursorS) {
                strokes.addAll(spans(samples.subList(first, end), cursorS, untilS));
                cursorS = untilS;
            }
            first = end;
        }
        if (samples.isEmpty() && track.endS() > track.startS()) {
            strokes.add(new Stroke(track.startS(), track.endS(), StrokeKind.UNSEEN, 1));
        }
        return new Reading(track.player(), strokes);
    }

    /** Where the run of samples that are all seen in one shot, or all lost, ends. */
    private static int endOfRun(ArmTrack track, int first) {
        List<ArmSample> samples = track.samples();
        boolean seen = samples.get(first) instanceof ArmSample.Seen;
        int end = first + 1;
        while (end < samples.size()
                && samples.get(end) instanceof ArmSample.Seen == seen
                && !(seen && cutBefore(track, end).isPresent())) {
            end++;
        }
        return end;
    }

    /** When a run ends that ends before a sample: at a cut if there is one, else half way. */
    private static double borderS(ArmTrack track, int end) {
        return cutBefore(track, end)
                .orElse(midS(track.samples().get(end - 1), track.samples().get(end)));
    }

    private static Optional<Double> cutBefore(ArmTrack track, int i) {
        return track.cutBetween(
                track.samples().get(i - 1).timeS(), track.samples().get(i).timeS());
    }

    private List<Stroke> spans(List<ArmSample> samples, double startS, double endS) {
        List<ArmSample.Seen> run = samples.stream()
                .filter(ArmSample.Seen.class::isInstance)
                .map(ArmSample.Seen.class::cast)
                .toList();
        if (run.isEmpty()) {
            return List.of(new Stroke(startS, endS, StrokeKind.UNSEEN, 1));
        }
        HiddenMarkovChain chain = chain(run);
        double[][] posterior = mixed(chain.posterior(), run);
        int[] path = chain.path();
        BitSet doubted = doubted(path, posterior, run);
        List<Stroke> strokes = new ArrayList<>();
        double cursorS = startS;
        int first = 0;
        for (int i = 1; i <= path.length; i++) {
            if (i < path.length && path[i] == path[first] && doubted.get(i) == doubted.get(first)) {
                continue;
            }
            double untilS = i == path.length ? endS : changeS(run, path, i);
            if (untilS > cursorS) {
                double[] chances = mean(posterior, first, i);
                boolean known = path[first] == STILL ? quiet(run.subList(first, i)) : !doubted.get(first);
                strokes.add(stroke(cursorS, untilS, path[first], chances, known));
                cursorS = untilS;
            }
            first = i;
        }
        return strokes;
    }

    private Stroke stroke(double startS, double endS, int state, double[] chances, boolean known) {
        double confidence = chances[state];
        if (!known || confidence < (state == STILL ? LEAST_REST : settings.leastConfidence())) {
            return new Stroke(startS, endS, StrokeKind.UNSURE, Math.max(chances[DOWN], chances[UP]));
        }
        StrokeKind kind = state == STILL ? StrokeKind.STILL : state == DOWN ? StrokeKind.DOWN : StrokeKind.UP;
        return new Stroke(startS, endS, kind, confidence);
    }

    /** Whether the slowest bowing would have been noticed, so that the arm rests where none was. */
    private boolean quiet(List<ArmSample.Seen> during) {
        double noise =
                during.stream().mapToDouble(ArmSample.Seen::noise).average().orElseThrow();
        return noise <= settings.slowestBowing();
    }

    /** The chance of each state, mixed with the chance that the track's sign is wrong. */
    private static double[][] mixed(double[][] posterior, List<ArmSample.Seen> run) {
        double[][] mixed = new double[posterior.length][];
        for (int i = 0; i < mixed.length; i++) {
            double sign = run.get(i).sign();
            double down = posterior[i][DOWN];
            double up = posterior[i][UP];
            mixed[i] = new double[] {down * sign + up * (1 - sign), up * sign + down * (1 - sign), posterior[i][STILL]};
        }
        return mixed;
    }

    /** Where along the path a direction is long doubted. */
    private static BitSet doubted(int[] path, double[][] chances, List<ArmSample.Seen> run) {
        BitSet doubted = new BitSet();
        int first = 0;
        while (first < path.length) {
            int end = first;
            while (end < path.length && path[end] == path[first] && inDoubt(chances[end], path[end])) {
                end++;
            }
            if (end > first && run.get(end - 1).timeS() - run.get(first).timeS() >= DOUBTED_S) {
                doubted.set(first, end);
            }
            first = Math.max(end, first + 1);
        }
        return doubted;
    }

    private static boolean inDoubt(double[] chances, int state) {
        return state != STILL && chances[state] < DOUBTED_BELOW;
    }

    private static double[] mean(double[][] chances, int first, int end) {
        double[] mean = new double[3];
        for (int i = first; i < end; i++) {
            for (int state = 0; state < mean.length; state++) {
                mean[state] += chances[i][state] / (end - first);
            }
        }
        return Arrays.stream(mean).map(chance -> Math.min(1, chance)).toArray();
    }

    /** When the state changes before sample {@code i}: where the velocity crosses zero nearest to there, else half way. */
    private static double changeS(List<ArmSample.Seen> run, int[] path, int i) {
        double midS = midS(run.get(i - 1), run.get(i));
        if (path[i] == STILL || path[i - 1] == STILL || path[i] == path[i - 1]) {
            return midS;
        }
        int first = i - 1;
        while (first > 0
                && path[first - 1] == path[i - 1]
                && midS - run.get(first).timeS() < CROSSING_REACH_S) {
            first--;
        }
        double nearestS = Double.POSITIVE_INFINITY;
        for (int j = first; j + 1 < path.length && run.get(j).timeS() - midS < CROSSING_REACH_S; j++) {
            if (j >= i && path[j] != path[i]) {
                break;
            }
            double crossingS = crossingS(run.get(j), run.get(j + 1), path[i]);
            if (Math.abs(crossingS - midS) < Math.abs(nearestS - midS)) {
                nearestS = crossingS;
            }
        }
        return Math.abs(nearestS - midS) < CROSSING_REACH_S ? nearestS : midS;
    }

    /** Where the velocity crosses zero towards the new state between two samples, seconds; infinite if it does not. */
    private static double crossingS(ArmSample.Seen a, ArmSample.Seen b, int to) {
        double before = to == DOWN ? a.velocity() : -a.velocity();
        double after = to == DOWN ? b.velocity() : -b.velocity();
        if (before > 0 || after <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return a.timeS() + (b.timeS() - a.timeS()) * before / (before - after);
    }

    private static double midS(ArmSample a, ArmSample b) {
        return 0.5 * (a.timeS() + b.timeS());
    }

    private HiddenMarkovChain chain(List<ArmSample.Seen> run) {
        BowModel model = new BowModel(Math.max(settings.slowestBowing(), bowSpeed(run)), settings.restNoise());
        double[] stepS = new double[run.size()];
        double[][] evidence = new double[run.size()][];
        for (int i = 0; i < evidence.length; i++) {
            int later = Math.min(Math.max(i, 1), evidence.length - 1);
            stepS[i] =
                    later == 0 ? 0 : run.get(later).timeS() - run.get(later - 1).timeS();
            double weight = Math.min(1, stepS[i] * settings.independentPerS());
            evidence[i] = Arrays.stream(model.logLikelihood(run.get(i)))
                    .map(l -> l * weight)
                    .toArray();
        }
        double third = Math.log(1.0 / 3);
        return new HiddenMarkovChain(new double[] {third, third, third}, evidence, i -> logTransitions(stepS[i]));
    }

    /** Scale of the bow speed, from the faster half of the velocities, so that rests do not count as slow bowing. */
    private static double bowSpeed(List<ArmSample.Seen> run) {
        double[] speeds =
                run.stream().mapToDouble(s -> Math.abs(s.velocity())).sorted().toArray();
        double meanSquare = Arrays.stream(speeds, speeds.length / 2, speeds.length)
                .map(v -> v * v)
                .average()
                .orElse(0);
        return Math.sqrt(meanSquare) / UPPER_HALF_RMS;
    }

    private double[][] logTransitions(double stepS) {
        double turn = leaving(stepS, settings.strokeS());
        double stop = leaving(stepS, settings.restS());
        double start = leaving(stepS, settings.stillS());
        double stay = Math.log((1 - turn) * (1 - stop));
        return new double[][] {
            {stay, Math.log(turn), Math.log(stop)},
            {Math.log(turn), stay, Math.log(stop)},
            {Math.log(start / 2), Math.log(start / 2), Math.log(1 - start)}
        };
    }

    /** Chance to leave a state of the given mean length within a step. */
    private static double leaving(double stepS, double meanS) {
        return 1 - Math.exp(-Math.max(stepS, 1e-6) / meanS);
    }
}
