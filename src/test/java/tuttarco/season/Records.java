package tuttarco.season;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.Verdict;
import tuttarco.seats.Place;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Bowing;

/** Takes on record made by hand: bars of four beats, players {@code p0} (the leader), {@code p1} and so on. */
public final class Records {
    public static final int BEATS_IN_BAR = 4;

    private final List<String> bars;
    private final List<List<Verdict>> verdicts = new ArrayList<>();
    private final List<List<PlayerOnRecord.LagOnRecord>> lags = new ArrayList<>();
    private final List<BarEvenness> evenness = new ArrayList<>();
    private Bowing bowing = Bowing.UNIFIED;
    private double beatS = 0.5;
    private BowDirection firstBeat = BowDirection.DOWN;

    private Records(List<String> bars, int players) {
        this.bars = bars;
        for (int p = 0; p < players; p++) {
            verdicts.add(new ArrayList<>(Collections.nCopies(bars.size() * BEATS_IN_BAR, Verdict.WITH)));
            lags.add(new ArrayList<>());
        }
    }

    /** Everybody goes with the marking in all bars from one printed number to another. */
    public static Records bars(int first, int last, int players) {
        return inOrder(
                IntStream.rangeClosed(first, last).mapToObj(Integer::toString).toList(), players);
    }

    /** The same of bars in the order played. */
    public static Records inOrder(List<String> bars, int players) {
        return new Records(bars, players);
    }

    /** A player against the marking in the bar that was played at an index, for so many of its beats. */
    public Records against(int player, int barIndex, int beats) {
        return as(Verdict.AGAINST, player, barIndex, beats);
    }

    public Records as(Verdict verdict, int player, int barIndex, int beats) {
        for (int b = 0; b < beats; b++) {
            verdicts.get(player).set(barIndex * BEATS_IN_BAR + b, verdict);
        }
        return this;
    }

    /** A player's lag on each beat of a bar. */
    public Records late(int player, int barIndex, double lagMs) {
        for (int b = 0; b < BEATS_IN_BAR; b++) {
            lags.get(player).add(new PlayerOnRecord.LagOnRecord(barIndex * BEATS_IN_BAR + b, lagMs));
        }
        return this;
    }

    /** How the bar that was played at an index sounded. */
    public Records sounding(int barIndex, double spreadLu, double dipLu) {
        evenness.add(new BarEvenness(
                bars.get(barIndex),
                barIndex * BEATS_IN_BAR,
                OptionalDouble.of(-23),
                OptionalDouble.of(spreadLu),
                OptionalDouble.of(dipLu),
                1));
        return this;
    }

    public Records free() {
        bowing = Bowing.FREE;
        return this;
    }

    public Records atBeat(double lengthS) {
        beatS = lengthS;
        return this;
    }

    /** Marked the other way round. */
    public Records upFirst() {
        firstBeat = BowDirection.UP;
        return this;
    }

    public TakeOnRecord take(String title) {
        return take(title, "p");
    }

    /** @param names what the players' labels begin with */
    public TakeOnRecord take(String title, String names) {
        List<BeatOnRecord> beats = IntStream.range(0, bars.size() * BEATS_IN_BAR)
                .mapToObj(i -> new BeatOnRecord(
                        bars.get(i / BEATS_IN_BAR),
                        1 + i % BEATS_IN_BAR,
                        i % BEATS_IN_BAR == 0,
                        i * beatS,
                        Optional.of(i % 2 == 0 ? firstBeat : firstBeat.opposite())))
                .toList();
        List<PlayerOnRecord> players = IntStream.range(0, verdicts.size())
                .mapToObj(p -> player(names + p, p, beats))
                .toList();
        return new TakeOnRecord(
                "0".repeat(64),
                title,
                Optional.empty(),
                bowing,
                true,
                OptionalDouble.empty(),
                beats,
                players,
                evenness);
    }

    private PlayerOnRecord player(String label, int p, List<BeatOnRecord> beats) {
        List<Verdict> own = verdicts.get(p);
        List<StrokeKind> played = IntStream.range(0, own.size())
                .mapToObj(i -> StrokeKind.of(beats.get(i).marked().orElseThrow()))
                .toList();
        return new PlayerOnRecord(
                label,
                1 + p / 2,
                p % 2 == 0 ? Place.OUTSIDE : Place.INSIDE,
                p == 0,
                played,
                own,
                p == 0 ? Collections.nCopies(own.size(), Verdict.REST) : own,
                lags.get(p),
                lags.get(p).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(20));
    }
}
