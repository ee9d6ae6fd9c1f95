package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.strokes.Reading;

/**
 * Lags to the leader. The player's whole delay is estimated first ({@link Delay}), so that a delay as long as a stroke pairs
 * the right changes; then each change is paired with the leader's nearest one to the same direction, near that delay,
 * where each is the other's nearest. Changes in a stop between two runs don't count.
 */
final class Lags {
    /** A pair lies no farther from the estimated delay than this share of the leader's shorter stroke there. */
    private static final double REACH_SHARE = 0.5;

    private static final double MS_PER_S = 1000;

    private Lags() {}

    static Lag of(Reading player, Reading leader, BeatMap beats, CompareSettings settings) {
        double delayS = Delay.ofS(player.strokes(), leader.strokes(), settings.longestLagS());
        List<Change> own = Change.in(player.strokes());
        List<Change> leading = Change.in(leader.strokes());
        List<Lag.Pair> pairs = new ArrayList<>();
        for (Change change : own) {
            nearest(leading, change, -delayS)
                    .filter(l -> !beats.stopped(l.timeS()))
                    .filter(l -> nearest(own, l, delayS).equals(Optional.of(change)))
                    .filter(l -> Math.abs(change.timeS() - delayS - l.timeS()) <= reachS(l, settings))
                    .ifPresent(l -> pairs.add(new Lag.Pair(l.timeS(), MS_PER_S * (change.timeS() - l.timeS()))));
        }
        return new Lag(player.player(), pairs);
    }

    private static double reachS(Change leading, CompareSettings settings) {
        return Math.min(settings.longestLagS(), REACH_SHARE * leading.shorterS());
    }

    private static Optional<Change> nearest(List<Change> changes, Change to, double shiftS) {
        return changes.stream()
                .filter(c -> c.to() == to.to())
                .min(Comparator.comparingDouble(c -> Math.abs(c.timeS() - to.timeS() - shiftS)));
    }
}
