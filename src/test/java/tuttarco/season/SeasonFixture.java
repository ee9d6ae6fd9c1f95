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
        return player(label, 1, Place.OUTSIDE, beats, against, lagMs);
    }

    /** As {@link #player(String, int, IntPredicate, double)}, at a desk. */
    public static PlayerOnRecord player(
            String label, int desk, Place place, int beats, IntPredicate against, double lagMs) {
        List<Verdict> verdicts = IntStream.range(0, beats)
                .mapToObj(i -> against.test(i) ? Verdict.AGAINST : Verdict.WITH)
                .toList();
        List<StrokeKind> played = IntStream.range(0, beats)
                .mapToObj(i -> StrokeKind.of(
                        verdicts.get(i) == Verdict.AGAINST ? marked(i).opposite() : marked(i)))
                .toList();
        return new PlayerOnRecord(
                label,
                desk,
                place,
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

    /**
     * Seven takes of bars 1 to 12, a week apart. Player "Desk 3 inside" is against on 24 beats in the first take and on 4 less in
     * each later one, and missing in the third; all others go with the marking but now and then. Half of the twelve, each time others,
     * are against on the first two beats of bar 5. "Desk 4 inside" changes 90 ms late in the first take and 12 ms less in each
     * later one.
     */
    public static List<TakeOnRecord> improving() {
        return IntStream.range(0, 7).mapToObj(SeasonFixture::improved).toList();
    }

    /**
     * Seven takes of bars 1 to 12, the last of bars 7 to 12 only, of one player: in bars 1 to 6 now with, now against the
     * marking, in bars 7 to 12 against on six beats in the first take and on one less in each later one.
     */
    public static List<TakeOnRecord> twoPassages() {
        return IntStream.range(0, 7)
                .mapToObj(take -> {
                    List<BeatOnRecord> beats = take < 6 ? bars(1, 12) : bars(7, 12);
                    int second = beats.size() - 24;
                    IntPredicate against = i -> i >= second ? i < second + 6 - take : i < 3 + 5 * take % 7;
                    return take(take, Optional.empty(), beats, List.of(player("Ann", beats.size(), against, 4)));
                })
                .toList();
    }

    private static TakeOnRecord improved(int take) {
        List<BeatOnRecord> beats = bars(1, 12);
        List<PlayerOnRecord> players = new ArrayList<>();
        for (int p = 0; p < 12; p++) {
            int desk = 1 + p / 2;
            Place place = Place.values()[p % 2];
            int player = p;
            IntPredicate trips = i -> (i == 16 || i == 17) && (player + take) % 12 < 6;
            IntPredicate now = i -> (i * 7 + player * 5 + take * 11) % 23 == 0;
            IntPredicate turned = i -> player == 5 && i >= 20 && i < 44 - 4 * take;
            if (player != 5 || take != 2) {
                double lagMs = player == 7 ? 90 - 12 * take : (player * 3 + take * 5) % 7 - 3;
                players.add(player(
                        "Desk " + desk + " " + place.word(),
                        desk,
                        place,
                        beats.size(),
                        i -> trips.test(i) || now.test(i) || turned.test(i),
                        lagMs));
            }
        }
        return take(take, Optional.of(LocalDate.of(2026, 10, 1).plusWeeks(take)), beats, players);
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
                // the others go down
                List.of(StrokeKind.values()).subList(1, 7),
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
