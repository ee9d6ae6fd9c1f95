package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.swing.JFrame;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.review.BeatsModel;
import tuttarco.review.Draft;
import tuttarco.review.MusicModel;
import tuttarco.take.BeatsGiven;
import tuttarco.take.TakeFile;
import tuttarco.video.ClipWriter;

/** Part and beats in a window of their own, with a sound that is played by a clock the test holds. */
class MusicWindowTest extends WindowTest {
    private static final Path SAMPLES = Path.of("sample-clips");
    private static final long PATIENCE_MS = 60_000;

    @TempDir
    private Path folder;

    private final HeldSound sound = new HeldSound();
    private Optional<Path> asked = Optional.empty();
    private FrameFixture own;
    private MusicStep step;

    @BeforeEach
    void openStep() {
        JFrame frame = GuiActionRunner.execute(() -> {
            step = new MusicStep(session(), (over, kind, where) -> asked, (video, stopped) -> sound);
            JFrame made = new JFrame("Part and beats");
            made.add(step.view());
            made.setSize(UIScale.scale(1340), UIScale.scale(640));
            step.shown();
            return made;
        });
        own = new FrameFixture(robot(), frame);
        own.show(frame.getSize());
    }

    @AfterEach
    void closeStep() {
        own.cleanUp();
    }

