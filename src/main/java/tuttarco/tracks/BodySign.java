package tuttarco.tracks;

import java.util.List;
import java.util.Optional;
import tuttarco.seats.Player;
import tuttarco.signal.Axis;
import tuttarco.signal.HiddenMarkovChain;

/**
 * Which way along the bow's axis is down, at each time, from what the poses show.
 *
 * <p>Two cues, neither of which needs to know where the player faces. The bow hand is always on the tip's side of where
 * bow and strings meet, so the way from the strings to the hand is down; and while the bow runs down, the two hands part
 * (common practice, no source). Both count as far as the hand that the poses show moves along with the flow: the model's
 * own word that it sees a hand is worth little. What was declared, and how the neighbours' bows lead, count beside them. A chain of the two signs gathers the evidence over time: the sign seldom changes.
 *
 * @param downProbability at each sample, how likely the axis points down
 * @param reach at each sample, distance of the bow hand from the strings, shoulder widths
 */
record BodySign(double[] downProbability, double[] reach) {
    /** Evidence a second of perfectly clear cues, log-odds; chosen on rendered scenes. */
    private static final double PLACE_WEIGHT = 2;

    private static final double PARTING_WEIGHT = 2;
    private static final double DECLARED_WEIGHT = 3;
    private static final double NEIGHBOUR_WEIGHT = 3;

    /** Poses are trusted as far as the hand they show moves as the flow does, over this time to either side, seconds. */
    private static final double TRUSTED_S = 4;

    /** No pose counts for more than this, seconds: what lies far from it, it does not tell. */
    private static final double LONGEST_S = 1;

    /** Mean time until the sign changes because a player turned right round, seconds. */
    private static final double SIGN_LASTS_S = 30;

    /** Hands part and meet again within a few strokes; poses this near are compared, seconds. */
    private static final double COMPARED_S = 2;

    /**
     * Judges the sign of a bow.
     *
     * @param neighbours the way of the down-bow on the others of the section; none has no length
     * @param along velocities along the axes, shoulder widths per second
     */
    static BodySign judge(
            Player player,
            Hand hand,
            List<KeyPose> poses,
            KeyPose.Way neighbours,
            double[] timesS,
            Axis[] axes,
            double[] along) {
        int n = poses.size();
        double[] run = run(timesS, along);
        int[] sample = new int[n];
        double[] apart = new double[n];
        double[] reach = new double[n];
        for (int k = 0; k < n; k++) {
            KeyPose pose = poses.get(k);
            sample[k] = nearest(timesS, pose.timeS());
            apart[k] = pose.handsApartPx() / pose.shoulderWidthPx();
            reach[k] = pose.hand(hand).distancePx(pose.strings(player.instrument(), hand)) / pose.shoulderWidthPx();
        }
        double[] shown = new double[n];
        for (int k = 0; k < n; k++) {
            KeyPose.Place at = poses.get(k).hand(hand);
            KeyPose.Place body = poses.get(k).shoulders();
            shown[k] = axes[sample[k]].along(at.xPx() - body.xPx(), at.yPx() - body.yPx())
                    / poses.get(k).shoulderWidthPx();
        }
        double[][] evidence = new double[n][];
        for (int k = 0; k < n; k++) {
            double trust = Math.max(0, agreement(poses, sample, run, shown, k, TRUSTED_S));
            double clear = trust
                            * (PLACE_WEIGHT * place(player, hand, poses.get(k), axes[sample[k]])
                                    + PARTING_WEIGHT * agreement(poses, sample, run, apart, k, COMPARED_S))
                    + NEIGHBOUR_WEIGHT * axes[sample[k]].along(neighbours.x(), neighbours.y())
                    + DECLARED_WEIGHT * declared(player, hand, axes[sample[k]]);
            double logOdds = clear * countsS(poses, k);
            evidence[k] = new double[] {logOdds / 2, -logOdds / 2};
        }
        double half = Math.log(0.5);
        HiddenMarkovChain chain = new HiddenMarkovChain(
                new double[] {half, half},
                evidence,
                k -> transitions(poses.get(k).timeS() - poses.get(k - 1).timeS()));
        double[] down = new double[n];
        double[][] posterior = chain.posterior();
        for (int k = 0; k < n; k++) {
            down[k] = Math.min(1, posterior[k][0]);
        }
        return new BodySign(KeyPose.between(poses, down, timesS), carried(poses, reach, sample, run, down, timesS));
    }

