package tuttarco.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.Verdict;
import tuttarco.season.PlayerOnRecord.LagOnRecord;
import tuttarco.seats.Place;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.Bowing;

/** Takes on record made by hand: bars of four beats, alternating from a down-bow, two beats a second. */
public final class SeasonFixture {
    private static final int IN_BAR = 4;

    private SeasonFixture() {}

    /** Bars, both inclusive, numbered in figures. */
    public static List<BeatOnRecord> bars(int first, int last) {
        List<BeatOnRecord> beats = new ArrayList<>();
        for (int i = 0; i < (last - first + 1) * IN_BAR; i++) {
            beats.add(new BeatOnRecord(
                    Integer.toString(first + i / IN_BAR),
                    1 + i % IN_BAR,
                    i % IN_BAR == 0,
                    1 + i * 0.5,
                    Optional.of(marked(i))));
        }
        return beats;
    }

    private static BowDirection marked(int beat) {
        return beat % 2 == 0 ? BowDirection.DOWN : BowDirection.UP;
    }

    /** Somebody who was against on some beats, by index, and changed so much late on each. */
    public static PlayerOnRecord player(String label, int beats, IntPredicate against, double lagMs) {
        List<Verdict> verdicts = IntStream.range(0, beats)
                .mapToObj(i -> against.test(i) ? Verdict.AGAINST : Verdict.WITH)
                .toList();
        List<StrokeKind> played = IntStream.range(0, beats)
                .mapToObj(i -> StrokeKind.of(against.test(i) ? marked(i).opposite() : marked(i)))
                .toList();
        return new PlayerOnRecord(
                label,
                1,
                Place.OUTSIDE,
                false,
                played,
                verdicts,
                verdicts,
                IntStream.range(1, beats)
                        .mapToObj(i -> new LagOnRecord(i, lagMs))
                        .toList(),
                OptionalDouble.of(20));
    }

    /** A take told from others by a number. */
    public static TakeOnRecord take(
            int number, Optional<LocalDate> day, List<BeatOnRecord> beats, List<PlayerOnRecord> players) {
        return new TakeOnRecord(
                String.format(java.util.Locale.ROOT, "%064x", number),
                "Take " + number,
                day,
                Bowing.UNIFIED,
                true,
                OptionalDouble.empty(),
                beats,
                players,
                List.of());
    }

    /** A take with something of everything, which the log must keep. */
    public static TakeOnRecord manifold(String title) {
        List<BeatOnRecord> beats = new ArrayList<>(bars(12, 12));
        beats.add(new BeatOnRecord("12", 3, true, 9.25, Optional.empty()));
        beats.add(new BeatOnRecord("12a", 1, true, 10.125, Optional.of(BowDirection.UP)));
        PlayerOnRecord leader = new PlayerOnRecord(
                "Desk 1 \"outside\" – él\u00e8ve \u2028 \ud83c\udfbb",
                1,
                Place.OUTSIDE,
                true,
                List.of(StrokeKind.values()),
                Collections.nCopies(6, Verdict.REST),
                Collections.nCopies(6, Verdict.REST),
                List.of(),
                OptionalDouble.empty());
        PlayerOnRecord other = new PlayerOnRecord(
                "Desk 2 inside",
                2,
                Place.INSIDE,
                false,
                Collections.nCopies(6, StrokeKind.DOWN),
                List.of(Verdict.WITH, Verdict.AGAINST, Verdict.UNSURE, Verdict.UNSEEN, Verdict.REST, Verdict.WITH),
                Collections.nCopies(6, Verdict.WITH),
                List.of(new LagOnRecord(0, -12.5), new LagOnRecord(5, 1.0 / 3)),
                OptionalDouble.of(25.125));
        return new TakeOnRecord(
                "ab".repeat(32),
                title,
                Optional.of(LocalDate.of(2026, 11, 25)),
                Bowing.FREE,
                false,
                OptionalDouble.of(0.1),
                beats,
                List.of(leader, other),
                List.of(new BarEvenness(
                        "12", 0, OptionalDouble.of(-23.5), OptionalDouble.empty(), OptionalDouble.of(2), 3)));
    }
}