    private void until(String what, Callable<Boolean> so) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(so);
                    }
                },
                PATIENCE_MS);
    }

    private MusicModel model() {
        return step.model();
    }

    /** Opens a sample's take with all its files, as it is or as only its video. */
    private void openSample(String name, boolean withMusic) throws Exception {
        for (String ending : List.of(".mp4", ".musicxml", ".beats.csv", ".take.json", ".bowing.txt")) {
            Files.copy(SAMPLES.resolve(name + ending), folder.resolve(name + ending));
        }
        Draft taken = Draft.of(TakeFile.read(folder.resolve(name + ".take.json")));
        Draft draft = withMusic
                ? taken
                : taken.withPart(Optional.empty(), taken.partChoice(), Optional.empty())
                        .withBeats(new BeatsGiven.Missing());
        GuiActionRunner.execute(() -> session().open(draft));
    }

    private void untilBeats() {
        until("the beats are told", () -> model().beats().beats().isPresent());
    }

    private void pageOfBeats() {
        own.tabbedPane("music").selectTab("Beats");
    }

    private SoundView soundView() {
        return own.robot().finder().findByName(own.target(), "music-sound", SoundView.class);
    }

    private double timeS(int index) {
        return GuiActionRunner.execute(
                () -> model().beats().beats().orElseThrow().beats().get(index).timeS());
    }

    @Test
    void thePartIsChosenAndItsStrokesSayWhy() throws Exception {
        openSample("unified", false);
        asked = Optional.of(folder.resolve("unified.musicxml"));
        own.button("music-part-choose").click();
        until("the part is read", () -> model().part().part().isPresent());
        own.label("music-part-name").requireText("unified.musicxml");
        StripView strip = own.robot().finder().findByName(own.target(), "music-strip", StripView.class);
        Point second = GuiActionRunner.execute(() -> strip.middle(1));
        robot().click(strip, second);
        own.textBox("music-stroke").requireText("Bar 1 beat 3: .*bow, .*");
        String before = own.textBox("music-stroke").text();
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        assertFalse(before.equals(own.textBox("music-stroke").text()));
        own.radioButton("music-free").click();
        assertEquals("free", session().draft().orElseThrow().bowing().word());
        assertTrue(TakeFile.read(folder.resolve("unified.take.json")).part().isPresent());
    }

    @Test
    void aWrongBarIsToldByLineAndColumnUnderTheText() throws Exception {
        openSample("unified", true);
        until("the part is read", () -> model().part().part().isPresent());
        own.button("music-over-type").click();
        until("the text is open", () -> model().typing().sheet().isPresent());
        own.textBox("music-text").setText("2: u d d u\n3: q3 u\n");
        until("the text is read", () -> model().typing().wrong().isPresent());
        assertTrue(
                own.textBox("music-text-trouble").text().startsWith("Please note, line 2, column 4: 'q3' is no stroke"),
                own.textBox("music-text-trouble").text());
        seen("music-typing");
        own.button("music-text-there").click();
        assertEquals(14, (int)
                GuiActionRunner.execute(() -> own.textBox("music-text").target().getCaretPosition()));
        own.textBox("music-text").setText("2: u d d u\n3: d3 u\n");
        until(
                "bars are written over",
                () -> session().draft().orElseThrow().over().isPresent());
        assertTrue(own.list("music-awkward").contents().length > 0);
        own.list("music-awkward").clickItem(0);
        assertTrue(
                own.textBox("music-stroke").text().contains("Awkward: "),
                own.textBox("music-stroke").text());
        seen("music-part");
        own.button("music-text-done").click();
        assertTrue(Files.exists(folder.resolve("unified.over.bowing.txt")));
    }

    @Test
    void barLinesAreNudgedByKeyAndByMouseAndUndone() throws Exception {
        openSample("unified", true);
        pageOfBeats();
        untilBeats();
        until("the sound is drawn", () -> model().sound().outline().isPresent());
        SoundView view = soundView();
        GuiActionRunner.execute(() -> view.requestFocusInWindow());
        robot().waitForIdle();
        robot().pressAndReleaseKeys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
        double bar2S = 1 + 4 * 60 / 112.0;
        assertEquals(Math.round((bar2S + 0.011) * 1000) / 1000.0, timeS(4), 0.0011);
        assertEquals(1, own.list("music-anchors").contents().length);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertEquals(bar2S, timeS(4), 1e-9);
        int y = view.getHeight() / 2;
        int from = GuiActionRunner.execute(() -> (int) Math.round(view.xPx(bar2S)));
        robot().moveMouse(view, from, y);
        robot().pressMouse(MouseButton.LEFT_BUTTON);
        robot().moveMouse(view, from + 7, y);
        robot().moveMouse(view, from + 14, y);
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        robot().waitForIdle();
        double draggedS = GuiActionRunner.execute(() -> view.seen().timeS(from + 14, view.getWidth()));
        assertEquals(draggedS, timeS(4), 0.001);
        seen("music-beats");
        robot().pressAndReleaseKeys(KeyEvent.VK_DELETE);
        assertEquals(0, own.list("music-anchors").contents().length);
        own.button("music-undo").click();
        assertEquals(draggedS, timeS(4), 0.001);
    }

    @Test
    void beatsAreTappedAlongWithTheSound() throws Exception {
        openSample("unified", true);
        pageOfBeats();
        untilBeats();
        own.label("music-tap-pad").click();
        until("the sound is played", () -> sound.playing());
        // ticks would lead the taps
        assertTrue(sound.ticks().isEmpty());
        for (double s : new double[] {1, 2, 3, 4, 4.5, 5}) {
            sound.at(s);
            robot().pressAndReleaseKeys(KeyEvent.VK_SPACE);
            if (s == 4.5) {
                robot().pressAndReleaseKeys(KeyEvent.VK_BACK_SPACE);
            }
        }
        own.label("music-tap-pad").requireText("5 taps, next: bar 2 beat 2");
        robot().pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the sound is still", () -> !sound.playing());
        own.button("music-play").click();
        until("the taps are heard", () -> sound.playing() && sound.ticks().size() == 5);
        own.button("music-play").click();
        seen("music-taps");
        own.button("music-taps-list").click();
        until(
                "the taps are the beats",
                () -> model().beats().source() instanceof BeatsGiven.Listed listed
                        && listed.list().endsWith("unified.tapped.csv")
                        && model().beats().beats().isPresent());
        // a key is taken for the moment it was pressed, a little before this program heard of it
        assertEquals(1, timeS(0), 0.4);
        assertEquals(
                "2",
                GuiActionRunner.execute(() ->
                        model().beats().beats().orElseThrow().beats().get(4).bar()));
    }

    @Test
    void aPartThatDoesNotFitSaysSo() throws Exception {
        openSample("unified", false);
        Files.copy(SAMPLES.resolve("free.musicxml"), folder.resolve("other.musicxml"));
        asked = Optional.of(folder.resolve("other.musicxml"));
        own.button("music-part-choose").click();
        until("the part is read", () -> model().part().part().isPresent());
        pageOfBeats();
        own.button("music-hear").click();
        until("the sound was listened to", () -> !(model().beats().state() instanceof BeatsModel.State.Telling));
        assertInstanceOf(BeatsModel.State.Wrong.class, model().beats().state());
        assertTrue(
                own.textBox("music-beats-told").text().contains("does not fit the part"),
                own.textBox("music-beats-told").text());
    }

    @Test
    void aClipWithoutSoundSaysSo() throws Exception {
        openSample("unified", true);
        Path silent = folder.resolve("silent.mp4");
        BufferedImage grey = new BufferedImage(64, 48, BufferedImage.TYPE_3BYTE_BGR);
        try (ClipWriter writer = ClipWriter.open(silent, 64, 48, 30, 100_000, Optional.empty())) {
            for (int i = 0; i < 15; i++) {
                writer.frame(i / 30.0, grey);
            }
            writer.finish();
        }
        GuiActionRunner.execute(() -> session()
                .open(Draft.ofVideo(silent)
                        .withPart(
                                Optional.of(folder.resolve("unified.musicxml")),
                                session().draft().orElseThrow().partChoice(),
                                Optional.empty())));
        pageOfBeats();
        until("the sound was looked for", () -> model().sound().trouble().isPresent());
        assertTrue(model().sound().trouble().orElseThrow().contains("has no sound"));
        own.button("music-hear").click();
        until("it can't be heard", () -> model().beats().state() instanceof BeatsModel.State.Wrong);
        assertTrue(own.textBox("music-beats-told").text().contains("has no sound"));
        seen("music-silent");
    }

    private void seen(String name) {
        picturesOfStep(own, name);
        robot().waitForIdle();
    }
}
