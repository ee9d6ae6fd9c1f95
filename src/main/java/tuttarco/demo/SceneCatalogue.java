package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.score.Part;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.take.Bowing;

/**
 * Scenes with truth, each of which varies one difficulty from a plain one. Seeds are fixed. The band and the music are
 * made up: the strings of the Halcyon Lane Players in "Ferry at Dusk".
 */
final class SceneCatalogue {
    private static final String PIECE = "Ferry at Dusk";
    private static final double TEMPO = 88;
    private static final double START_S = 1.0;

    private SceneCatalogue() {}

    /**
     * A scene to measure on.
     *
     * @param plain whether nothing about it is hard
     */
    record Case(Scene scene, boolean plain) {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        for (Instrument instrument : Instrument.values()) {
            cases.add(plain(pair(instrument.word(), instrument, Facing.CAMERA, Passage.MIXED)));
        }
        cases.add(plain(pair("violin-camera-left", Instrument.VIOLIN, Facing.CAMERA_LEFT, Passage.MIXED)));
        cases.add(plain(pair("cello-camera-left", Instrument.CELLO, Facing.CAMERA_LEFT, Passage.MIXED)));
        cases.add(hard(pair("violin-camera-right", Instrument.VIOLIN, Facing.CAMERA_RIGHT, Passage.MIXED)));
        cases.add(hard(pair("cello-camera-right", Instrument.CELLO, Facing.CAMERA_RIGHT, Passage.MIXED)));
        cases.add(hard(pair("violin-left", Instrument.VIOLIN, Facing.LEFT, Passage.MIXED)));
        cases.add(hard(pair("violin-right", Instrument.VIOLIN, Facing.RIGHT, Passage.MIXED)));
        cases.add(hard(pair("cello-away", Instrument.CELLO, Facing.AWAY, Passage.MIXED)));
        Scene violins = pair("violins", Instrument.VIOLIN, Facing.CAMERA, Passage.MIXED);
        Conditions c = Conditions.PLAIN;
        cases.add(hard(named(violins.under(c.shaken(2.5)), "shake")));
        cases.add(hard(named(violins.under(c.zooming(0.12)), "zoom-drift")));
        cases.add(hard(named(violins.under(c.lit(0.18, 0)), "dim")));
        cases.add(hard(named(violins.under(c.lit(0.8, 0.25)), "flicker")));
        cases.add(hard(named(violins.under(c.noisy(10)), "noise")));
        cases.add(hard(named(violins.under(c.blurred(0.8)), "motion-blur")));
        cases.add(hard(named(violins.under(c.swaying(0.06)), "sway")));
        cases.add(hard(named(violins.under(c.behindStands(0.95)), "stands")));
        cases.add(hard(named(violins.under(c.withSomebodyPassing()), "passing-head")));
        cases.add(hard(named(violins.under(c.compressed(0.02)), "low-bitrate")));
        cases.add(hard(named(violins.under(c.uneven()), "uneven-rate")));
        cases.add(plain(named(violins.at(25), "25-frames")));
        cases.add(plain(named(violins.at(50), "50-frames")));
        cases.add(hard(pair("eighths", Instrument.VIOLIN, Facing.CAMERA, Passage.EIGHTHS)));
        cases.add(hard(pair("slow", Instrument.VIOLIN, Facing.CAMERA, Passage.SLOW)));
        cases.add(hard(pair("rests-and-retakes", Instrument.VIOLIN, Facing.CAMERA, Passage.RESTS_AND_RETAKES)));
        cases.add(plain(twelve("unified", List.of())));
        cases.add(plain(twelve(
                "turned",
                List.of(new Deviation.Turned(2, 3), new Deviation.Turned(5, 5), new Deviation.Turned(6, 7)))));
        cases.add(hard(small()));
        return cases;
    }

    static List<Scene> samples() {
        return List.of(sample("unified", Bowing.UNIFIED), sample("free", Bowing.FREE));
    }

    /** Sixty players in one picture; slow to render, so not among {@link #all}. */
    static Scene orchestra() {
        return scene("orchestra", 60, 1920, 1080, Instrument.VIOLIN, Facing.CAMERA, Passage.SHORT, 6, 60);
    }

