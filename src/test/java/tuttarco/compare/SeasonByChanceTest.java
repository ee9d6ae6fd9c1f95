package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tuttarco.season.Season;
import tuttarco.season.SeasonCandidate;
import tuttarco.season.TakeOnRecord;
import tuttarco.seats.Place;
import tuttarco.strokes.Reading;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;

/**
 * What a season's bars that are left again and again owe to chance: simulated readings with measured errors, each player up to
 * 150 ms late, the same random passage of half a minute in all takes.
 */
class SeasonByChanceTest {
    private static final int BEATS_IN_BAR = 4;
    private static final double LATEST_S = 0.15;
    private static final List<MeasuredErrors> RENDERED = MeasuredErrors.rendered();
    private static final List<MeasuredErrors> REAL = MeasuredErrors.real();

    /**
     * A season as it is simulated.
     *
     * @param leaving how many players leave one bar in each take
     * @param astray whether in each take a desk is turned for six beats somewhere, which has nothing to do with the marking
     */
    private record Plan(int takes, int players, int leaving, boolean astray, List<MeasuredErrors> errors) {
        /** The season, and the bar that is left; empty where none is. */
        Simulated simulated(Random random) {
            Passage passage = Passage.random(random);
            int bars = passage.beats().beats().size() / BEATS_IN_BAR;
            int bar = bowed(passage, bars, random);
            List<TakeOnRecord> records = new ArrayList<>();
            for (int t = 0; t < takes; t++) {
                records.add(take(t, passage, bar * BEATS_IN_BAR, random));
            }
            return new Simulated(Season.of(records), Integer.toString(bar + 1));
        }

        private TakeOnRecord take(int number, Passage passage, int first, Random random) {
            List<Reading> readings = new ArrayList<>();
            int lost = random.nextInt(passage.beats().beats().size() - 6);
            int from = random.nextInt(players);
            for (int p = 0; p < players; p++) {
                SimulatedPlayer player = SimulatedPlayer.with(
                                Bows.player("p" + p, 1 + p / 2, p % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, false))
                        .late(LATEST_S * random.nextDouble());
                if ((p + from) % players < leaving) {
                    player = player.turned(first, first + BEATS_IN_BAR - 1);
                }
                if (astray && p / 2 == from / 2) {
                    player = player.turned(lost, lost + 5);
                }
                readings.add(player.read(passage, errors, random));
            }
            Comparison comparison =
                    Comparing.compare(readings, passage.beats(), passage.marking(), CompareSettings.DEFAULT);
            Take take = new Take(
                    Path.of("t.take.json"),
                    "Take " + number,
                    Path.of("t.mp4"),
                    comparison.players(),
                    Optional.empty(),
                    new BeatsGiven.Missing(),
                    Bowing.UNIFIED);
            return TakeOnRecord.of(
                    take,
                    String.format(Locale.ROOT, "%064x", number),
                    Optional.empty(),
                    comparison,
                    new Unity.NotTold(Unity.Reason.values()[0]),
                    new Togetherness(
                            new Timing(false, List.of(), List.of()),
                            new BowSharing(List.of()),
                            new ChangeScatter(false, 0, List.of(), List.of()),
                            List.of(),
                            List.of()),
                    Optional.empty());
        }
    }

    private static int bowed(Passage passage, int bars, Random random) {
        int bar;
        do {
            bar = random.nextInt(bars);
        } while (!passage.bowed(bar * BEATS_IN_BAR, bar * BEATS_IN_BAR + BEATS_IN_BAR - 1));
        return bar;
    }

    private record Simulated(Season season, String bar) {
        boolean found() {
            return season.candidates().stream().anyMatch(c -> c.bar().equals(bar));
        }
    }

    /** Of so many seasons, in how many a bar is shown that nobody planted, and in how many the planted one is. */
    private record Count(int seasons, int invented, int found) {
        static Count of(Plan plan, int seasons, Random random) {
            int invented = 0;
            int found = 0;
            for (int i = 0; i < seasons; i++) {
                Simulated simulated = plan.simulated(random);
                List<SeasonCandidate> shown = simulated.season().candidates();
                boolean planted = plan.leaving() > 0;
                invented += shown.stream().anyMatch(c -> !planted || !c.bar().equals(simulated.bar())) ? 1 : 0;
                found += planted && simulated.found() ? 1 : 0;
            }
            return new Count(seasons, invented, found);
        }
    }

    /** Wanted is at most one season in a hundred; of 300 seasons, 3. */
    @Test
    void misreadingsShowABarInAtMostOneSeasonInAHundred() {
        Random random = new Random(20261126);
        int seasons = 0;
        int invented = 0;
        for (int takes : List.of(2, 3, 6)) {
            Count count = Count.of(new Plan(takes, 6, 0, false, RENDERED), 100, random);
            seasons += count.seasons();
            invented += count.invented();
        }
        assertEquals(300, seasons);
        assertTrue(invented <= 3, "invented: " + invented);
    }

    /** Half of eight players leave a bar in each of four takes. */
    @Test
    void aBarLeftInEachTakeIsShown() {
        Count count = Count.of(new Plan(4, 8, 4, false, RENDERED), 50, new Random(5));
        assertEquals(50, count.seasons());
        assertTrue(count.found() >= 45, "found: " + count.found());
        assertTrue(count.invented() <= 5, "others: " + count.invented());
    }

    /** Prints the figures of the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() {
        int all = 0;
        for (List<MeasuredErrors> errors : List.of(RENDERED, REAL)) {
            for (int[] plan : new int[][] {
                {2, 4, 0},
                {3, 4, 0},
                {6, 4, 0},
                {3, 12, 0},
                {6, 12, 0},
                {3, 4, 2},
                {3, 4, 3},
                {6, 4, 1},
                {6, 4, 2},
                {3, 12, 3},
                {3, 12, 6},
                {6, 12, 2},
                {6, 12, 3},
                {6, 12, 4}
            }) {
                for (boolean astray : plan[2] == 0 ? List.of(false, true) : List.of(false)) {
                    Count count = Count.of(
                            new Plan(plan[0], plan[1], plan[2], astray, errors),
                            plan[2] == 0 ? 500 : 100,
                            new Random(1));
                    System.out.printf(
                            Locale.ROOT,
                            "| %s | %d | %d | %d | %s | %d | %d | %d |%n",
                            errors == REAL ? "real" : "rendered",
                            plan[0],
                            plan[1],
                            plan[2],
                            astray,
                            count.seasons(),
                            count.found(),
                            count.invented());
                    all += count.seasons();
                }
            }
        }
        assertEquals(2 * (10 * 500 + 9 * 100), all);
    }
}
