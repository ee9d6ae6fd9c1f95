package tuttarco.compare;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bench.Cost;
import tuttarco.seats.Place;
import tuttarco.sound.LevelCurve;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;

/**
 * Processor time and peak memory of all statistics of a take of two hours, by players and by beats, each in a process of its own:
 * {@code mvn test -Pbenchmark -Dtest=StatisticsBenchmark}. Nothing is asserted about speed.
 */
@Tag("benchmark")
class StatisticsBenchmark {
    private static final double TWO_HOURS_S = 7200;

    /** Measured errors are laid on so many strokes at a time. */
    private static final int STROKES_AT_A_TIME = 20;

    private static final double STATED_S = 0.017;
    private static final int SOUND_PER_S = 8000;
    private static final double MEAN_LENGTH_BEATS = 1.25;

    @ParameterizedTest
    @CsvSource({"15,5000", "30,5000", "60,5000", "60,2500", "60,1250"})
    void allStatisticsOfTwoHours(int players, int beats) throws Exception {
        Cost cost = Cost.of("1g", List.of(Statistics.class.getName(), String.valueOf(players), String.valueOf(beats)));
        System.out.printf(Locale.ROOT, "%d players, %d beats, simulation included: %s%n", players, beats, cost);
    }

    /** Simulates so many players and beats and takes all statistics of them. */
    static final class Statistics {
        private static final OperatingSystemMXBean PROCESS =
                ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

        public static void main(String[] args) {
            Random random = new Random(60);
            Passage passage = passage(Integer.parseInt(args[1]), random);
            List<tuttarco.strokes.Bows> bows = bows(passage, Integer.parseInt(args[0]), random);
            List<Reading> readings = Timing.readings(bows);
            LevelCurve sound = sound(random);
            CompareSettings settings = CompareSettings.DEFAULT;
            long startNs = PROCESS.getProcessCpuTime();
            long wallNs = System.nanoTime();
            Comparison comparison = timed(
                    "comparison", () -> Comparing.compare(readings, passage.beats(), passage.marking(), settings));
            Unity unity = timed("unity", () -> UnityByShifts.of(comparison));
            Togetherness together = timed("togetherness", () -> Togetherness.of(comparison, bows, settings));
            List<Spot> spots = timed("rehearsal list", () -> RehearsalList.of(comparison));
            Evenness evenness = timed("evenness", () -> Listening.to(sound, readings, comparison.beats()));
            System.out.printf(
                    Locale.ROOT,
                    "all: %.1f s, %.1f s by the clock; %d spots, %d measures, %d dips%n",
                    (PROCESS.getProcessCpuTime() - startNs) / 1e9,
                    (System.nanoTime() - wallNs) / 1e9,
                    spots.size(),
                    together.measures().size(),
                    evenness.changes());
            boolean done = unity instanceof Unity.Told && !spots.isEmpty() && evenness.changes() > 0;
            System.exit(done ? 0 : 1);
        }

        private static <T> T timed(String what, Supplier<T> work) {
            long startNs = PROCESS.getProcessCpuTime();
            T done = work.get();
            System.out.printf(Locale.ROOT, "%s %.1f s, ", what, (PROCESS.getProcessCpuTime() - startNs) / 1e9);
            return done;
        }
    }

    private static Passage passage(int beats, Random random) {
        double beatS = TWO_HOURS_S / beats;
        List<Double> lengthsS = IntStream.range(0, (int) (beats / MEAN_LENGTH_BEATS))
                .mapToObj(i -> (0.5 + 0.5 * random.nextInt(4)) * beatS * (random.nextDouble() < 0.03 ? -1 : 1))
                .toList();
        return new Passage(beatS, lengthsS);
    }

    /** A leader and others of whom every third is late and every fourth is turned now and then, read with measured errors. */
    private static List<tuttarco.strokes.Bows> bows(Passage passage, int players, Random random) {
        List<MeasuredErrors> errors = MeasuredErrors.rendered();
        int beats = passage.beats().beats().size();
        List<tuttarco.strokes.Bows> bows = new ArrayList<>();
        for (int p = 0; p < players; p++) {
            SimulatedPlayer player = SimulatedPlayer.with(
                            Bows.player("p" + p, p / 2 + 1, p % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, p == 0))
                    .late(p % 3 == 1 ? 0.06 : 0);
            for (int first = 10 + p; p % 4 == 3 && first + 4 < beats; first += beats / 10) {
                player = player.turned(first, first + 3);
            }
            MeasuredErrors error = errors.get(random.nextInt(errors.size()));
            bows.add(bows(player, read(player.played(passage, random), error, random)));
        }
        return bows;
    }

    private static List<Stroke> read(List<Stroke> played, MeasuredErrors error, Random random) {
        List<Stroke> read = new ArrayList<>();
        double readUntilS = 0;
        for (int i = 0; i < played.size(); i += STROKES_AT_A_TIME) {
            List<Stroke> some = played.subList(i, Math.min(played.size(), i + STROKES_AT_A_TIME));
            double startS = some.get(0).startS();
            for (Stroke s : Spans.shifted(error.on(Spans.shifted(some, -startS), random), startS)) {
                if (s.endS() > readUntilS) {
                    read.add(new Stroke(readUntilS, s.endS(), s.kind(), s.confidence()));
                    readUntilS = s.endS();
                }
            }
        }
        return read;
    }

    private static tuttarco.strokes.Bows bows(SimulatedPlayer player, List<Stroke> strokes) {
        Edge edge = new Edge.Change(STATED_S);
        BowUse use = new BowUse.Unknown(BowUse.Reason.UNCLEAR);
        return new tuttarco.strokes.Bows(
                player.player(),
                strokes.stream().map(s -> new Bow(s, edge, edge, use)).toList());
    }

    /** Noise that swells and fades. */
    private static LevelCurve sound(Random random) {
        LevelCurve.Gathering level = new LevelCurve.Gathering(SOUND_PER_S, 0);
        float[] second = new float[SOUND_PER_S];
        for (int s = 0; s < TWO_HOURS_S; s++) {
            for (int i = 0; i < second.length; i++) {
                second[i] = (0.02f + 0.01f * (s % 3)) * (random.nextFloat() - 0.5f);
            }
            level.add(second, second.length);
        }
        return level.curve();
    }
}