    private static Case plain(Scene scene) {
        return new Case(scene, true);
    }

    private static Case hard(Scene scene) {
        return new Case(scene, false);
    }

    private static Scene pair(String name, Instrument instrument, Facing facing, String passage) {
        return scene(name, 2, 640, 360, instrument, facing, passage, 1, name.hashCode());
    }

    /** Twelve players; the deviations go to players spread over the section. */
    private static Scene twelve(String name, List<Deviation> deviations) {
        Scene scene = scene("twelve-" + name, 12, 1280, 720, Instrument.VIOLIN, Facing.CAMERA, Passage.MIXED, 3, 12);
        List<Sitter> sitters = new ArrayList<>(scene.sitters());
        for (int i = 0; i < deviations.size(); i++) {
            int at = 3 + 4 * i;
            sitters.set(at, sitters.get(at).doing(deviations.get(i)));
        }
        return with(scene, sitters);
    }

    private static Scene small() {
        return scene("small-figures", 12, 640, 270, Instrument.VIOLIN, Facing.CAMERA, Passage.MIXED, 3, 13);
    }

    private static Scene sample(String name, Bowing bowing) {
        Scene scene = scene(name, 8, 960, 540, Instrument.VIOLIN, Facing.CAMERA_LEFT, Passage.MIXED, 2, 2026);
        List<Sitter> sitters = new ArrayList<>();
        for (Sitter sitter : scene.sitters()) {
            sitters.add(bowing == Bowing.FREE && !sitter.leader() ? sitter.doing(new Deviation.Free()) : sitter);
        }
        if (bowing == Bowing.UNIFIED) {
            sitters.set(5, sitters.get(5).doing(new Deviation.Turned(3, 5)));
            sitters.set(7, sitters.get(7).doing(new Deviation.Lags(120)));
        }
        String title = bowing == Bowing.UNIFIED ? "bowed as marked" : "bowed freely";
        return new Scene(
                name,
                "First violins of the Halcyon Lane Players, " + PIECE + ", " + title,
                scene.seed(),
                scene.widthPx(),
                scene.heightPx(),
                scene.framesPerS(),
                scene.tempo(),
                bowing,
                scene.desksPerRow(),
                sitters,
                Conditions.PLAIN.compressed(0.045),
                Sound.TONES);
    }

    private static Scene scene(
            String name,
            int players,
            int widthPx,
            int heightPx,
            Instrument instrument,
            Facing facing,
            String passage,
            int desksPerRow,
            long seed) {
        Part violins = Passage.of(PIECE, passage);
        Part part = instrument == Instrument.VIOL ? Passage.reversed(violins) : violins;
        List<Sitter> sitters = new ArrayList<>();
        for (int i = 0; i < players; i++) {
            Place place = i % 2 == 0 ? Place.OUTSIDE : Place.INSIDE;
            int desk = 1 + i / 2;
            sitters.add(new Sitter(
                    "Desk " + desk + " " + place.word(), desk, place, instrument, facing, i == 0, List.of()));
        }
        return new Scene(
                name,
                PIECE + ": " + name,
                seed,
                widthPx,
                heightPx,
                30,
                new Tempo(part, TEMPO, START_S),
                Bowing.UNIFIED,
                desksPerRow,
                sitters,
                Conditions.PLAIN,
                Sound.NONE);
    }

    private static Scene named(Scene s, String name) {
        return new Scene(
                name,
                PIECE + ": " + name,
                s.seed(),
                s.widthPx(),
                s.heightPx(),
                s.framesPerS(),
                s.tempo(),
                s.bowing(),
                s.desksPerRow(),
                s.sitters(),
                s.conditions(),
                s.sound());
    }

    private static Scene with(Scene s, List<Sitter> sitters) {
        return new Scene(
                s.name(),
                s.title(),
                s.seed(),
                s.widthPx(),
                s.heightPx(),
                s.framesPerS(),
                s.tempo(),
                s.bowing(),
                s.desksPerRow(),
                sitters,
                s.conditions(),
                s.sound());
    }
}
