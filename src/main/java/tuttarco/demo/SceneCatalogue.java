package tuttarco.demo;

import static tuttarco.bow.Instrument.BASS;
import static tuttarco.bow.Instrument.CELLO;
import static tuttarco.bow.Instrument.VIOL;
import static tuttarco.bow.Instrument.VIOLA;
import static tuttarco.bow.Instrument.VIOLIN;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.files.OutputException;
import tuttarco.score.Part;
import tuttarco.seats.Facing;
import tuttarco.take.Bowing;

/** The scenes the program is checked on: each departs from a plain one in a single way. */
public final class SceneCatalogue {
    /** What a reading of a scene should hold. */
    public enum Expected {
        /** Strokes, and their directions. */
        STROKES,
        /** Strokes too, but today's reader need not find them: how many it does is measured in the campaign. */
        STROKES_MEASURED,
        /** No stroke at all: arms move, but nobody bows. */
        NO_STROKES
    }

    /**
     * A scene with what makes it hard.
     *
     * @param difficulty empty for a plain scene
     */
    public record Listed(Scene scene, String difficulty, Expected expected) {
        public boolean plain() {
            return difficulty.isEmpty();
        }

        public String name() {
            return scene.name();
        }

        /** Renders into an existing folder, with all that {@link Demo#write} writes of a take; returns the take file. */
        public Path render(Path dir) throws IOException, OutputException, InterruptedException {
            return Rendering.write(scene, dir, percent -> {});
        }
    }

    private static final Picture SINGLE = Picture.of(480, 400);
    private static final Picture SECTION = Picture.of(1280, 720);
    private static final double TEMPO_BPM = 108;
    /** From facing the camera nearly to profile, as far as players turn to each other, degrees (chosen). */
    private static final double PROFILE_DEG = 75;

    /** A small figure takes four fifths of its picture's height: what is filled less the margins that a layout leaves. */
    private static final double PICTURE_PER_FIGURE = 1.25;

    private static final double SMALL_FILL = 0.86;
    private static final double SMALL_ASPECT = 1.25;

    /** What other views are cut to. */
    private static final Framing CLOSER = new Framing(0.3, 0.1, 0.05);

    private static final Framing ASIDE = new Framing(0.4, -0.25, 0);

    private final List<Listed> scenes = new ArrayList<>();

    private SceneCatalogue() {}

    /** All scenes, in a fixed order with fixed seeds. */
    public static List<Listed> all() {
        SceneCatalogue catalogue = new SceneCatalogue();
        catalogue.instruments();
        catalogue.facings();
        catalogue.sections();
        catalogue.cameras();
        catalogue.bodiesAndMusic();
        catalogue.withoutBowing();
        catalogue.bodiesSeenOtherwise();
        catalogue.camerasAndSections();
        catalogue.smallFigures();
        catalogue.edited();
        catalogue.otherMovements();
        catalogue.otherMovementsHeldOut();
        catalogue.bowsUnlikeTheLeaders();
        return List.copyOf(catalogue.scenes);
    }

    private void instruments() {
        for (Instrument instrument : Instrument.values()) {
            add("plain-" + instrument.word(), "", single(instrument, Facing.CAMERA, Passage.SHORT));
        }
    }

    private void facings() {
        for (Facing facing : List.of(Facing.CAMERA_LEFT, Facing.CAMERA_RIGHT, Facing.LEFT, Facing.RIGHT)) {
            add("violin-" + facing.word(), "the player faces " + facing.word(), single(VIOLIN, facing, Passage.SHORT));
        }
        add("violin-away-right", "seen from behind", single(VIOLIN, Facing.AWAY_RIGHT, Passage.SHORT));
        add("cello-camera-left", "the player faces camera-left", single(CELLO, Facing.CAMERA_LEFT, Passage.SHORT));
    }

