package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import javax.swing.TransferHandler.TransferSupport;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.HandOut;
import tuttarco.review.Background;
import tuttarco.review.Correcting;
import tuttarco.review.HandingOut;
import tuttarco.review.Opening;
import tuttarco.review.Remembered;
import tuttarco.review.Session;
import tuttarco.review.TakeKeeping;
import tuttarco.review.TakeReading;

/** A window under test, and pictures of it. Components are found by their names. */
@NeedsScreen
abstract class WindowTest {
    /** Where the pictures go that a test takes, for somebody to look at. */
    private static final Path PICTURES = Path.of("target", "window-pictures");

    private final EventThreadWatch watch = EventThreadWatch.get();
    /** Height of the row of steps above a step and of the line below it, before scaling; pixels. */
    private static final int AROUND_A_STEP = 74;

    private Robot robot;
    private Background background;
    private Session session;
    private FrameFixture window;

    @BeforeEach
    final void openWindow() {
        FailOnThreadViolationRepaintManager.install();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        open();
    }

    private void open() {
        background = new Background(EventQueue::invokeLater);
        JFrame frame = GuiActionRunner.execute(() -> {
            Theme.PAPER.apply();
            session = new Session(background, new TakeKeeping());
            TakeReading reading = new TakeReading(session, reader(), System::nanoTime);
            Opening opening = new Opening(session, new Remembered(stateFolder()), this::writable);
            Analysis analysis = Analysis.standard("test");
            return new ReviewWindow(
                            session,
                            opening,
                            music(session),
                            reading,
                            new Correcting(session, analysis),
                            new HandingOut(session, new HandOut(analysis)),
                            () -> {})
                    .frame();
        });
        window = new FrameFixture(robot, frame);
        window.show(frame.getSize());
        // a window that is not there yet does not feel stuck
        robot.waitForIdle();
        watch.forget();
    }

    /** Closes the window as a user does and opens another one. */
    final void reopenWindow() {
        window.close();
        ReadSample.until("the window is closed", () -> !window.target().isDisplayable());
        assertEquals(List.of(), watch.kept());
        background.close();
        open();
    }

    @AfterEach
    final void closeWindow() {
        List<EventThreadWatch.Kept> kept = watch.kept();
        window.cleanUp();
        background.close();
        assertEquals(List.of(), kept, "the event thread was kept too long");
    }

    /** What reads bows; the real thing, unless a test puts something quicker in its place. */
    TakeReading.Reader reader() {
        return TakeReading.by(Analysis.standard("test"));
    }

    /** The step for part and beats; the real one, unless a test has no need of a sound card or a dialog. */
    MusicStep music(Session of) {
        return new MusicStep(of);
    }

    /** Where the window remembers things; nowhere unless a test says so. */
    Optional<Path> stateFolder() {
        return Optional.empty();
    }

    /** Whether something can be saved in a folder; as it is, unless a test says otherwise. */
    boolean writable(Path folder) {
        return Files.isWritable(folder);
    }

    final FrameFixture window() {
        return window;
    }

    final Session session() {
        return session;
    }

    final Robot robot() {
        return robot;
    }

    /** Presses a key while another is held, wherever the focus is. */
    final void press(int held, int key) {
        robot.pressKey(held);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(held);
        robot.waitForIdle();
    }

    /** Waits until the review has its list of what to rehearse. */
    final void untilSpots() {
        ReadSample.until(
                "there is something to rehearse",
                () -> window.list("review-spots").target().getModel().getSize() > 0);
        robot.waitForIdle();
    }

    /** Drops files on the window. */
    final void drop(Path... files) {
        GuiActionRunner.execute(() -> {
            JFrame frame = (JFrame) window.target();
            frame.getRootPane()
                    .getTransferHandler()
                    .importData(new TransferSupport(frame, new Dropped(List.of(files))));
        });
    }

    /** Drags with the left button. */
    final void drag(Component over, Point from, Point to) {
        robot.moveMouse(over, from);
        robot.pressMouse(over, from, MouseButton.LEFT_BUTTON);
        robot.moveMouse(over, new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        robot.moveMouse(over, to);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    /** Files as a desktop hands them over. */
    private record Dropped(List<Path> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files.stream().map(Path::toFile).toList();
        }
    }

    /** How large the window is on a screen of 1366x768, or of 3840x2160 where all is drawn twice as large. */
    private static Dimension usual() {
        return UIScale.getUserScaleFactor() < 2 ? new Dimension(1340, 710) : new Dimension(3840, 2160);
    }

    /** Takes pictures of the window in both themes, as {@code NAME-paper-1340x710.png}, and sees that nothing is cut off. */
    final void pictures(String name) {
        pictures(window, name, usual());
        robot.waitForIdle();
    }

    /** Takes pictures of a step that stands in a frame of its own, in the same way. */
    static void picturesOfStep(FrameFixture taken, String name) {
        Dimension room = usual();
        pictures(taken, name, new Dimension(room.width, room.height - UIScale.scale(AROUND_A_STEP)));
    }

    private static void pictures(FrameFixture taken, String name, Dimension size) {
        Dimension before = GuiActionRunner.execute(() -> taken.target().getSize());
        for (Theme theme : Theme.values()) {
            picture(taken, name, theme, size);
        }
        GuiActionRunner.execute(() -> EventThreadWatch.get().aside(() -> {
            Theme.PAPER.apply();
            taken.target().setSize(before);
            taken.target().validate();
            return taken;
        }));
    }

    /** Takes a picture of the window in a theme and a size before scaling, and sees that nothing is cut off. */
    final Path picture(String name, Theme theme, int width, int height) {
        return picture(window, name, theme, UIScale.scale(new Dimension(width, height)));
    }

    private static Path picture(FrameFixture taken, String name, Theme theme, Dimension size) {
        BufferedImage picture =
                GuiActionRunner.execute(() -> EventThreadWatch.get().aside(() -> {
                    JFrame frame = (JFrame) taken.target();
                    // sized first: sides that are dressed anew in the same moment don't share the new room
                    frame.setSize(size);
                    frame.validate();
                    theme.apply();
                    frame.validate();
                    JRootPane inside = frame.getRootPane();
                    BufferedImage drawn =
                            new BufferedImage(inside.getWidth(), inside.getHeight(), BufferedImage.TYPE_INT_RGB);
                    Graphics2D g = drawn.createGraphics();
                    inside.printAll(g);
                    g.dispose();
                    return drawn;
                }));
        Path file = PICTURES.resolve(name + "-" + theme.name().toLowerCase(java.util.Locale.ROOT) + "-" + size.width
                + "x" + size.height + ".png");
        try {
            Files.createDirectories(PICTURES);
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertEquals(List.of(), GuiActionRunner.execute(() -> CutOff.in(taken.target())), file.toString());
        return file;
    }
}
