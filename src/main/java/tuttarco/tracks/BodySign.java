package tuttarco.tracks;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tuttarco.seats.Player;
import tuttarco.signal.Axis;
import tuttarco.signal.HiddenMarkovChain;

/**
 * Which way along the bow's axis is down, at each time, from what the poses show.
 *
 * <p>Two cues, neither of which needs to know where the player faces. The bow hand is always on the tip's side of where
 * bow and strings meet, so the way from the strings to the hand is down; and while the bow runs down, the two hands part
 * (common practice, no source). Both count as far as the hand that the poses show moves along with the flow: the model's
 * own word that it sees a hand is worth little. What was declared, and how
 * the neighbours' bows lead, count beside them. A chain of the two signs gathers the evidence over time: the sign seldom
 * changes.
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
        double[] run = run(timesS, along);
        List<Look> looks = looks(player, hand, poses, timesS, axes, run);
        double[][] evidence = new double[looks.size()][];
        for (int k = 0; k < evidence.length; k++) {
            Look look = looks.get(k);
            double trust = Math.max(0, agreement(looks, k, Look::along, TRUSTED_S));
            double parting = agreement(looks, k, Look::apart, COMPARED_S);
            double clear = trust * (PLACE_WEIGHT * look.place() + PARTING_WEIGHT * parting)
                    + NEIGHBOUR_WEIGHT * look.axis().along(neighbours.x(), neighbours.y())
                    + DECLARED_WEIGHT * declared(player, hand, look.axis());
            double logOdds = clear * countsS(looks, k);
            evidence[k] = new double[] {logOdds / 2, -logOdds / 2};
        }
        double half = Math.log(0.5);
        HiddenMarkovChain chain = new HiddenMarkovChain(
                new double[] {half, half},
                evidence,
                k -> transitions(looks.get(k).timeS() - looks.get(k - 1).timeS()));
        double[] down = Arrays.stream(chain.posterior())
                .mapToDouble(p -> Math.min(1, p[0]))
                .toArray();
        return new BodySign(KeyPose.between(poses, down, timesS), carried(poses, looks, down, timesS, run));
    }

    /**
     * What one pose shows, in shoulder widths.
     *
     * @param axis the bow's axis at that time
     * @param run how far the bow had run along it by then
     * @param place how clearly the hand lies on the axis' positive side of the strings, -1 to 1
     * @param along place of the hand along the axis, against the shoulders
     * @param apart distance of the hands
     * @param reach distance of the bow hand from the strings
     */
    private record Look(double timeS, Axis axis, double run, double place, double along, double apart, double reach) {
        static Look of(Player player, Hand hand, KeyPose pose, Axis axis, double run) {
            double unitPx = pose.shoulderWidthPx();
            KeyPose.Place at = pose.hand(hand);
            KeyPose.Place body = pose.shoulders();
            KeyPose.Way way = pose.fromStrings(player.instrument(), hand);
            return new Look(
                    pose.timeS(),
                    axis,
                    run,
                    axis.along(way.x(), way.y()),
                    axis.along(at.xPx() - body.xPx(), at.yPx() - body.yPx()) / unitPx,
                    pose.handsApartPx() / unitPx,
                    at.distancePx(pose.strings(player.instrument(), hand)) / unitPx);
        }
    }

    private static List<Look> looks(
            Player player, Hand hand, List<KeyPose> poses, double[] timesS, Axis[] axes, double[] run) {
        return poses.stream()
                .map(pose -> {
                    int sample = nearest(timesS, pose.timeS());
                    return Look.of(player, hand, pose, axes[sample], run[sample]);
                })
                .toList();
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

    /** Correlation of how far the bow has run with what the poses show, over those within a time of this one. */
    private static double agreement(List<Look> looks, int k, ToDoubleFunction<Look> shown, double withinS) {
        List<Look> near = near(looks, k, withinS);
        if (near.size() < 3) {
            return 0;
        }
        double meanRun = near.stream().mapToDouble(Look::run).average().orElseThrow();
        double meanShown = near.stream().mapToDouble(shown).average().orElseThrow();
        double both = 0;
        double ofRun = KeyPose.SCATTER * KeyPose.SCATTER;
        double ofShown = KeyPose.SCATTER * KeyPose.SCATTER;
        for (Look look : near) {
            double ran = look.run() - meanRun;
            double showed = shown.applyAsDouble(look) - meanShown;
            both += ran * showed / near.size();
            ofRun += ran * ran / near.size();
            ofShown += showed * showed / near.size();
        }
        return both / Math.sqrt(ofRun * ofShown);
    }

    private static List<Look> near(List<Look> looks, int k, double withinS) {
        double timeS = looks.get(k).timeS();
        int first = k;
        while (first > 0 && timeS - looks.get(first - 1).timeS() <= withinS) {
            first--;
        }
        int end = k + 1;
        while (end < looks.size() && looks.get(end).timeS() - timeS <= withinS) {
            end++;
        }
        return looks.subList(first, end);
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
    private static double countsS(List<Look> looks, int k) {
        double before =
                k == 0 ? LONGEST_S : looks.get(k).timeS() - looks.get(k - 1).timeS();
        double after = k == looks.size() - 1
                ? LONGEST_S
                : looks.get(k + 1).timeS() - looks.get(k).timeS();
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
        int found = Arrays.binarySearch(timesS, timeS);
        int after = Math.min(found >= 0 ? found : -found - 1, timesS.length - 1);
        int before = Math.max(0, after - 1);
        return timeS - timesS[before] < timesS[after] - timeS ? before : after;
    }

    /** The reach of the poses, carried on between them by the motion along the axis. */
    private static double[] carried(
            List<KeyPose> poses, List<Look> looks, double[] down, double[] timesS, double[] run) {
        double[] offset = new double[down.length];
        for (int k = 0; k < offset.length; k++) {
            Look look = looks.get(k);
            offset[k] = look.reach() - (down[k] >= 0.5 ? look.run() : -look.run());
        }
        double[] carried = KeyPose.between(poses, offset, timesS);
        double[] chance = KeyPose.between(poses, down, timesS);
        for (int i = 0; i < carried.length; i++) {
            carried[i] = Math.max(0, carried[i] + (chance[i] >= 0.5 ? run[i] : -run[i]));
        }
        return carried;
    }
}