    /** The mean way of the down-bow; the surer, the longer, up to one. */
    KeyPose.Way mean(Axis[] axes) {
        double x = 0;
        double y = 0;
        for (int i = 0; i < axes.length; i++) {
            double sure = 2 * downProbability[i] - 1;
            x += sure * axes[i].x() / axes.length;
            y += sure * axes[i].y() / axes.length;
        }
        return new KeyPose.Way(x, y);
    }

    private static double place(Player player, Hand hand, KeyPose pose, Axis axis) {
        KeyPose.Way way = pose.fromStrings(player.instrument(), hand);
        return axis.along(way.x(), way.y());
    }

    /** Correlation of how far the bow has run with what the poses show, over those within a time of this one. */
    private static double agreement(
            List<KeyPose> poses, int[] sample, double[] run, double[] shown, int k, double withinS) {
        int first = k;
        while (first > 0 && poses.get(k).timeS() - poses.get(first - 1).timeS() <= withinS) {
            first--;
        }
        int end = k + 1;
        while (end < poses.size() && poses.get(end).timeS() - poses.get(k).timeS() <= withinS) {
            end++;
        }
        int n = end - first;
        if (n < 3) {
            return 0;
        }
        double meanRun = 0;
        double meanShown = 0;
        for (int j = first; j < end; j++) {
            meanRun += run[sample[j]] / n;
            meanShown += shown[j] / n;
        }
        double both = 0;
        double ofRun = KeyPose.SCATTER * KeyPose.SCATTER;
        double ofShown = KeyPose.SCATTER * KeyPose.SCATTER;
        for (int j = first; j < end; j++) {
            both += (run[sample[j]] - meanRun) * (shown[j] - meanShown) / n;
            ofRun += Math.pow(run[sample[j]] - meanRun, 2) / n;
            ofShown += Math.pow(shown[j] - meanShown, 2) / n;
        }
        return both / Math.sqrt(ofRun * ofShown);
    }

    /** The way a down-bow should lead by what was declared; a picture that is mirrored would turn it round. */
    private static double declared(Player player, Hand hand, Axis axis) {
        Optional<DownBow> way = player.facing().map(f -> DownBow.of(player.instrument(), f));
        if (way.isEmpty() || hand == Hand.LEFT) {
            return 0;
        }
        return axis.along(way.get().x(), way.get().y());
    }

    /** The time a pose speaks for, seconds. */
    private static double countsS(List<KeyPose> poses, int k) {
        double before =
                k == 0 ? LONGEST_S : poses.get(k).timeS() - poses.get(k - 1).timeS();
        double after = k == poses.size() - 1
                ? LONGEST_S
                : poses.get(k + 1).timeS() - poses.get(k).timeS();
        return Math.min(LONGEST_S, (before + after) / 2);
    }

    private static double[][] transitions(double stepS) {
        double change = 0.5 - 0.5 * Math.exp(-2 * stepS / SIGN_LASTS_S);
        double stay = Math.log(1 - change);
        return new double[][] {{stay, Math.log(change)}, {Math.log(change), stay}};
    }

    private static double[] run(double[] timesS, double[] along) {
        double[] run = new double[timesS.length];
        for (int i = 1; i < run.length; i++) {
            run[i] = run[i - 1] + (timesS[i] - timesS[i - 1]) * (along[i] + along[i - 1]) / 2;
        }
        return run;
    }

    private static int nearest(double[] timesS, double timeS) {
        int found = java.util.Arrays.binarySearch(timesS, timeS);
        int after = Math.min(found >= 0 ? found : -found - 1, timesS.length - 1);
        int before = Math.max(0, after - 1);
        return timeS - timesS[before] < timesS[after] - timeS ? before : after;
    }

    /** The reach of the poses, carried on between them by the motion along the axis. */
    private static double[] carried(
            List<KeyPose> poses, double[] reach, int[] sample, double[] run, double[] down, double[] timesS) {
        double[] offset = new double[reach.length];
        for (int k = 0; k < offset.length; k++) {
            offset[k] = reach[k] - (down[k] >= 0.5 ? run[sample[k]] : -run[sample[k]]);
        }
        double[] carried = KeyPose.between(poses, offset, timesS);
        double[] chance = KeyPose.between(poses, down, timesS);
        for (int i = 0; i < carried.length; i++) {
            carried[i] = Math.max(0, carried[i] + (chance[i] >= 0.5 ? run[i] : -run[i]));
        }
        return carried;
    }
}
