package tuttarco.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;

/**
 * A bar in which many players left the marking in the same way, so that the marking may be the trouble.
 *
 * @param firstIndex index of the bar's first beat in the beat map; {@code lastIndex} its last, inclusive
 * @param players who did, in section order
 * @param judged number of players that could be judged there
 * @param marked for each beat what is marked, {@code instead} what those players mostly did; empty where nothing is known
 */
public record BowingCandidate(
        String bar,
        int firstIndex,
        int lastIndex,
        List<Player> players,
        int judged,
        List<Optional<BowDirection>> marked,
        List<Optional<BowDirection>> instead) {
    /** Fewer players than this are no "many" (chosen). */
    static final int LEAST_PLAYERS = 3;

    public BowingCandidate {
        players = List.copyOf(players);
        marked = List.copyOf(marked);
        instead = List.copyOf(instead);
    }

    /** The bars in the order played in which at least three players, and more than half of those judged, did the same. */
    public static List<BowingCandidate> in(Comparison comparison) {
        return comparison.bars().stream()
                .flatMap(bar -> in(bar, comparison).stream())
                .toList();
    }

    private static Optional<BowingCandidate> in(BarAgreement bar, Comparison comparison) {
        List<List<BeatReading>> readings = comparison.beatReadings().stream()
                .map(player -> player.subList(bar.firstIndex(), bar.lastIndex() + 1))
                .toList();
        int beats = bar.lastIndex() - bar.firstIndex() + 1;
        boolean[] left = new boolean[beats];
        for (int i = 0; i < beats; i++) {
            left[i] = mostly(readings, i);
        }
        List<List<BeatReading>> seen =
                readings.stream().filter(r -> judgedOnAll(r, left)).toList();
        List<List<BeatReading>> leaving =
                seen.stream().filter(r -> against(r, left)).toList();
        if (leaving.size() < LEAST_PLAYERS || 2 * leaving.size() <= seen.size()) {
            return Optional.empty();
        }
        return Optional.of(new BowingCandidate(
                bar.bar(),
                bar.firstIndex(),
                bar.lastIndex(),
                leaving.stream().map(r -> r.get(0).player()).toList(),
                seen.size(),
                leaving.get(0).stream().map(BeatReading::marked).toList(),
                IntStream.range(0, beats).mapToObj(i -> most(leaving, i)).toList()));
    }

    /** Whether at least three players, and more than half of those judged, were against on a beat. */
    private static boolean mostly(List<List<BeatReading>> readings, int beat) {
        long against = count(readings, beat, Verdict.AGAINST);
        return against >= LEAST_PLAYERS && against > count(readings, beat, Verdict.WITH);
    }

    private static long count(List<List<BeatReading>> readings, int beat, Verdict verdict) {
        return readings.stream().filter(r -> r.get(beat).verdict() == verdict).count();
    }

    /** Whether a player was judged wherever most left; nobody was where nobody did. */
    private static boolean judgedOnAll(List<BeatReading> readings, boolean[] left) {
        boolean any = false;
        for (int i = 0; i < left.length; i++) {
            Verdict verdict = readings.get(i).verdict();
            if (left[i] && verdict != Verdict.WITH && verdict != Verdict.AGAINST) {
                return false;
            }
            any |= left[i];
        }
        return any;
    }

    private static boolean against(List<BeatReading> readings, boolean[] left) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] && readings.get(i).verdict() == Verdict.WITH) {
                return false;
            }
        }
        return true;
    }

    private static Optional<BowDirection> most(List<List<BeatReading>> readings, int beat) {
        long down = count(readings, beat, BowDirection.DOWN);
        long up = count(readings, beat, BowDirection.UP);
        return down == up ? Optional.empty() : Optional.of(down > up ? BowDirection.DOWN : BowDirection.UP);
    }

    private static long count(List<List<BeatReading>> readings, int beat, BowDirection direction) {
        return readings.stream()
                .filter(r -> r.get(beat).played().direction().equals(Optional.of(direction)))
                .count();
    }
}
