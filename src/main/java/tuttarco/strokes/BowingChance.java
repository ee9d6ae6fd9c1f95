package tuttarco.strokes;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.signal.HiddenMarkovChain;

/**
 * How likely each swing of an arm is bowing, from all of them.
 *
 * <p>A player bows for a while or does something else for a while; while bowing, now and then the bow is set anew. A hidden
 * Markov chain of these three states over the swings ({@link HiddenMarkovChain}) gathers what each of them tells ({@link SwingEvidence}). What the
 * player's own strokes are like is learned from those that are likely bowed, a few times over.
 */
final class BowingChance {
    private static final int BOWS = 0;

    /** How long a player goes on bowing, or doing something else, seconds; chosen on rendered scenes. */
    private static final double BOWS_S = 120;

    private static final double ELSE_S = 40;

    /** Share of the swings of a bowing player that set the bow anew; chosen on rendered scenes. */
    private static final double SETTING_SHARE = 0.02;

    /** Nobody goes from something else to setting the bow; a probability that is as good as none. */
    private static final double HARDLY = 1e-6;

    /** Log-odds before anything is seen; chosen on rendered scenes. */
    private static final double START = -2.5;

    private static final double START_SETTING = -5.5;

    /** Learning settles within so many rounds. */
    private static final int ROUNDS = 4;

    /** From so much bowed way on a player's strokes are known, shoulder widths: two strokes of middling length. */
    private static final double KNOWN_WAY = 0.8;

    /** Before that, strokes are as straight as this, and for as much way, shoulder widths: clean rendered strokes. */
    private static final double USUAL_CURVE = 0.02;

    private static final double USUAL_CURVE_WAY = 0.5;

    private final List<Swing> moving;
    private final SwingEvidence evidence;

    private BowingChance(List<Swing> moving, List<Boolean> cutOff) {
        this.moving = moving;
        evidence = new SwingEvidence(moving, cutOff);
    }

    /** A chance for each swing; for those that don't move it means nothing. */
    static double[] of(List<Swing> swings) {
        List<Integer> at = IntStream.range(0, swings.size())
                .filter(i -> swings.get(i).moves())
                .boxed()
                .toList();
        double[] chances = new double[swings.size()];
        if (at.isEmpty()) {
            return chances;
        }
        List<Boolean> cutOff =
                at.stream().map(i -> i == 0 || i == swings.size() - 1).toList();
        double[] learned = new BowingChance(at.stream().map(swings::get).toList(), cutOff).learned();
        for (int k = 0; k < learned.length; k++) {
            chances[at.get(k)] = learned[k];
        }
        return chances;
    }

    private double[] learned() {
        Optional<SwingEvidence.Usual> usual = Optional.empty();
        double[] bowing = new double[moving.size()];
        for (int round = 0; round < ROUNDS; round++) {
            double[][] posterior = chain(usual).posterior();
            for (int i = 0; i < bowing.length; i++) {
                bowing[i] = Math.min(1, posterior[i][BOWS]);
            }
            usual = usual(bowing);
        }
        return bowing;
    }

    private HiddenMarkovChain chain(Optional<SwingEvidence.Usual> usual) {
        double[][] logEvidence = new double[moving.size()][];
        for (int i = 0; i < logEvidence.length; i++) {
            double bowing = evidence.bowing(i);
            logEvidence[i] = new double[] {bowing, 0, bowing + evidence.setting(i, usual)};
        }
        double[] start = {START, 0, START_SETTING};
        return new HiddenMarkovChain(start, logEvidence, i -> transitions(midS(i) - midS(i - 1)));
    }

    private double midS(int i) {
        Stroke stroke = moving.get(i).stroke();
        return (stroke.startS() + stroke.endS()) / 2;
    }

    private static double[][] transitions(double stepS) {
        double stays = Math.exp(-stepS / BOWS_S);
        double staysElse = Math.exp(-stepS / ELSE_S);
        double[] fromBowing = {
            Math.log(stays * (1 - SETTING_SHARE)), Math.log(1 - stays), Math.log(stays * SETTING_SHARE)
        };
        double[] fromElse = {Math.log(1 - staysElse), Math.log(staysElse), Math.log(HARDLY)};
        return new double[][] {fromBowing, fromElse, fromBowing};
    }

    /** Mean speed and curve of the strokes, the likelier bowed and the longer the more they count. */
    private Optional<SwingEvidence.Usual> usual(double[] bowing) {
        double way = 0;
        double logSpeed = 0;
        double logCurve = USUAL_CURVE_WAY * Math.log(USUAL_CURVE);
        for (int i = 0; i < bowing.length; i++) {
            Swing swing = moving.get(i);
            if (!swing.quick()) {
                double counts = bowing[i] * swing.size();
                way += counts;
                logSpeed += counts * Math.log(swing.peak());
                logCurve += counts * Math.log(SwingEvidence.curve(swing));
            }
        }
        return way < KNOWN_WAY
                ? Optional.empty()
                : Optional.of(new SwingEvidence.Usual(
                        Math.exp(logSpeed / way), Math.exp(logCurve / (way + USUAL_CURVE_WAY))));
    }
}
