package tuttarco.signal;

import java.util.Arrays;
import java.util.function.IntFunction;

/**
 * A hidden Markov chain over given evidence: its most likely path and the posterior of every state at every step. All in
 * logarithms; time and memory grow linearly with the steps.
 *
 * <p>Reference: L. Rabiner, A tutorial on hidden Markov models, Proc. IEEE 77 (1989) 257: forward and backward (eqs. 19
 * to 27), Viterbi (eqs. 32 to 35).
 *
 * @param logStart log probability of each state at the first step
 * @param logEvidence for each step, log likelihood of what was seen in each state
 * @param logTransitions for step i (from 1), log probability of going from a state (first index) at step i - 1 to a state
 *     (second index) at step i
 */
public record HiddenMarkovChain(double[] logStart, double[][] logEvidence, IntFunction<double[][]> logTransitions) {
    public HiddenMarkovChain {
        if (logEvidence.length == 0) {
            throw new IllegalArgumentException("a chain has at least one step");
        }
    }

    /** The most likely sequence of states. */
    public int[] path() {
        int n = logEvidence.length;
        int states = logStart.length;
        int[][] cameFrom = new int[n][states];
        double[] best = sum(logStart, logEvidence[0]);
        for (int i = 1; i < n; i++) {
            double[][] transition = logTransitions.apply(i);
            double[] next = new double[states];
            for (int to = 0; to < states; to++) {
                int from = 0;
                for (int s = 1; s < states; s++) {
                    if (best[s] + transition[s][to] > best[from] + transition[from][to]) {
                        from = s;
                    }
                }
                cameFrom[i][to] = from;
                next[to] = best[from] + transition[from][to] + logEvidence[i][to];
            }
            best = next;
        }
        int[] path = new int[n];
        for (int s = 1; s < states; s++) {
            if (best[s] > best[path[n - 1]]) {
                path[n - 1] = s;
            }
        }
        for (int i = n - 1; i > 0; i--) {
            path[i - 1] = cameFrom[i][path[i]];
        }
        return path;
    }

    /** For each step, the probability of each state given all the evidence. */
    public double[][] posterior() {
        double[][] forward = forward();
        int n = forward.length;
        int states = logStart.length;
        double[] backward = new double[states];
        double[][] posterior = new double[n][];
        for (int i = n - 1; i >= 0; i--) {
            double[] joint = sum(forward[i], backward);
            double total = logSum(joint);
            posterior[i] = Arrays.stream(joint).map(j -> Math.exp(j - total)).toArray();
            if (i > 0) {
                backward = earlier(sum(logEvidence[i], backward), logTransitions.apply(i));
            }
        }
        return posterior;
    }

    private double[][] forward() {
        int n = logEvidence.length;
        int states = logStart.length;
        double[][] forward = new double[n][];
        forward[0] = sum(logStart, logEvidence[0]);
        double[] in = new double[states];
        for (int i = 1; i < n; i++) {
            double[][] transition = logTransitions.apply(i);
            forward[i] = new double[states];
            for (int to = 0; to < states; to++) {
                for (int from = 0; from < states; from++) {
                    in[from] = forward[i - 1][from] + transition[from][to];
                }
                forward[i][to] = logSum(in) + logEvidence[i][to];
            }
        }
        return forward;
    }

    private static double[] earlier(double[] later, double[][] transition) {
        double[] earlier = new double[later.length];
        for (int from = 0; from < later.length; from++) {
            earlier[from] = logSum(sum(transition[from], later));
        }
        return earlier;
    }

    private static double[] sum(double[] a, double[] b) {
        double[] sum = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            sum[i] = a[i] + b[i];
        }
        return sum;
    }

    private static double logSum(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return most + Math.log(sum);
    }
}
