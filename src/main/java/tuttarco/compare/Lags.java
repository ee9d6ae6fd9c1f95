package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
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
        List<Change> changes = Change.in(player.strokes());
        Map<BowDirection, NavigableMap<Double, Change>> own = byTime(changes);
        Map<BowDirection, NavigableMap<Double, Change>> leading = byTime(Change.in(leader.strokes()));
        List<Lag.Pair> pairs = new ArrayList<>();
        for (Change change : changes) {
            nearest(leading.get(change.to()), change.timeS() - delayS)
                    .filter(l -> !beats.stopped(l.timeS()))
                    .filter(l -> nearest(own.get(l.to()), l.timeS() + delayS).equals(Optional.of(change)))
                    .filter(l -> Math.abs(change.timeS() - delayS - l.timeS()) <= reachS(l, settings))
                    .ifPresent(l -> pairs.add(new Lag.Pair(l.timeS(), MS_PER_S * (change.timeS() - l.timeS()))));
        }
        return new Lag(player.player(), pairs);
    }

    private static double reachS(Change leading, CompareSettings settings) {
        return Math.min(settings.longestLagS(), REACH_SHARE * leading.shorterS());
    }

    /** The changes to each direction. */
    private static Map<BowDirection, NavigableMap<Double, Change>> byTime(List<Change> changes) {
        Map<BowDirection, NavigableMap<Double, Change>> byTime = new EnumMap<>(BowDirection.class);
        for (BowDirection direction : BowDirection.values()) {
            byTime.put(direction, new TreeMap<>());
        }
        changes.forEach(change -> byTime.get(change.to()).put(change.timeS(), change));
        return byTime;
    }

    private static Optional<Change> nearest(NavigableMap<Double, Change> changes, double timeS) {
        return Stream.of(
                        Optional.ofNullable(changes.floorEntry(timeS)), Optional.ofNullable(changes.higherEntry(timeS)))
                .flatMap(Optional::stream)
                .map(Map.Entry::getValue)
                .min(Comparator.comparingDouble(change -> Math.abs(change.timeS() - timeS)));
    }
}
