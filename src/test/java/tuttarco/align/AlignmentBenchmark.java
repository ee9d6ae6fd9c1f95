package tuttarco.align;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bench.Cost;
import tuttarco.score.Part;

/**
 * Wall time, processor time and peak memory of hearing a part of 400 bars in synthesised rehearsals that get longer, and
 * of carrying beats over from one to another, each in a process of its own: {@code mvn test -Pbenchmark}. Nothing is asserted about speed.
 */
@Tag("benchmark")
class AlignmentBenchmark {
    private static final int BARS = 400;

    @TempDir
    Path folder;

    /** Hears the part in a recording of so many minutes. */
    static final class Hearing {
        public static void main(String[] args) throws Exception {
            Rehearsal rehearsal = rehearsal(Integer.parseInt(args[1]));
            List<Beat> beats =
                    new HeardBeats(rehearsal.part(), Path.of(args[0])).beats().beats();
            System.out.printf(
                    Locale.ROOT,
                    "%s min: %d beats played, %d heard, %d of them right%n",
                    args[1],
                    rehearsal.beatsPlayed(),
                    beats.size(),
                    rehearsal.right(beats));
            System.exit(rehearsal.right(beats) > 0.9 * beats.size() ? 0 : 1);
        }
    }

    /** Carries the beats of one recording of so many minutes over to another as long, of other passages. */
    static final class Carrying {
        public static void main(String[] args) throws Exception {
            int minutes = Integer.parseInt(args[2]);
            BeatMap known = rehearsal(minutes).beats();
            Rehearsal wanted = again(minutes);
            List<Beat> beats = new CarriedBeats(() -> known, Path.of(args[0]), Path.of(args[1]))
                    .beats()
                    .beats();
            System.out.printf(
                    Locale.ROOT,
                    "%d min: %d beats known, %d played, %d carried, %d of them right%n",
                    minutes,
                    known.beats().size(),
                    wanted.beatsPlayed(),
                    beats.size(),
                    wanted.right(beats));
            System.exit(wanted.right(beats) > 0.8 * beats.size() ? 0 : 1);
        }
    }

    private static Rehearsal rehearsal(int minutes) {
        return Rehearsal.random(21, part(), 60.0 * minutes);
    }

    private static Rehearsal again(int minutes) {
        return Rehearsal.random(24, part(), 60.0 * minutes);
    }

    private static Part part() {
        return Section.tune(20, BARS);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 30, 120})
    void hearingAPart(int minutes) throws Exception {
        Path wav = folder.resolve("rehearsal.wav");
        rehearsal(minutes).write(new Section(22, 1, 442), wav);
        // the process fails if most beats are not where they were played
        Cost cost = Cost.of("2g", List.of(Hearing.class.getName(), wav.toString(), String.valueOf(minutes)));
        System.out.printf(Locale.ROOT, "%d min, %d bars: %s%n", minutes, BARS, cost);
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 30, 120})
    void carryingBeatsOver(int minutes) throws Exception {
        Path known = folder.resolve("known.wav");
        Path wanted = folder.resolve("wanted.wav");
        rehearsal(minutes).write(new Section(22, 1, 442), known);
        again(minutes).write(new Section(25, 1, 440), wanted);
        Cost cost = Cost.of(
                "2g", List.of(Carrying.class.getName(), known.toString(), wanted.toString(), String.valueOf(minutes)));
        System.out.printf(Locale.ROOT, "%d min carried over: %s%n", minutes, cost);
    }
}
