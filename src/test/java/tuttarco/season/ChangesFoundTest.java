package tuttarco.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tuttarco.compare.MeasuredErrors;
import tuttarco.compare.Metric;
import tuttarco.season.Changed.Claim;
import tuttarco.season.Changed.Of;

/** How often a change is claimed of simulated takes that are alike, and how often one that was planted is found. */
class ChangesFoundTest {
    private static final List<Integer> FOUR_BARS = List.of(4, 5, 6, 7);
    private static final List<Integer> ELEVEN_BARS = List.of(2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);

    /** What came out of many pairs of takes. */
    private static final class Count {
        int pairs;
        int claimed;
        int sectionBetter;
        int sectionWorse;
        int playerBetter;
        int lagBetter;
        int stretches;

        void add(TakeAgainstTake takes) {
            pairs++;
            claimed += takes.shown().isEmpty() ? 0 : 1;
            stretches += takes.stretches().size();
            for (Changed change : takes.shown()) {
                boolean better = change.claim() == Claim.BETTER;
                boolean marking = change.metric() == Metric.WITH_MARKING;
                sectionBetter += marking && change.of() == Of.SECTION && better ? 1 : 0;
                sectionWorse += marking && change.of() == Of.SECTION && !better ? 1 : 0;
                playerBetter += marking && change.name().equals("p7") && better ? 1 : 0;
                lagBetter += change.metric() == Metric.LAG && change.name().equals("p7") && better ? 1 : 0;
            }
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "of %d: claimed %d, section better %d, worse %d, p7 better %d, p7 sooner %d, stretches %.2f",
                    pairs,
                    claimed,
                    sectionBetter,
                    sectionWorse,
                    playerBetter,
                    lagBetter,
                    (double) stretches / pairs);
        }
    }

    private static Count count(
            SimulatedTakes takes, int pairs, SimulatedTakes.Doing before, SimulatedTakes.Doing after) {
        Random random = new Random(20261126);
        Count count = new Count();
        for (int i = 0; i < pairs; i++) {
            count.add(TakeAgainstTake.of(takes.read(before, random), takes.read(after, random)));
        }
        return count;
    }

    private static SimulatedTakes eight(List<MeasuredErrors> errors) {
        return new SimulatedTakes(8, 16, errors);
    }

    private static SimulatedTakes.Doing lastTwo(List<Integer> turnedBars) {
        return (number, player) ->
                number >= 6 ? SimulatedTakes.turnedIn(turnedBars).apply(player) : player;
    }

    private static SimulatedTakes.Doing lastLate(double lagS) {
        return (number, player) -> number == 7 ? player.late(lagS) : player;
    }

    /** Both ways to be alike: all with the marking, and two turned in the same bars. */
    @Test
    void takesThatAreAlikeAreHardlyEverCalledChanged() {
        int pairs = 60;
        for (SimulatedTakes.Doing doing : List.of(lastTwo(List.of()), lastTwo(FOUR_BARS))) {
            Count count = count(eight(MeasuredErrors.rendered()), pairs, doing, doing);
            assertEquals(pairs, count.pairs);
            assertTrue(count.claimed <= 0.05 * pairs, count.toString());
        }
    }

    @Test
    void twoPlayersNoLongerTurnedInFourBarsAreFound() {
        int pairs = 60;
        Count count = count(eight(MeasuredErrors.rendered()), pairs, lastTwo(FOUR_BARS), lastTwo(List.of()));
        assertTrue(count.sectionBetter >= 0.6 * pairs, count.toString());
        assertEquals(0, count.sectionWorse);
    }

    /** Prints the figures of the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() {
        for (List<MeasuredErrors> errors : List.of(MeasuredErrors.rendered(), MeasuredErrors.real())) {
            SimulatedTakes eight = eight(errors);
            SimulatedTakes four = new SimulatedTakes(4, 8, errors);
            say("alike", eight, lastTwo(List.of()), lastTwo(List.of()));
            say("alike, two turned", eight, lastTwo(FOUR_BARS), lastTwo(FOUR_BARS));
            say("alike, four players, eight bars", four, lastTwo(List.of()), lastTwo(List.of()));
            say("turned elsewhere", eight, lastTwo(FOUR_BARS), lastTwo(List.of(8, 9, 10, 11)));
            say("two in four bars", eight, lastTwo(FOUR_BARS), lastTwo(List.of()));
            say("two in eleven bars", eight, lastTwo(ELEVEN_BARS), lastTwo(List.of()));
            say("late by 60 ms", eight, lastLate(0.06), lastLate(0));
        }
    }

    private static void say(
            String what, SimulatedTakes takes, SimulatedTakes.Doing before, SimulatedTakes.Doing after) {
        int pairs = 300;
        Count count = count(takes, pairs, before, after);
        System.out.println(what + ": " + count);
        assertEquals(pairs, count.pairs);
    }
}
