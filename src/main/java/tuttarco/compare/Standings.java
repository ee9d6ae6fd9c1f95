package tuttarco.compare;

import java.util.Arrays;
import java.util.List;
import tuttarco.beats.Run;
import tuttarco.signal.HiddenMarkovChain;
import tuttarco.strokes.StrokeKind;

/**
 * How a player stood to a reference on each beat of one run: a hidden Markov chain over the beats with the states of {@link
 * Standing}.
 *
 * <p>What a state makes likely: who is with the reference is read with it as often as the reading's confidence says, counted
 * {@link #BEAT_OVER_MOMENT} times and at most {@link #MOST_SURE}; who is turned, against it; who is free, either as often; who rests holds still. A beat that is unsure
 * or unseen, and one on which the reference rests, speaks for no state, so that it is bridged by its neighbours. Where the
 * reference begins again after a rest, everybody may start anew: each state keeps itself only as far as {@link #KEPT_OVER_REST}.
 *
 * <p>Nothing is carried over a stop: a run is a chain of its own.
 *
 * <p>References: as {@link HiddenMarkovChain}; C. Guo et al., On calibration of modern neural networks, ICML 2017 (temperature
 * scaling).
 *
 * @param chances for each beat of the run the probability of each standing, given the whole run
 */
record Standings(Run run, double[][] chances) {
    /**
     * A beat is read right more often than a random moment of it: by so many times the log odds. Fitted by maximum likelihood
     * to 85 000 beats of simulated readings with the errors of rendered scenes; of the two real clips it would be 4.9.
     */
    private static final double BEAT_OVER_MOMENT = 1.7;

    /** No reading is trusted more than this, however sure it is of itself (measured: where readings are surest one moment in a thousand is wrong; a beat more often). */
    private static final double MOST_SURE = 0.99;

    /** Chance that a player who bows is read as holding still, and that one who rests is not, per beat (chosen). */
    private static final double MISREAD_REST = 0.05;

    /** How far a standing holds over a rest of the reference (chosen: half of those who are turned find back there). */
    private static final double KEPT_OVER_REST = 0.5;

    /** Chances to begin with each standing, in the order of {@link Standing} (chosen). */
    private static final double[] START = {0.9, 0.04, 0.05, 0.01};

    /**
     * Chances per beat to go from one standing (row) to another, in the order of {@link Standing} (chosen). That somebody turns
     * once in twenty-five beats is more than sections do: a turn of two beats in a fair reading is to be found.
     */
    private static final double[][] STEP = {
        {0.952, 0.04, 0.003, 0.005},
        {0.195, 0.79, 0.01, 0.005},
        {0.005, 0.005, 0.985, 0.005},
        {0.235, 0.01, 0.005, 0.75}
    };

    private static final int STATES = Standing.values().length;

    /**
     * @param judgements of all beats of the map
     * @param played what the player did for most of each of them
     */
    static Standings of(List<Judgement> judgements, List<Played> played, Run run) {
        double[][] evidence = new double[run.beatCount()][];
        for (int i = 0; i < evidence.length; i++) {
            int beat = run.firstIndex() + i;
            evidence[i] = logEvidence(judgements.get(beat), played.get(beat).kind());
        }
        double[][] step = logs(STEP);
        double[][] overRest = logs(overRest());
        HiddenMarkovChain chain = new HiddenMarkovChain(
                Arrays.stream(START).map(Math::log).toArray(),
                evidence,
                i -> judgements.get(run.firstIndex() + i - 1).verdict() == Verdict.REST ? overRest : step);
        return new Standings(run, chain.posterior());
    }

    /**
     * Whether somebody is taken to have stood so on a beat, by its index in the beat map: turned where that has at least the
     * given probability and is likelier than free; anything else where it is sooner true than not.
     */
    boolean taken(Standing standing, int beat, double leastTurned) {
        double chance = chance(standing, beat);
        return standing == Standing.TURNED
                ? chance >= leastTurned && chance > chance(Standing.FREE, beat)
                : chance > 0.5;
    }

    /** Probability of a standing on a beat, by its index in the beat map. */
    double chance(Standing standing, int beat) {
        return chances[beat - run.firstIndex()][standing.ordinal()];
    }

    private static double[] logEvidence(Judgement judgement, StrokeKind played) {
        double[] likely = new double[STATES];
        Arrays.fill(likely, 1);
        if (judgement.confidence().isPresent()) {
            double right = Math.min(MOST_SURE, ofBeat(judgement.confidence().getAsDouble()));
            double with = judgement.verdict() == Verdict.WITH ? right : 1 - right;
            likely[Standing.WITH.ordinal()] = (1 - MISREAD_REST) * with;
            likely[Standing.TURNED.ordinal()] = (1 - MISREAD_REST) * (1 - with);
            likely[Standing.FREE.ordinal()] = (1 - MISREAD_REST) / 2;
            likely[Standing.RESTING.ordinal()] = MISREAD_REST / 2;
        } else if (judgement.verdict() == Verdict.UNSURE && played == StrokeKind.STILL) {
            Arrays.fill(likely, MISREAD_REST);
            likely[Standing.RESTING.ordinal()] = 1 - MISREAD_REST;
        }
        return Arrays.stream(likely).map(Math::log).toArray();
    }

    /** How often a beat is read right whose random moment is so with a probability. */
    private static double ofBeat(double ofMoment) {
        double right = Math.pow(ofMoment, BEAT_OVER_MOMENT);
        return right / (right + Math.pow(1 - ofMoment, BEAT_OVER_MOMENT));
    }

    private static double[][] overRest() {
        double[][] mixed = new double[STATES][STATES];
        for (int from = 0; from < STATES; from++) {
            for (int to = 0; to < STATES; to++) {
                mixed[from][to] = KEPT_OVER_REST * STEP[from][to] + (1 - KEPT_OVER_REST) * START[to];
            }
        }
        return mixed;
    }

    private static double[][] logs(double[][] chances) {
        return Arrays.stream(chances)
                .map(row -> Arrays.stream(row).map(Math::log).toArray())
                .toArray(double[][]::new);
    }
}
