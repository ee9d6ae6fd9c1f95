package tuttarco.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.bow.Instrument;
import tuttarco.files.OutputException;
import tuttarco.seats.Facing;
import tuttarco.take.Bowing;

/** The scenes that hearing the beats is checked on: each departs from a plain one in a single way. */
public final class SoundCatalogue {
    /**
     * A scene with what makes it hard to hear.
     *
     * @param difficulty empty for a plain scene
     */
    public record Listed(Scene scene, String difficulty) {
        public String name() {
            return scene.name();
        }

        /** When the beats lie as they are meant: what players lag behind. */
        public BeatMap beats() {
            return scene.tempo().beats();
        }

        /**
         * Writes the sound alone as NAME.wav, with a take that leaves the beats to be heard in it and all else that {@link
         * Demo#write} writes of a take, into an existing folder; returns the take file.
         */
        public Path writeSound(Path dir) throws IOException, OutputException {
            return Rendering.writeSound(scene, dir);
        }
    }

    private static final int PLAYERS = 12;
    private static final double TEMPO_BPM = 108;
    private static final Picture PICTURE = Picture.of(1280, 720);

    /** Every third player's lag, each more than the one before, milliseconds. */
    private static final double LAG_MS = 30;

    private final List<Listed> scenes = new ArrayList<>();

    private SoundCatalogue() {}

    /** All scenes, in a fixed order with fixed seeds. */
    public static List<Listed> all() {
        SoundCatalogue catalogue = new SoundCatalogue();
        catalogue.sections();
        catalogue.music();
        catalogue.noise();
        catalogue.rehearsals();
        return List.copyOf(catalogue.scenes);
    }

    private void sections() {
        add("heard", "", section(Instrument.VIOLIN, PLAYERS), Passage.MIXED, Acoustics.QUIET_ROOM);
        add("heard-one", "one player", section(Instrument.VIOLIN, 1), Passage.MIXED, Acoustics.QUIET_ROOM);
        add("heard-sixty", "sixty players in a hall", section(Instrument.VIOLIN, 60), Passage.MIXED, Acoustics.HALL);
        add("heard-hall", "a hall's echoes", section(Instrument.VIOLIN, PLAYERS), Passage.MIXED, Acoustics.HALL);
        add("heard-lags", "four players lag", lagging(Instrument.VIOLA), Passage.MIXED, Acoustics.QUIET_ROOM);
        List<Cast> free = new ArrayList<>();
        for (int i = 0; i < PLAYERS; i++) {
            free.add(new Cast(Instrument.CELLO, Facing.CAMERA, new Deviation.Free()));
        }
        add("heard-free", "everyone bows freely", free, Passage.MIXED, Acoustics.QUIET_ROOM);
        add("heard-basses", "basses", section(Instrument.BASS, 6), Passage.MIXED, Acoustics.QUIET_ROOM);
    }

    private void music() {
        List<Cast> section = section(Instrument.VIOLIN, PLAYERS);
        add("heard-eighths", "fast notes", section, Passage.EIGHTHS, Acoustics.QUIET_ROOM);
        add("heard-slow", "whole notes", section, Passage.SLOW, Acoustics.QUIET_ROOM);
        add("heard-rests", "rests", section, Passage.RESTS_AND_RETAKES, Acoustics.QUIET_ROOM);
    }

    private void noise() {
        for (int noiseDb : new int[] {-30, -20, -10}) {
            add(
                    "heard-noise" + noiseDb,
                    "noise of " + noiseDb + " dB",
                    section(Instrument.VIOLIN, PLAYERS),
                    Passage.MIXED,
                    Acoustics.QUIET_ROOM.noisy(noiseDb));
        }
    }

    private void rehearsals() {
        add(
                "rehearsed",
                "they stop after bar 9, someone talks, from bar 5 again",
                section(Instrument.VIOLIN, PLAYERS),
                Passage.LONG,
                Acoustics.QUIET_ROOM,
                new Stop(9, 4, 5));
        add(
                "rehearsed-twice",
                "two stops, four players lag, noise of -25 dB",
                lagging(Instrument.CELLO),
                Passage.LONG,
                Acoustics.QUIET_ROOM.noisy(-25),
                new Stop(6, 3, 5),
                new Stop(12, 5, 9));
    }

    private static List<Cast> section(Instrument instrument, int players) {
        List<Cast> cast = new ArrayList<>();
        for (int i = 0; i < players; i++) {
            cast.add(new Cast(instrument, Facing.CAMERA));
        }
        return cast;
    }

    private static List<Cast> lagging(Instrument instrument) {
        List<Cast> cast = section(instrument, PLAYERS);
        for (int i = 2; i < PLAYERS; i += 3) {
            cast.set(i, new Cast(instrument, Facing.CAMERA, new Deviation.Lags(LAG_MS * (i / 3 + 1))));
        }
        return cast;
    }

    private void add(
            String name, String difficulty, List<Cast> cast, String passage, Acoustics acoustics, Stop... stops) {
        Bowing bowing = cast.get(0).deviations().contains(new Deviation.Free()) ? Bowing.FREE : Bowing.UNIFIED;
        Scene scene = new Scene(
                name,
                name,
                cast,
                Passage.of("Violet Hour", passage),
                TEMPO_BPM,
                bowing,
                PICTURE,
                Conditions.EASY,
                Scene.Sound.TONES,
                200 + scenes.size());
        scenes.add(new Listed(scene.sounding(acoustics).stopping(stops), difficulty));
    }
}
