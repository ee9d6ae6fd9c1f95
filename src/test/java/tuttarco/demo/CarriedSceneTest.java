package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.align.CarriedBeats;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Beats carried from one rendered soundtrack to another, against the tempo that the second was rendered by. */
class CarriedSceneTest {
    private static final int PLAYERS = 12;

    @TempDir
    Path dir;

    /** Twelve violins; where they bow freely, four of them lag as well. */
    private static Scene violins(
            String name, String passage, Bowing bowing, double tempoBpm, int noiseDb, Stop... stops) {
        List<Cast> cast = new ArrayList<>();
        for (int i = 0; i < PLAYERS; i++) {
            if (bowing == Bowing.UNIFIED) {
                cast.add(new Cast(Instrument.VIOLIN, Facing.CAMERA));
            } else if (i % 3 == 2) {
                cast.add(new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Lags(20.0 * i)));
            } else {
                cast.add(new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Free()));
            }
        }
        return new Scene(
                        name,
                        name,
                        cast,
                        Passage.of("Violet Hour", passage),
                        tempoBpm,
                        bowing,
                        Picture.of(1280, 720),
                        Conditions.EASY,
                        Scene.Sound.TONES,
                        name.hashCode())
                .sounding(Acoustics.QUIET_ROOM.noisy(noiseDb))
                .stopping(stops);
    }

    private Path sound(Scene scene) throws Exception {
        Take take = TakeFile.read(new SoundCatalogue.Listed(scene, "").writeSound(dir));
        return take.video();
    }

    private BeatMap carried(Scene from, Scene to) throws Exception {
        BeatMap known = from.tempo().beats();
        return new CarriedBeats(() -> known, sound(from), sound(to)).beats();
    }

    private static void assertNear(
            String what, List<Beat> truth, BeatMap carried, double medianMs, double ninetiethMs) {
        double[] errorsMs = carried.beats().stream()
                .mapToDouble(beat -> truth.stream()
                        .filter(t -> t.bar().equals(beat.bar()) && t.beat() == beat.beat())
                        .mapToDouble(t -> 1000 * Math.abs(t.timeS() - beat.timeS()))
                        .min()
                        .orElseThrow())
                .sorted()
                .toArray();
        String score = String.format(
                Locale.ROOT,
                "%s: %d of %d beats carried, median %.0f ms, 90 %% within %.0f ms, furthest %.0f ms",
                what,
                errorsMs.length,
                truth.size(),
                errorsMs[errorsMs.length / 2],
                errorsMs[errorsMs.length * 9 / 10],
                Arrays.stream(errorsMs).max().orElseThrow());
        assertTrue(errorsMs.length >= 0.9 * truth.size(), score);
        assertTrue(errorsMs.length <= 1.1 * truth.size(), score);
        assertTrue(errorsMs[errorsMs.length / 2] <= medianMs, score);
        assertTrue(errorsMs[errorsMs.length * 9 / 10] <= ninetiethMs, score);
    }

    @Test
    void aFreeTakeHasTheBeatsOfTheUnified() throws Exception {
        Scene unified = violins("unified", Passage.MIXED, Bowing.UNIFIED, 108, -50);
        Scene free = violins("free", Passage.MIXED, Bowing.FREE, 88, -50);
        Scene noisy = violins("noisy", Passage.MIXED, Bowing.FREE, 120, -20);
        assertNear("free", free.tempo().beats().beats(), carried(unified, free), 60, 200);
        assertNear("free, noise of -20 dB", noisy.tempo().beats().beats(), carried(unified, noisy), 60, 200);
    }

    @Test
    void whatIsPlayedAgainIsCarriedAgain() throws Exception {
        Scene through = violins("through", Passage.LONG, Bowing.UNIFIED, 108, -50);
        Scene rehearsed = violins("again", Passage.LONG, Bowing.FREE, 100, -40, new Stop(9, 4, 5));
        BeatMap map = carried(through, rehearsed);
        assertEquals(2, map.runs().size());
        assertNear("rehearsed", rehearsed.tempo().beats().beats(), map, 60, 200);
    }

    /** The take whose beats are known stopped; this one does not. */
    @Test
    void aStopOfTheOtherTakeIsNoStopHere() throws Exception {
        Scene rehearsed = violins("again", Passage.LONG, Bowing.UNIFIED, 108, -50, new Stop(9, 4, 5));
        Scene through = violins("through", Passage.LONG, Bowing.FREE, 100, -40);
        BeatMap map = carried(rehearsed, through);
        assertEquals(1, map.runs().size());
        assertNear("through", through.tempo().beats().beats(), map, 60, 200);
    }
}
