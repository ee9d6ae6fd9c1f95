package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.align.HeardBeats;
import tuttarco.beats.Beat;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.musicxml.MusicXmlPartWriter;
import tuttarco.musicxml.Pitch;
import tuttarco.parts.Parts;
import tuttarco.score.Part;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Beats heard in rendered soundtracks, against the tempo that they were rendered by. */
class HeardSceneTest {
    @TempDir
    Path dir;

    /**
     * How far the beats heard lie from the true ones.
     *
     * @param found true beats of which one was heard within a beat's length
     * @param more heard beats beside these
     * @param biasMs how much later than true they are heard, on average
     */
    private record Score(int beats, int found, int more, double medianMs, double ninetiethMs, double biasMs) {
        static Score of(List<Beat> truth, List<Beat> heard, double beatS) {
            List<Double> errorsMs = new ArrayList<>();
            for (Beat beat : truth) {
                nearest(heard, beat)
                        .map(h -> 1000 * (h.timeS() - beat.timeS()))
                        .filter(errorMs -> Math.abs(errorMs) < 1000 * beatS)
                        .ifPresent(errorsMs::add);
            }
            double[] sizesMs = errorsMs.stream().mapToDouble(Math::abs).sorted().toArray();
            return new Score(
                    truth.size(),
                    sizesMs.length,
                    heard.size() - sizesMs.length,
                    sizesMs.length == 0 ? Double.NaN : sizesMs[sizesMs.length / 2],
                    sizesMs.length == 0 ? Double.NaN : sizesMs[sizesMs.length * 9 / 10],
                    errorsMs.stream().mapToDouble(e -> e).average().orElse(Double.NaN));
        }

        private static Optional<Beat> nearest(List<Beat> heard, Beat beat) {
            return heard.stream()
                    .filter(h -> h.bar().equals(beat.bar()) && h.beat() == beat.beat())
                    .min((a, b) ->
                            Double.compare(Math.abs(a.timeS() - beat.timeS()), Math.abs(b.timeS() - beat.timeS())));
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d beats, %d found, %d more; median %.0f ms, 90 %% within %.0f ms, %.0f ms late on average",
                    beats,
                    found,
                    more,
                    medianMs,
                    ninetiethMs,
                    biasMs);
        }
    }

    private Score score(SoundCatalogue.Listed listed) throws Exception {
        Take take = TakeFile.read(listed.writeSound(dir));
        List<Beat> heard = new HeardBeats(part(take), take.video()).beats().beats();
        return Score.of(listed.beats().beats(), heard, 60 / listed.scene().tempoBpm());
    }

    private static Part part(Take take) throws InputException {
        return Parts.read(take.part().orElseThrow(), take.players().get(0).instrument());
    }

    private static SoundCatalogue.Listed listed(String name) {
        return SoundCatalogue.all().stream()
                .filter(listed -> listed.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Twelve players, some late, with noise and from an earlier bar again; the goal is set for real recordings alike. */
    @ParameterizedTest
    @ValueSource(strings = {"heard", "heard-lags", "heard-free", "heard-noise-20", "heard-noise-10", "rehearsed"})
    void theBeatsAreHeardWhereTheyAre(String name) throws Exception {
        Score score = score(listed(name));
        assertTrue(score.found() >= 0.95 * score.beats(), score.toString());
        assertTrue(score.more() <= 0.05 * score.beats(), score.toString());
        assertTrue(score.medianMs() <= 40, score.toString());
        assertTrue(score.ninetiethMs() <= 150, score.toString());
    }

    static List<SoundCatalogue.Listed> all() {
        return SoundCatalogue.all();
    }

    /** All of them, for the method page. */
    @Tag("campaign")
    @ParameterizedTest
    @MethodSource("all")
    void everySceneIsHeard(SoundCatalogue.Listed listed) throws Exception {
        Score score = score(listed);
        System.out.println(listed.name() + " (" + listed.difficulty() + "): " + score);
        assertTrue(score.found() >= 0.75 * score.beats(), score.toString());
    }

    /** The bars that were played again are heard again. */
    @Test
    void barsPlayedTwiceAreHeardTwice() throws Exception {
        Take take = TakeFile.read(listed("rehearsed").writeSound(dir));
        List<Beat> heard = new HeardBeats(part(take), take.video()).beats().beats();
        for (int bar = 1; bar <= 16; bar++) {
            String number = Integer.toString(bar);
            long times = heard.stream()
                    .filter(beat -> beat.bar().equals(number) && beat.beat() == 1)
                    .count();
            assertEquals(bar >= 5 && bar <= 9 ? 2 : 1, times, "bar " + bar);
        }
    }

    /** Other notes in other rhythms, the right notes in other rhythms, and the right rhythms a semitone off. */
    @Test
    void theWrongPartIsRefused() throws Exception {
        Take take = TakeFile.read(listed("heard").writeSound(dir));
        List<Pitch> backwards = new ArrayList<>(Tune.of(Instrument.VIOLIN).written());
        Collections.reverse(backwards);
        assertRefused(take, backwards, Passage.EIGHTHS);
        assertRefused(take, Tune.of(Instrument.VIOLIN).written(), Passage.RESTS_AND_RETAKES);
        List<Pitch> flat = Tune.of(Instrument.VIOLIN).written().stream()
                .map(p -> new Pitch(p.step(), p.alter() - 1, p.octave()))
                .toList();
        assertRefused(take, flat, Passage.MIXED);
    }

    private void assertRefused(Take take, List<Pitch> pitches, String passage) throws Exception {
        Path file = dir.resolve("wrong.musicxml");
        Part written = Passage.of("Another Hour", passage);
        Files.writeString(file, new MusicXmlPartWriter(Instrument.VIOLIN, pitches).text(written));
        HeardBeats wrong = new HeardBeats(Parts.read(file, Instrument.VIOLIN), take.video());
        InputException e = assertThrows(InputException.class, wrong::beats);
        assertEquals(
                "The sound of heard.wav does not fit the part Another Hour; check that it is the right part, or give the"
                        + " beats as a list.",
                e.getMessage());
    }
}
