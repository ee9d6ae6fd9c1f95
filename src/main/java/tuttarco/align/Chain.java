package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Things that follow each other, each at one of so many places, weighed all together by the forward-backward rule (L. R.
 * Rabiner, Proc. IEEE 77, 1989).
 */
final class Chain {
    private Chain() {}

    /** What speaks for a thing to be at place b if the one before is at place a, as a logarithm. */
    interface Link {
        double worth(int a, int b);
    }

    /**
     * Where a thing is.
     *
     * @param middle the place before and after which it is as likely to be: of two places it is at the likelier, not between
     * @param spread how far it may be from there, with what rounding to a place adds
     */
    record Found(double middle, double spread) {}

    /**
     * Finds all things.
     *
     * @param alone what speaks for each place of each thing by itself, as logarithms
     * @param links of each thing to the one before it; the first is not looked at
     */
    static List<Found> found(double[][] alone, List<Link> links) {
        int count = alone.length;
        int places = alone[0].length;
        double[][] forward = new double[count][places];
        forward[0] = alone[0].clone();
        double[] terms = new double[places];
        for (int k = 1; k < count; k++) {
            for (int b = 0; b < places; b++) {
                for (int a = 0; a < places; a++) {
                    terms[a] = forward[k - 1][a] + links.get(k).worth(a, b);
                }
                forward[k][b] = logSum(terms) + alone[k][b];
            }
        }
        double[][] backward = new double[count][places];
        for (int k = count - 2; k >= 0; k--) {
            for (int a = 0; a < places; a++) {
                for (int b = 0; b < places; b++) {
                    terms[b] = links.get(k + 1).worth(a, b) + alone[k + 1][b] + backward[k + 1][b];
                }
                backward[k][a] = logSum(terms);
            }
        }
        List<Found> found = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            found.add(found(forward[k], backward[k]));
        }
        return found;
    }

    private static Found found(double[] forward, double[] backward) {
        double[] logs = new double[forward.length];
        for (int a = 0; a < logs.length; a++) {
            logs[a] = forward[a] + backward[a];
        }
        double all = logSum(logs);
        double[] chances = Arrays.stream(logs).map(log -> Math.exp(log - all)).toArray();
        double middle = middle(chances);
        double square = 0;
        for (int a = 0; a < chances.length; a++) {
            square += chances[a] * (a - middle) * (a - middle);
        }
        return new Found(middle, Math.sqrt(square + 1.0 / 12));
    }

    private static double middle(double[] chances) {
        double before = 0;
        for (int a = 0; a < chances.length; a++) {
            if (before + chances[a] >= 0.5) {
                return a - 0.5 + (0.5 - before) / chances[a];
            }
            before += chances[a];
        }
        return Double.NaN;
    }

    private static double logSum(double[] logs) {
        double most = Arrays.stream(logs).max().orElseThrow();
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return most + Math.log(sum);
    }
}
