package tuttarco.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.season.Trend.Claim;
import tuttarco.seats.Place;
import tuttarco.take.Bowing;

class SeasonTest {
    private static final Season IMPROVING = Season.of(SeasonFixture.improving());

    private static TakeOnRecord bars(int number, int first, int last, IntPredicate against) {
        List<BeatOnRecord> beats = SeasonFixture.bars(first, last);
        return SeasonFixture.take(
                number, Optional.empty(), beats, List.of(SeasonFixture.player("Ann", beats.size(), against, 0)));
    }

    private static TakeOnRecord dated(int number, LocalDate... day) {
        return SeasonFixture.take(number, Optional.ofNullable(day.length > 0 ? day[0] : null), List.of(), List.of());
    }

    @Test
    void takesStandInTheOrderOfTheirDaysThenOfTheLog() {
        LocalDate first = LocalDate.of(2026, 9, 1);
        List<TakeOnRecord> logged =
                List.of(dated(0), dated(1, first.plusDays(7)), dated(2), dated(3, first), dated(4, first.plusDays(7)));
        assertEquals(
                List.of("Take 0", "Take 3", "Take 1", "Take 2", "Take 4"),
                Season.of(logged).takes().stream().map(TakeOnRecord::title).toList());
    }

    @Test
    void whatWasPlantedIsToldAndNothingElse() {
        List<String> rising = IMPROVING.players().stream()
                .filter(Trend::claimed)
                .map(t -> t.subject() + " " + t.claim())
                .toList();
        assertEquals(List.of("OfPlayer[label=Desk 3 inside] RISING"), rising);
        assertEquals(Claim.RISING, IMPROVING.section().claim());
        assertEquals(
                List.of("OfPlayer[label=Desk 4 inside] FALLING"),
                IMPROVING.lags().stream()
                        .filter(Trend::claimed)
                        .map(t -> t.subject() + " " + t.claim())
                        .toList());
        assertEquals(-72, change(IMPROVING.lags().get(7)), 1e-9);
        assertEquals(1, IMPROVING.candidates().size());
        SeasonCandidate bar = IMPROVING.candidates().get(0);
        assertEquals("5", bar.bar());
        assertEquals(
                List.of(
                        new SeasonCandidate.Beat(1, BowDirection.DOWN, true, Optional.of(BowDirection.UP)),
                        new SeasonCandidate.Beat(2, BowDirection.UP, true, Optional.of(BowDirection.DOWN)),
                        new SeasonCandidate.Beat(3, BowDirection.DOWN, false, Optional.of(BowDirection.DOWN)),
                        new SeasonCandidate.Beat(4, BowDirection.UP, false, Optional.of(BowDirection.UP))),
                bar.beats());
        assertEquals(7, bar.takesLeft());
        assertTrue(bar.takes().stream().allMatch(t -> t.left().size() >= 5));
    }

    private static double change(Trend trend) {
        return trend.change().getAsDouble();
    }

    @Test
    void playersStandByTheDeskTheyLastSatAt() {
        List<BeatOnRecord> beats = SeasonFixture.bars(1, 4);
        PlayerOnRecord ann = SeasonFixture.player("Ann", 1, Place.INSIDE, 16, i -> false, 0);
        PlayerOnRecord bo = SeasonFixture.player("Bo", 2, Place.OUTSIDE, 16, i -> false, 0);
        PlayerOnRecord cy = SeasonFixture.player("Cy", 1, Place.OUTSIDE, 16, i -> false, 0);
        PlayerOnRecord back = SeasonFixture.player("Ann", 2, Place.INSIDE, 16, i -> false, 0);
        Season season = Season.of(List.of(
                SeasonFixture.take(0, Optional.empty(), beats, List.of(ann, bo)),
                SeasonFixture.take(1, Optional.empty(), beats, List.of(back, bo, cy))));
        assertEquals(
                List.of(new Trend.OfPlayer("Cy"), new Trend.OfPlayer("Bo"), new Trend.OfPlayer("Ann")),
                season.players().stream().map(Trend::subject).toList());
    }

    @Test
    void whoIsMissingIsAGap() {
        Trend missing = IMPROVING.players().get(5);
        assertEquals(new Trend.OfPlayer("Desk 3 inside"), missing.subject());
        assertEquals(7, missing.points().size());
        assertEquals(Optional.empty(), missing.points().get(2));
        assertEquals(6, missing.seen().size());
    }

    /** Two different orders of five are as improbable as 1 in 60; of four values no order is rarer than 1 in 12. */
    @Test
    void tooFewTakesAreSaid() {
        assertEquals(5, Season.leastTakes(1));
        assertEquals(5, Season.leastTakes(3));
        assertEquals(6, Season.leastTakes(4));
        assertEquals(6, Season.leastTakes(18));
        assertEquals(7, Season.leastTakes(19));
        Season four = Season.of(SeasonFixture.improving().subList(0, 4));
        assertEquals(Claim.TOO_FEW, four.section().claim());
        assertEquals(OptionalDouble.empty(), four.section().p());
        assertTrue(four.players().stream().allMatch(t -> t.claim() == Claim.TOO_FEW));
        Season none = Season.of(List.of());
        assertEquals(Claim.TOO_FEW, none.section().claim());
        assertEquals(List.of(), none.players());
        assertEquals(List.of(), none.candidates());
    }

