package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.assertj.swing.timing.Timeout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.cli.TinyTake;
import tuttarco.corrections.CorrectionLog;
import tuttarco.review.Draft;
import tuttarco.review.Saving;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Setting up a section in the window, by mouse and by key. */
class SeatsWindowTest extends WindowTest {
    @TempDir
    Path folder;

    private void until(String what, BooleanSupplier so) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return Boolean.TRUE.equals(GuiActionRunner.execute(so::getAsBoolean));
                    }
                },
                Timeout.timeout(Duration.ofMinutes(5).toMillis()));
    }

    private List<Player> players() {
        return GuiActionRunner.execute(
                () -> session().draft().map(Draft::players).orElse(List.of()));
    }

    private SeatsView picture() {
        return window().robot().finder().findByName(window().target(), "seats-picture", SeatsView.class);
    }

    /** A point of the clip's picture in the view. */
    private Point at(double xPx, double yPx) {
        SeatsView view = picture();
        return GuiActionRunner.execute(
                () -> new Point((int) Math.round(view.viewX(xPx)), (int) Math.round(view.viewY(yPx))));
    }

    private Point middle(SeatBox seat) {
        return at(seat.xPx() + seat.widthPx() / 2.0, seat.yPx() + seat.heightPx() / 2.0);
    }

    private void drag(Point from, Point to) {
        drag(picture(), from, to);
    }

    private void open(Path file) {
        GuiActionRunner.execute(() -> session().open(Draft.ofVideo(file)));
        window().toggleButton("step-seats").click();
        until("a still is seen", () -> picture().scale() != 1.0);
    }

    private Path clip() throws Exception {
        Path video = folder.resolve("clip.mkv");
        TinyTake.writeClip(video, 12, 30);
        return video;
    }

    private void key(int key) {
        robot().pressAndReleaseKeys(key);
        robot().waitForIdle();
    }

    @Test
    void playersAreDrawnMovedResizedTakenAwayAndBroughtBack() throws Exception {
        open(clip());
        drag(at(20, 20), at(120, 140));
        drag(at(180, 20), at(300, 140));
        assertEquals(2, players().size());
        SeatBox drawn = players().get(0).seat();
        assertEquals(100, drawn.widthPx(), 2);
        assertEquals(120, drawn.heightPx(), 2);
        assertTrue(players().get(0).leader());

        SeatBox second = players().get(1).seat();
        Point from = middle(second);
        drag(from, at(second.xPx() + second.widthPx() / 2.0 - 30, second.yPx() + second.heightPx() / 2.0 + 10));
        assertEquals(second.xPx() - 30, players().get(1).seat().xPx(), 2);
        assertEquals(second.yPx() + 10, players().get(1).seat().yPx(), 2);
        assertEquals(second.widthPx(), players().get(1).seat().widthPx());

        SeatBox moved = players().get(1).seat();
        drag(at(moved.xPx(), moved.yPx()), at(moved.xPx() + 20, moved.yPx() + 20));
        assertEquals(moved.widthPx() - 20, players().get(1).seat().widthPx(), 2);
        assertEquals(moved.xPx() + moved.widthPx(), rightOf(players().get(1).seat()));

        key(KeyEvent.VK_DELETE);
        assertEquals(1, players().size());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertEquals(2, players().size());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
        assertEquals(1, players().size());
    }

    private static int rightOf(SeatBox seat) {
        return seat.xPx() + seat.widthPx();
    }

    @Test
    void theKeyboardDoesAllOfIt() throws Exception {
        open(clip());
        GuiActionRunner.execute(() -> picture().requestFocusInWindow());
        robot().waitForIdle();
        key(KeyEvent.VK_INSERT);
        key(KeyEvent.VK_INSERT);
        assertEquals(2, players().size());
        SeatBox seat = players().get(1).seat();
        key(KeyEvent.VK_LEFT);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_DOWN);
        assertEquals(
                new SeatBox(seat.xPx() - 1, seat.yPx() + 8, seat.widthPx(), seat.heightPx()),
                players().get(1).seat());
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
        assertEquals(seat.widthPx() + 1, players().get(1).seat().widthPx());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertEquals(seat, players().get(1).seat(), "small steps in a row are undone at once");
        key(KeyEvent.VK_L);
        assertEquals(
                List.of(false, true), players().stream().map(Player::leader).toList());
        window().table("seats-table").requireSelectedRows(1);

        press(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
        window().table("seats-table").requireSelectedRows(0);
        window().textBox("seats-name").setText("Ida").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals("Ida", players().get(0).label());
        window().textBox("seats-name").setText("Desk 1 inside").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertEquals("Ida", players().get(0).label());
        assertTrue(session().message().sentence().contains("somebody else's name"));

        window().toggleButton("seats-numbering").click();
        key(KeyEvent.VK_TAB);
        key(KeyEvent.VK_ENTER);
        key(KeyEvent.VK_ESCAPE);
        assertEquals("Ida", players().get(1).label());
    }

    @Test
    void aVideoWithoutPicturesIsTold() throws Exception {
        Path text = Files.writeString(folder.resolve("words.mp4"), "no video");
        GuiActionRunner.execute(() -> session().open(Draft.ofVideo(text)));
        window().toggleButton("step-seats").click();
        until("that is told", () -> session().message().sentence().contains("words.mp4 can't be read as a video"));
        window().button("seats-search").requireDisabled();
    }

    /** Seats a player, and has another program call him Jon; returns what it saved. */
    private String changedElsewhere(Path video) throws Exception {
        open(video);
        drag(at(20, 20), at(120, 140));
        until("it is saved", () -> Files.exists(Draft.takeOf(video)));
        String theirs = Files.readString(Draft.takeOf(video)).replace("Desk 1 outside", "Jon");
        Files.writeString(Draft.takeOf(video), theirs);
        return theirs;
    }

    @Test
    void whatAnotherWindowSavedIsNotWrittenOver() throws Exception {
        Path video = clip();
        String theirs = changedElsewhere(video);
        drag(at(180, 20), at(300, 140));
        until("that is told", () -> session().saving() instanceof Saving.ChangedElsewhere);
        pictures("saving");
        assertEquals(theirs, Files.readString(Draft.takeOf(video)));
        window().button("saving-theirs").click();
        until(
                "theirs is taken",
                () -> players().size() == 1 && players().get(0).label().equals("Jon"));
        assertTrue(GuiActionRunner.execute(() -> session().saving() instanceof Saving.Saved));
    }

    @Test
    void aTakeIsShownAsItWasSetUp() throws Exception {
        Take sample = TakeFile.read(Path.of("sample-clips", "unified.take.json"));
        GuiActionRunner.execute(() -> session().open(Draft.of(sample)));
        window().toggleButton("step-seats").click();
        until("a still is seen", () -> picture().scale() != 1.0);
        robot().click(picture(), middle(sample.players().get(3).seat()));
        window().table("seats-table").requireSelectedRows(3);
        pictures("seats");
    }

    @Test
    void whatIsSetUpHereGoesOnUnderAnotherNameWithItsCorrections() throws Exception {
        Path video = clip();
        String theirs = changedElsewhere(video);
        Files.writeString(CorrectionLog.beside(Draft.takeOf(video)), "every line");
        drag(at(180, 20), at(300, 140));
        until("that is told", () -> session().saving() instanceof Saving.ChangedElsewhere);
        window().button("saving-mine").click();
        Path own = folder.resolve("clip 2.take.json");
        until("mine is saved", () -> Files.exists(own));
        assertEquals(players(), TakeFile.read(own).players());
        assertEquals(theirs, Files.readString(Draft.takeOf(video)));
        assertEquals("every line", Files.readString(CorrectionLog.beside(own)));
    }

    @Test
    void whatCannotBeSavedKeepsTheWindowOpenAndIsTriedAgain() throws Exception {
        Path sub = Files.createDirectory(folder.resolve("sub"));
        Path video = Files.move(clip(), sub.resolve("clip.mkv"));
        open(video);
        drag(at(20, 20), at(120, 140));
        until("it is saved", () -> Files.exists(Draft.takeOf(video)));
        // the card was taken out of the machine
        Path away = Files.move(sub, folder.resolve("away"));
        Files.writeString(sub, "in the way");
        drag(at(180, 20), at(300, 140));
        until("that is told", () -> session().saving() instanceof Saving.Failed);
        window().textBox("saving-sentence").requireVisible();
        window().close();
        JOptionPaneFinder.findOptionPane().using(robot()).buttonWithText("Back").click();
        window().requireVisible();
        Files.delete(sub);
        Files.move(away, sub);
        window().button("saving-again").click();
        until("it is saved", () -> session().saving() instanceof Saving.Saved);
        assertEquals(players(), TakeFile.read(Draft.takeOf(video)).players());
    }

    @Test
    void aSeatInWhichHardlyAnythingIsSeenIsTold() throws Exception {
        open(clip());
        drag(at(20, 20), at(50, 60));
        assertTrue(
                window().textBox("seats-troubles")
                        .text()
                        .contains("So small that strokes are hardly seen: Desk 1 outside"),
                window().textBox("seats-troubles").text());
    }
}
