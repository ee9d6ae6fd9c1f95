package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;

/** Made-up rehearsals of a part in 3/4 whose runs are known. */
class RehearsalsTest {
    private static final int BEATS = 3;

    private static final int REHEARSALS = 300;

    /** What was listed, where in the part it really lay, and the index of the first beat of each run. */
    private record Rehearsal(List<Beat> beats, List<Double> places, List<Integer> firsts) {}

    /** Bars 1 to 40; a repeated stretch is written out with the same numbers. */
    private static List<String> numbers(boolean repeat) {
        List<String> numbers = new ArrayList<>();
        IntStream.rangeClosed(1, 16).forEach(i -> numbers.add(Integer.toString(i)));
        if (repeat) {
            IntStream.rangeClosed(9, 16).forEach(i -> numbers.add(Integer.toString(i)));
        }
        IntStream.rangeClosed(17, 40).forEach(i -> numbers.add(Integer.toString(i)));
        return numbers;
    }

    private static Part part(List<String> numbers) {
        return new Part(
                "p", numbers.stream().map(n -> Bar.full(n, new Metre(BEATS, 4))).toList(), List.of());
    }

    /**
     * Eight runs of 4 to 12 bars; the next begins 1 to 8 bars before the end of the last, or where it ended, or a few bars on,
     * after 8 to 40 s. Beats are uneven by 15 % each, and a run's tempo differs by a quarter.
     *
     * @param every which beats are listed: all, or the first of each bar
     */
    private static Rehearsal rehearsal(Random random, List<String> numbers, int every) {
        Rehearsal rehearsal = new Rehearsal(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        double timeS = 1;
        int bar = random.nextInt(4);
        for (int run = 0; run < 8; run++) {
            double beatS = 0.6 * (1 + 0.25 * (2 * random.nextDouble() - 1));
            int end = Math.min(numbers.size(), bar + 4 + random.nextInt(9));
            rehearsal.firsts().add(rehearsal.beats().size());
            for (int beat = bar * BEATS; beat < end * BEATS; beat++) {
                if (beat % every == 0) {
                    rehearsal.beats().add(new Beat(numbers.get(beat / BEATS), beat % BEATS + 1, timeS));
                    rehearsal.places().add((double) beat);
                }
                timeS += beatS * (1 + 0.15 * (2 * random.nextDouble() - 1));
            }
            timeS += 8 + 32 * random.nextDouble();
            bar = Math.max(0, Math.min(numbers.size() - 4, end + random.nextInt(9) - 6));
        }
        return rehearsal;
    }

    /** Of 300 rehearsals, as read: how many had all their runs right, and which share of their beats lay in the right place. */
    private record Score(int runsRight, double placesRight) {
        static Score of(boolean repeat, int every) throws InputException {
            Random random = new Random(31);
            List<String> numbers = numbers(repeat);
            PartRuler ruler = new PartRuler(part(numbers));
            int runsRight = 0;
            int placesRight = 0;
            int beats = 0;
            for (int i = 0; i < REHEARSALS; i++) {
                Rehearsal rehearsal = rehearsal(random, numbers, every);
                List<double[]> places = new ArrayList<>();
                for (Beat beat : rehearsal.beats()) {
                    places.add(ruler.places(beat));
                }
                Laid laid = Laid.of(new BeatMap(rehearsal.beats()), places);
                List<Integer> firsts =
                        laid.map().runs().stream().map(Run::firstIndex).toList();
                runsRight += firsts.equals(rehearsal.firsts()) ? 1 : 0;
                for (int b = 0; b < rehearsal.beats().size(); b++) {
                    placesRight += laid.places()[b] == rehearsal.places().get(b) ? 1 : 0;
                    beats++;
                }
            }
            return new Score(runsRight, (double) placesRight / beats);
        }
    }

    @Test
    void whereEveryBeatIsListedEveryRunIsFound() throws InputException {
        assertEquals(new Score(REHEARSALS, 1), Score.of(false, 1));
    }

    /** A skip of few bars may look like bars left out. */
    @Test
    void whereOnlyBarsAreListedHardlyARunIsMissed() throws InputException {
        Score score = Score.of(false, BEATS);
        assertTrue(score.runsRight() >= 0.95 * REHEARSALS, score.toString());
    }

    /** Who goes back within a repeat may be in the first or the second time: not all of that can be told. */
    @Test
    void mostBeatsOfARepeatAreLaidOnTheRightTime() throws InputException {
        Score all = Score.of(true, 1);
        assertTrue(all.runsRight() >= 0.8 * REHEARSALS && all.placesRight() >= 0.95, all.toString());
        Score bars = Score.of(true, BEATS);
        assertTrue(bars.runsRight() >= 0.65 * REHEARSALS && bars.placesRight() >= 0.94, bars.toString());
    }
}