    /** The least lag that may be claimed is 20 ms; this one shrinks by 15. */
    @Test
    void aLagThatChangesLessThanCanBeSeenIsNotClaimed() {
        List<TakeOnRecord> takes = IntStream.range(0, 6)
                .mapToObj(t -> SeasonFixture.take(
                        t,
                        Optional.empty(),
                        SeasonFixture.bars(1, 4),
                        List.of(SeasonFixture.player("Ann", 16, i -> false, 60 - 3 * t))))
                .toList();
        Trend lag = Season.of(takes).lags().get(0);
        assertEquals(2.0 / 720, lag.p().getAsDouble(), 1e-12);
        assertEquals(-15, change(lag), 1e-9);
        assertEquals(Claim.NONE, lag.claim());
    }

    @Test
    void passagesAreWhatWasPlayedInTheSameTakes() {
        Season season = Season.of(List.of(
                bars(0, 1, 8, i -> false),
                bars(1, 1, 12, i -> i < 4),
                bars(2, 5, 12, i -> i < 4),
                bars(3, 20, 24, i -> false)));
        assertEquals(
                List.of(
                        new Passage(List.of("1", "2", "3", "4"), List.of(0, 1)),
                        new Passage(List.of("5", "6", "7", "8"), List.of(0, 1, 2)),
                        new Passage(List.of("9", "10", "11", "12"), List.of(1, 2))),
                season.passages());
        assertEquals(
                List.of(Optional.of(1.0), Optional.of(1.0), Optional.of(0.75), Optional.empty()),
                season.byPassage().get(1).points().stream()
                        .map(p -> p.map(Trend.Point::value))
                        .toList());
        assertEquals(season.passages().get(1), season.ground(), "three pairs of takes times four bars");
    }

    /** Free takes and takes without bars are there, but nothing is told from them. */
    @Test
    void freeTakesDontCount() {
        TakeOnRecord unified = bars(0, 1, 4, i -> false);
        TakeOnRecord free = new TakeOnRecord(
                "f".repeat(64),
                "Free",
                Optional.empty(),
                Bowing.FREE,
                true,
                OptionalDouble.of(0),
                unified.beats(),
                unified.players(),
                List.of());
        Season season = Season.of(List.of(unified, free, bars(2, 1, 4, i -> i < 8)));
        assertEquals(List.of(0, 2), season.ground().takes());
        assertEquals(Optional.empty(), season.section().points().get(1));
    }

    @Test
    void withoutAMarkingTheLeaderIsTheMeasure() {
        TakeOnRecord marked = bars(0, 1, 4, i -> false);
        TakeOnRecord led = new TakeOnRecord(
                "e".repeat(64),
                "Led",
                Optional.empty(),
                Bowing.UNIFIED,
                false,
                OptionalDouble.empty(),
                marked.beats(),
                marked.players(),
                List.of());
        assertFalse(Season.of(List.of(led)).marked());
        Season mixed = Season.of(List.of(marked, led));
        assertTrue(mixed.marked());
        assertEquals(Optional.empty(), mixed.section().points().get(1), "nothing was marked there");
        assertEquals(List.of(), mixed.candidates());
    }

    /** Bars that the part marked otherwise in some takes are other bars. */
    @Test
    void aNewMarkingIsAnotherBar() {
        List<TakeOnRecord> takes = new ArrayList<>();
        for (int t = 0; t < 6; t++) {
            List<BeatOnRecord> beats = new ArrayList<>(SeasonFixture.bars(1, 12));
            if (t >= 3) {
                BeatOnRecord old = beats.get(16);
                beats.set(16, new BeatOnRecord(old.bar(), old.beat(), true, old.timeS(), Optional.of(BowDirection.UP)));
            }
            int take = t;
            List<PlayerOnRecord> players = IntStream.range(0, 8)
                    .mapToObj(p -> SeasonFixture.player("P" + p, 48, i -> take < 3 && i == 16 && p < 6, 0))
                    .toList();
            takes.add(SeasonFixture.take(t, Optional.empty(), beats, players));
        }
        List<SeasonCandidate> bars = Season.of(takes).candidates();
        assertEquals(1, bars.size());
        assertEquals(3, bars.get(0).takes().size(), "only the takes of the old marking");
    }

    /** Takes in any order: a trend is claimed of any of eight players in at most one season in twenty. */
    @Test
    void byChanceATrendIsClaimedInAtMostOneSeasonInTwenty() {
        Random random = new Random(7);
        int seasons = 400;
        int claimed = 0;
        for (int s = 0; s < seasons; s++) {
            List<TakeOnRecord> takes = new ArrayList<>();
            for (int t = 0; t < 7; t++) {
                List<PlayerOnRecord> players = new ArrayList<>();
                for (int p = 0; p < 8; p++) {
                    double wrong = 0.3 * random.nextDouble();
                    players.add(SeasonFixture.player(
                            "P" + p, 48, i -> random.nextDouble() < wrong, 100 * random.nextDouble()));
                }
                takes.add(SeasonFixture.take(t, Optional.empty(), SeasonFixture.bars(1, 12), players));
            }
            Collections.shuffle(takes, random);
            claimed += Season.of(takes).players().stream().anyMatch(Trend::claimed) ? 1 : 0;
        }
        assertTrue(claimed <= 0.05 * seasons, "claimed: " + claimed);
    }
}