    private void sections() {
        List<Cast> clean = section(VIOLIN, 12);
        add("section-unified", "", scene(clean, Passage.SHORT, SECTION));
        List<Cast> turned = section(VIOLIN, 12);
        turned.set(4, new Cast(VIOLIN, Facing.CAMERA, new Deviation.Turned(3, 4)));
        turned.set(9, new Cast(VIOLIN, Facing.CAMERA, new Deviation.Turned(5, 5)));
        add("section-turned", "two players turned for some bars", scene(turned, Passage.SHORT, SECTION));
        List<Cast> late = section(VIOLA, 12);
        for (int i = 1; i < late.size(); i++) {
            late.set(i, new Cast(VIOLA, Facing.CAMERA, new Deviation.Lags(15.0 * i)));
        }
        add("section-lags", "players lag by 15 ms more from chair to chair", scene(late, Passage.SHORT, SECTION));
        List<Cast> free = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            free.add(new Cast(CELLO, Facing.CAMERA, new Deviation.Free()));
        }
        add("section-free", "everyone bows freely", scene(free, Passage.SHORT, SECTION));
        add("section-small", "figures of about 70 px", scene(clean, Passage.SHORT, Picture.of(480, 270)));
        add("section-sixty", "sixty players", scene(section(VIOLIN, 60), Passage.SHORT, Picture.of(1920, 1080)));
    }

    private void cameras() {
        Scene plain = single(VIOLIN, Facing.CAMERA, Passage.SHORT);
        Conditions easy = Conditions.EASY;
        add("dim", "little light", plain.with(easy.lit(0.22, 0).noisy(4)));
        add("flicker", "flickering light", plain.with(easy.lit(1, 0.3)));
        add("noise", "sensor noise", plain.with(easy.noisy(14)));
        add("shake", "hand-held camera", plain.with(easy.shaken(4)));
        add("zoom", "the zoom drifts", plain.with(easy.moved(new CameraMove.Drifts(new Framing(0.15, 0, 0)))));
        add("blur", "motion blur", plain.with(easy.blurred(6)));
        add("low-bitrate", "strong compression", plain.with(SINGLE.bitrate(90)));
        for (int rate : new int[] {24, 50, 60}) {
            add("rate-" + rate, rate == 24 ? "" : rate + " frames a second", plain.with(SINGLE.at(rate)));
        }
        add("rate-varying", "variable frame rate", plain.with(SINGLE.varyingRate()));
        add(
                "stands",
                "high stands before the hands",
                scene(section(VIOLIN, 4), Passage.SHORT, Picture.of(960, 400))
                        .with(easy.behind(Conditions.Obstacle.HIGH_STANDS)));
        add(
                "passer",
                "someone walks past",
                scene(section(VIOLIN, 4), Passage.SHORT, Picture.of(960, 400))
                        .with(easy.behind(Conditions.Obstacle.PASSING_HEAD)));
        add("sway", "the body sways strongly", plain.with(easy.swaying(0.05)));
    }

    private void bodiesAndMusic() {
        add("rests-retakes", "rests and retakes", single(VIOLIN, Facing.CAMERA, Passage.RESTS_AND_RETAKES));
        add("eighths", "fast strokes", single(VIOLIN, Facing.CAMERA, Passage.EIGHTHS));
        add("slow", "slow whole bows", single(VIOLIN, Facing.CAMERA, Passage.SLOW));
    }

    /** What is marked is not played, since a part in which nothing is bowed is no part. */
    private void withoutBowing() {
        Expected expected = Expected.NO_STROKES;
        Picture wide = Picture.of(960, 400);
        List<Cast> plucking = new ArrayList<>();
        for (Instrument instrument : List.of(VIOLIN, VIOLA, CELLO, VIOLIN)) {
            plucking.add(doing(instrument, Activity.PIZZICATO));
        }
        add("pizzicato", "plucked throughout", scene(plucking, Passage.SHORT, wide), expected);
        Deviation silent = new Deviation.Silent(1, 6);
        List<Cast> turning = new ArrayList<>();
        for (int desk = 0; desk < 2; desk++) {
            turning.add(new Cast(VIOLIN, Facing.CAMERA, silent));
            turning.add(turning(VIOLIN, Facing.CAMERA, Activity.PAGE_TURN));
        }
        add("page-turns", "the inside players turn pages", scene(turning, Passage.SHORT, wide), expected);
        List<Cast> idle = List.of(
                doing(VIOLIN, Activity.IDLE),
                doing(VIOLA, Activity.IDLE),
                doing(CELLO, Activity.IDLE),
                doing(BASS, Activity.IDLE));
        add("idle", "everyone rests, fidgets, scratches the nose", scene(idle, Passage.SHORT, wide), expected);
        List<Cast> applauding = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            applauding.add(doing(i < 2 ? VIOLIN : CELLO, i % 2 == 0 ? Activity.SHAKES_BOW : Activity.CLAPS));
        }
        add("applause", "everyone applauds", scene(applauding, Passage.SHORT, wide), expected);
        Cast tremolo = new Cast(VIOLIN, Facing.CAMERA, new Deviation.Tremolo(2, 2), new Deviation.Tremolo(5, 5));
        add(
                "tremolo",
                "two bars of six are tremolo",
                scene(List.of(tremolo), Passage.SHORT, SINGLE),
                Expected.STROKES_MEASURED);
    }

    private void bodiesSeenOtherwise() {
        Expected expected = Expected.STROKES_MEASURED;
        for (Instrument instrument : List.of(VIOLIN, CELLO)) {
            Facing facing = instrument == VIOLIN ? Facing.CAMERA_RIGHT : Facing.CAMERA;
            Scene straight = single(instrument, facing, Passage.SHORT);
            add("mirrored-" + instrument.word(), "the picture is flipped", straight.with(SINGLE.flipped()), expected);
        }
        Cast leftHanded = new Cast(VIOLIN, Facing.CAMERA, true, List.of());
        add("left-handed", "the left hand bows", scene(List.of(leftHanded), Passage.SHORT, SINGLE), expected);
        for (Instrument instrument : List.of(VIOLIN, CELLO)) {
            Cast turning = new Cast(
                    instrument,
                    Facing.CAMERA,
                    new Deviation.Swivels(-PROFILE_DEG, 2, 3),
                    new Deviation.Swivels(PROFILE_DEG, 5, 6));
            add(
                    "profile-" + instrument.word(),
                    "the player turns to profile and back, to either side",
                    scene(List.of(turning), Passage.SHORT, SINGLE),
                    expected);
        }
    }

    private void camerasAndSections() {
        Expected expected = Expected.STROKES_MEASURED;
        Conditions easy = Conditions.EASY;
        add(
                "conductor",
                "a conductor's arms before two players",
                scene(section(VIOLIN, 4), Passage.SHORT, Picture.of(960, 400))
                        .with(easy.behind(Conditions.Obstacle.CONDUCTOR)),
                expected);
        Scene section = scene(section(VIOLIN, 12), Passage.SHORT, SECTION);
        add("dim-section", "little light", section.with(easy.lit(0.22, 0).noisy(4)), expected);
        add("low-bitrate-section", "strong compression", section.with(SECTION.bitrate(430)), expected);
        Scene plain = single(VIOLIN, Facing.CAMERA, Passage.SHORT);
        add("rate-25", "", plain.with(SINGLE.at(25)));
        add("rate-30", "30 frames a second", plain.with(SINGLE.at(30)));
        Picture wide = Picture.of(960, 400).filled(0.85);
        Scene desk = scene(section(VIOLIN, 2), Passage.SHORT, wide);
        add("pan", "the camera pans", desk.with(easy.moved(new CameraMove.Drifts(new Framing(0, 0.12, 0)))), expected);
        add(
                "zoom-pan",
                "the camera pans and zooms in",
                desk.with(easy.moved(new CameraMove.Drifts(new Framing(0.15, -0.12, 0.03)))),
                expected);
        add(
                "cut",
                "the second half is another shot",
                plain.with(SINGLE.filled(0.8)).with(easy.moved(new CameraMove.Cuts(CLOSER, List.of(0.5), 0))));
    }

    /** What editors do: the other view is not read, the first is, wherever it shows again. */
    private void edited() {
        Conditions easy = Conditions.EASY;
        Scene desk =
                scene(section(VIOLIN, 2), Passage.SHORT, Picture.of(640, 400).filled(0.8));
        add(
                "cut-back",
                "another view in between",
                desk.with(easy.moved(new CameraMove.Cuts(ASIDE, List.of(0.35, 0.65), 0))));
        add(
                "dissolve",
                "another view in between, dissolved within a second",
                desk.with(easy.moved(new CameraMove.Cuts(CLOSER, List.of(0.35, 0.65), 0.067))));
        Cast retaken = new Cast(VIOLIN, Facing.CAMERA, new Deviation.OtherTake(8.5));
        add("jump-cut", "the bow leaps", scene(List.of(retaken), Passage.SHORT, SINGLE));
    }

    /** With so few bits a pixel that faces and hands blur. */
    private void smallFigures() {
        for (int heightPx : new int[] {200, 100, 70, 50}) {
            double pictureHeightPx = PICTURE_PER_FIGURE * heightPx;
            Picture small = Picture.of(even(SMALL_ASPECT * pictureHeightPx), even(pictureHeightPx))
                    .filled(SMALL_FILL)
                    .bitrate(Math.max(20, heightPx / 5));
            add(
                    "small-" + heightPx,
                    "a figure of " + heightPx + " px, strong compression",
                    scene(section(VIOLIN, 1), Passage.SHORT, small),
                    Expected.STROKES_MEASURED);
        }
    }

    /** More of what arms do besides bowing; settings were chosen on these and on the first ones. */
    private void otherMovements() {
        Picture wide = Picture.of(960, 400);
        add(
                "pizzicato-low",
                "plucked throughout, faster and slower",
                scene(
                        List.of(
                                doing(CELLO, Facing.CAMERA, Activity.PIZZICATO, 0.7),
                                doing(BASS, Facing.CAMERA, Activity.PIZZICATO, 1),
                                doing(CELLO, Facing.CAMERA_LEFT, Activity.PIZZICATO, 1.3),
                                doing(VIOLA, Facing.CAMERA, Activity.PIZZICATO, 1.6)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "applause-taps",
                "stands are tapped, thighs patted",
                scene(
                        List.of(
                                doing(VIOLIN, Facing.CAMERA, Activity.TAPS_STAND, 1),
                                doing(VIOLA, Facing.CAMERA, Activity.PATS_THIGH, 1),
                                doing(CELLO, Facing.CAMERA, Activity.TAPS_STAND, 0.8),
                                doing(CELLO, Facing.CAMERA, Activity.PATS_THIGH, 1.2)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "between-strokes",
                "two bars bowed, two of something else, two bowed",
                scene(
                        List.of(
                                between(VIOLIN, Facing.CAMERA, Activity.PAGE_TURN),
                                between(VIOLIN, Facing.CAMERA, Activity.PIZZICATO),
                                between(CELLO, Facing.CAMERA, Activity.PIZZICATO),
                                between(CELLO, Facing.CAMERA, Activity.IDLE)),
                        Passage.SHORT,
                        wide),
                Expected.STROKES_MEASURED);
        add(
                "tremolo-low",
                "two bars of six are tremolo",
                scene(
                        List.of(
                                new Cast(VIOLA, Facing.CAMERA, new Deviation.Tremolo(2, 3, 9)),
                                new Cast(CELLO, Facing.CAMERA, new Deviation.Tremolo(3, 3, 10))),
                        Passage.SHORT,
                        wide),
                Expected.STROKES_MEASURED);
        add(
                "retakes-slow",
                "rests and retakes",
                single(CELLO, Facing.CAMERA, Passage.RESTS_AND_RETAKES).atTempo(80),
                Expected.STROKES_MEASURED);
    }

    /** Likewise; no setting was chosen on these. */
    private void otherMovementsHeldOut() {
        Picture wide = Picture.of(960, 400);
        add(
                "pizzicato-turned",
                "plucked throughout",
                scene(
                        List.of(
                                doing(VIOLIN, Facing.CAMERA_LEFT, Activity.PIZZICATO, 1.4),
                                doing(VIOLA, Facing.CAMERA_RIGHT, Activity.PIZZICATO, 0.8),
                                doing(CELLO, Facing.CAMERA_RIGHT, Activity.PIZZICATO, 1.1),
                                doing(BASS, Facing.CAMERA_LEFT, Activity.PIZZICATO, 0.9)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "page-turns-left",
                "pages are turned with either hand",
                scene(
                        List.of(
                                turning(VIOLA, Facing.CAMERA, Activity.PAGE_TURN_LEFT),
                                turning(CELLO, Facing.CAMERA, Activity.PAGE_TURN_LEFT),
                                turning(VIOLIN, Facing.CAMERA_RIGHT, Activity.PAGE_TURN),
                                turning(CELLO, Facing.CAMERA_LEFT, Activity.PAGE_TURN)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "idle-turned",
                "everyone rests, fidgets, scratches the nose",
                scene(
                        List.of(
                                doing(VIOLIN, Facing.CAMERA_RIGHT, Activity.IDLE, 0.8),
                                doing(CELLO, Facing.CAMERA_LEFT, Activity.IDLE, 1.2),
                                doing(VIOLA, Facing.CAMERA_LEFT, Activity.IDLE, 1.4),
                                doing(CELLO, Facing.CAMERA, Activity.IDLE, 1)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "applause-turned",
                "everyone applauds, each in another way",
                scene(
                        List.of(
                                doing(VIOLA, Facing.CAMERA_LEFT, Activity.SHAKES_BOW, 1.2),
                                doing(CELLO, Facing.CAMERA_RIGHT, Activity.CLAPS, 0.8),
                                doing(VIOLIN, Facing.CAMERA_RIGHT, Activity.TAPS_STAND, 1.2),
                                doing(VIOLIN, Facing.CAMERA_LEFT, Activity.PATS_THIGH, 0.8)),
                        Passage.SHORT,
                        wide),
                Expected.NO_STROKES);
        add(
                "between-strokes-turned",
                "two bars bowed, two of something else, two bowed",
                scene(
                        List.of(
                                between(VIOLA, Facing.CAMERA_LEFT, Activity.PIZZICATO),
                                between(VIOLIN, Facing.CAMERA_RIGHT, Activity.IDLE),
                                between(CELLO, Facing.CAMERA_LEFT, Activity.PAGE_TURN),
                                between(CELLO, Facing.CAMERA_RIGHT, Activity.PIZZICATO)),
                        Passage.SHORT,
                        wide),
                Expected.STROKES_MEASURED);
        add(
                "tremolo-turned",
                "two bars of six are tremolo",
                scene(
                        List.of(
                                new Cast(VIOLIN, Facing.CAMERA_LEFT, new Deviation.Tremolo(2, 2, 12)),
                                new Cast(CELLO, Facing.CAMERA_LEFT, new Deviation.Tremolo(4, 5, 9))),
                        Passage.SHORT,
                        wide),
                Expected.STROKES_MEASURED);
        add(
                "retakes-quick",
                "rests and retakes",
                single(VIOLA, Facing.CAMERA_LEFT, Passage.RESTS_AND_RETAKES).atTempo(126),
                Expected.STROKES_MEASURED);
    }

    private void bowsUnlikeTheLeaders() {
        Facing facing = Facing.CAMERA_LEFT;
        Cast asTheLeader = new Cast(VIOLA, facing);
        Cast half = new Cast(
                VIOLA,
                facing,
                new Deviation.TakesBow(0.5, 0, 1, 3),
                new Deviation.TakesBow(0.5, 0.5, 5, 6),
                new Deviation.TakesBow(0.5, 0, 9, 11),
                new Deviation.TakesBow(0.5, 0.5, 13, 14));
        Cast nearerTheTip =
                new Cast(VIOLA, facing, new Deviation.TakesBow(1, 0.42, 2, 3), new Deviation.TakesBow(1, 0.42, 10, 11));
        Cast nearerTheFrog =
                new Cast(VIOLA, facing, new Deviation.TakesBow(1, -0.5, 5, 6), new Deviation.TakesBow(1, -0.5, 13, 14));
        add(
                "section-bow",
                "two take half the bow in quarters, two are elsewhere in it in half of them",
                scene(
                        List.of(
                                asTheLeader,
                                half,
                                nearerTheFrog,
                                asTheLeader,
                                nearerTheTip,
                                half,
                                asTheLeader,
                                asTheLeader),
                        Passage.QUARTERS + " | " + Passage.QUARTERS,
                        SECTION),
                Expected.STROKES_MEASURED);
    }

    private static int even(double px) {
        return 2 * (int) Math.round(px / 2);
    }

    private static Cast doing(Instrument instrument, Activity activity) {
        return doing(instrument, Facing.CAMERA, activity, 1);
    }

    private static Cast doing(Instrument instrument, Facing facing, Activity activity, double pace) {
        return new Cast(instrument, facing, new Deviation.Does(activity, 1, 6, pace));
    }

    private static Cast between(Instrument instrument, Facing facing, Activity activity) {
        return new Cast(instrument, facing, new Deviation.Does(activity, 3, 4));
    }

    /** Silent but for two turned pages. */
    private static Cast turning(Instrument instrument, Facing facing, Activity activity) {
        return new Cast(
                instrument,
                facing,
                new Deviation.Silent(1, 6),
                new Deviation.Does(activity, 2, 2),
                new Deviation.Does(activity, 5, 5));
    }

    private void add(String name, String difficulty, Scene s) {
        add(name, difficulty, s, Expected.STROKES);
    }

    private void add(String name, String difficulty, Scene s, Expected expected) {
        Part part = s.part();
        scenes.add(new Listed(
                new Scene(
                        name,
                        name,
                        s.cast(),
                        part,
                        s.tempoBpm(),
                        s.bowing(),
                        s.picture(),
                        s.conditions(),
                        s.sound(),
                        100 + scenes.size()),
                difficulty,
                expected));
    }

    private static Scene single(Instrument instrument, Facing facing, String passage) {
        return scene(List.of(new Cast(instrument, facing)), passage, SINGLE);
    }

    private static Scene scene(List<Cast> cast, String passage, Picture picture) {
        Part marked = Passage.of("Violet Hour, a study", passage);
        Part part = cast.get(0).instrument() == VIOL ? Passage.reversed(marked) : marked;
        boolean free = cast.stream().anyMatch(c -> c.deviations().contains(new Deviation.Free()));
        Bowing bowing = free ? Bowing.FREE : Bowing.UNIFIED;
        return new Scene(
                "scene", "scene", cast, part, TEMPO_BPM, bowing, picture, Conditions.EASY, Scene.Sound.NONE, 1);
    }

    private static List<Cast> section(Instrument instrument, int players) {
        List<Cast> cast = new ArrayList<>();
        for (int i = 0; i < players; i++) {
            cast.add(new Cast(instrument, Facing.CAMERA));
        }
        return cast;
    }
}
