package tuttarco;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import javax.sound.sampled.Line;

/** The order of the rooms: imports run one way, and some things stay out of some rooms. */
@AnalyzeClasses(packages = "tuttarco", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    /** Each room may use the rooms named behind it, and no others. */
    @ArchTest
    static final ArchRule IMPORTS_RUN_ONE_WAY = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("bow")
            .definedBy("tuttarco.bow..")
            .layer("files")
            .definedBy("tuttarco.files..")
            .layer("signal")
            .definedBy("tuttarco.signal..")
            .layer("stats")
            .definedBy("tuttarco.stats..")
            .layer("sound")
            .definedBy("tuttarco.sound..")
            .layer("video")
            .definedBy("tuttarco.video..")
            .layer("seats")
            .definedBy("tuttarco.seats..")
            .layer("pose")
            .definedBy("tuttarco.pose..")
            .layer("tracks")
            .definedBy("tuttarco.tracks..")
            .layer("strokes")
            .definedBy("tuttarco.strokes..")
            .layer("seating")
            .definedBy("tuttarco.seating..")
            .layer("score")
            .definedBy("tuttarco.score..")
            .layer("musicxml")
            .definedBy("tuttarco.musicxml..")
            .layer("bowtext")
            .definedBy("tuttarco.bowtext..")
            .layer("parts")
            .definedBy("tuttarco.parts..")
            .layer("beats")
            .definedBy("tuttarco.beats..")
            .layer("align")
            .definedBy("tuttarco.align..")
            .layer("take")
            .definedBy("tuttarco.take..")
            .layer("corrections")
            .definedBy("tuttarco.corrections..")
            .layer("compare")
            .definedBy("tuttarco.compare..")
            .layer("season")
            .definedBy("tuttarco.season..")
            .layer("chart")
            .definedBy("tuttarco.chart..")
            .layer("faces")
            .definedBy("tuttarco.faces..")
            .layer("film")
            .definedBy("tuttarco.film..")
            .layer("report")
            .definedBy("tuttarco.report..")
            .layer("mark")
            .definedBy("tuttarco.mark..")
            .layer("demo")
            .definedBy("tuttarco.demo..")
            .layer("analysis")
            .definedBy("tuttarco.analysis..")
            .layer("playback")
            .definedBy("tuttarco.playback..")
            .layer("review")
            .definedBy("tuttarco.review..")
            .layer("window")
            .definedBy("tuttarco.window..")
            .layer("cli")
            .definedBy("tuttarco.cli..")
            .whereLayer("bow")
            .mayNotAccessAnyLayer()
            .whereLayer("files")
            .mayNotAccessAnyLayer()
            .whereLayer("signal")
            .mayNotAccessAnyLayer()
            .whereLayer("stats")
            .mayNotAccessAnyLayer()
            .whereLayer("sound")
            .mayNotAccessAnyLayer()
            .whereLayer("video")
            .mayOnlyAccessLayers("files")
            .whereLayer("seats")
            .mayOnlyAccessLayers("bow", "files")
            .whereLayer("pose")
            .mayOnlyAccessLayers("files", "seats", "video")
            .whereLayer("tracks")
            .mayOnlyAccessLayers("bow", "files", "seats", "signal", "video", "pose")
            .whereLayer("strokes")
            .mayOnlyAccessLayers("bow", "seats", "signal", "tracks")
            .whereLayer("seating")
            .mayOnlyAccessLayers("bow", "files", "video", "seats", "pose", "tracks", "strokes")
            .whereLayer("score")
            .mayOnlyAccessLayers("bow", "files")
            .whereLayer("musicxml")
            .mayOnlyAccessLayers("bow", "files", "score")
            .whereLayer("bowtext")
            .mayOnlyAccessLayers("bow", "files", "score")
            .whereLayer("parts")
            .mayOnlyAccessLayers("bow", "files", "score", "musicxml", "bowtext")
            .whereLayer("beats")
            .mayOnlyAccessLayers("files", "score")
            .whereLayer("align")
            .mayOnlyAccessLayers("files", "video", "score", "beats")
            .whereLayer("take")
            .mayOnlyAccessLayers("bow", "files", "score", "seats", "beats")
            .whereLayer("corrections")
            .mayOnlyAccessLayers("files", "seats", "strokes", "beats", "take")
            .whereLayer("compare")
            .mayOnlyAccessLayers("bow", "signal", "sound", "stats", "seats", "strokes", "score", "beats")
            .whereLayer("season")
            .mayOnlyAccessLayers("bow", "files", "stats", "seats", "strokes", "beats", "take", "compare")
            .whereLayer("chart")
            .mayOnlyAccessLayers(
                    "bow", "files", "stats", "seats", "tracks", "strokes", "score", "beats", "take", "compare",
                    "season")
            .whereLayer("faces")
            .mayOnlyAccessLayers("files", "video", "seats", "pose")
            .whereLayer("film")
            .mayOnlyAccessLayers("bow", "files", "video", "seats", "strokes", "beats", "compare", "chart", "faces")
            .whereLayer("report")
            .mayOnlyAccessLayers(
                    "bow",
                    "files",
                    "stats",
                    "video",
                    "seats",
                    "tracks",
                    "strokes",
                    "score",
                    "beats",
                    "take",
                    "corrections",
                    "compare",
                    "season",
                    "chart",
                    "faces",
                    "film")
            .whereLayer("mark")
            .mayOnlyAccessLayers("bow", "score", "musicxml", "beats", "compare", "chart")
            .whereLayer("demo")
            .mayOnlyAccessLayers(
                    "bow", "files", "video", "seats", "strokes", "score", "musicxml", "bowtext", "beats", "take")
            .whereLayer("playback")
            .mayOnlyAccessLayers("files", "video")
            .whereLayer("review")
            .mayOnlyAccessLayers(
                    "bow",
                    "files",
                    "sound",
                    "video",
                    "seats",
                    "strokes",
                    "score",
                    "beats",
                    "take",
                    "corrections",
                    "compare",
                    "chart",
                    "faces",
                    "report",
                    "demo",
                    "analysis")
            .whereLayer("window")
            .mayOnlyAccessLayers(
                    "bow",
                    "files",
                    "sound",
                    "video",
                    "seats",
                    "strokes",
                    "score",
                    "beats",
                    "take",
                    "corrections",
                    "compare",
                    "chart",
                    "faces",
                    "report",
                    "playback",
                    "review")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule ROOMS_MAKE_NO_CIRCLES =
            slices().matching("tuttarco.(*)..").should().beFreeOfCycles();

    /** A reading must not know the marking it is later compared with. */
    @ArchTest
    static final ArchRule INFERENCE_NEVER_SEES_THE_MARKING = noClasses()
            .that()
            .resideInAnyPackage(
                    "tuttarco.tracks..",
                    "tuttarco.strokes..",
                    "tuttarco.seating..",
                    "tuttarco.video..",
                    "tuttarco.seats..",
                    "tuttarco.pose..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tuttarco.score..",
                    "tuttarco.musicxml..",
                    "tuttarco.bowtext..",
                    "tuttarco.parts..",
                    "tuttarco.beats..",
                    "tuttarco.compare..",
                    "tuttarco.take..");

    @ArchTest
    static final ArchRule ONLY_VIDEO_KNOWS_FFMPEG = noClasses()
            .that()
            .resideOutsideOfPackage("tuttarco.video..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.bytedeco.ffmpeg..", "org.bytedeco.javacv..");

    @ArchTest
    static final ArchRule ONLY_VIDEO_POSE_AND_TRACKS_KNOW_OPENCV = noClasses()
            .that()
            .resideOutsideOfPackages("tuttarco.video..", "tuttarco.pose..", "tuttarco.tracks..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.bytedeco..");

    @ArchTest
    static final ArchRule ONLY_THE_WINDOW_KNOWS_A_TOOLKIT = noClasses()
            .that()
            .resideOutsideOfPackage("tuttarco.window..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "com.formdev..", "net.miginfocom..");

    @ArchTest
    static final ArchRule ONLY_PLAYBACK_KNOWS_THE_SOUND_CARD = noClasses()
            .that()
            .resideOutsideOfPackage("tuttarco.playback..")
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Line.class);

    /** What the window shows is computed elsewhere; see also what rooms it may use. */
    @ArchTest
    static final ArchRule A_REVIEW_COMPUTES_NOTHING = noClasses()
            .that()
            .resideInAnyPackage("tuttarco.review..", "tuttarco.window..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.commons.math3..", "org.bytedeco..", "uk.me.berndporr..");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_SPEAKS_TO_THE_SHELL = noClasses()
            .that()
            .resideOutsideOfPackage("tuttarco.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    @ArchTest
    static final ArchRule EVERY_CLASS_LIVES_IN_A_ROOM = classes().should().resideInAPackage("tuttarco.*..");
}
