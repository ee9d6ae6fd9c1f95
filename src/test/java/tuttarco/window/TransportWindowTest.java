package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Loop;
import tuttarco.video.NumberedClip;

class TransportWindowTest extends WindowTest {
    private static final int PICTURES = 120;
    private static final double PER_S = 30;
    private static final Loop BAR = new Loop(1, 2);

    @TempDir
    Path folder;

    private PictureView view;
    private ClipPlayer player;

    @BeforeEach
    void openClip() throws Exception {
        Path clip = NumberedClip.write(
                folder.resolve("clip.mp4"), NumberedClip.evenly(PICTURES, PER_S), Optional.empty(), 0);
        view = GuiActionRunner.execute(PictureView::new);
        GuiActionRunner.execute(() -> {
            JPanel panel = new JPanel(new BorderLayout());
            JTextField field = new JTextField();
            field.setName("words");
            panel.add(field, BorderLayout.NORTH);
            panel.add(view, BorderLayout.CENTER);
            panel.add(new Transport("review", view, () -> Optional.of(BAR)), BorderLayout.SOUTH);
            JFrame frame = (JFrame) window().target();
            frame.setContentPane(panel);
            frame.validate();
        });
        player = ClipPlayer.open(clip, view);
        GuiActionRunner.execute(() -> view.watch(Optional.of(player)));
        until("the first picture", () -> number() == 0);
    }

    @AfterEach
    void closeClip() {
        player.close();
    }

    private interface Wanted {
        boolean there();
    }

    private static void until(String what, Wanted wanted) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(wanted::there);
                    }
                },
                60_000);
    }

    /** The number on the picture as the view paints it, and nothing but the picture if it is as large as it says. */
    private int number() {
        BufferedImage painted = painted();
        AffineTransform shown = view.pictureToView();
        return NumberedClip.numberIn(painted.getSubimage(
                (int) Math.round(shown.getTranslateX()),
                (int) Math.round(shown.getTranslateY()),
                (int) (NumberedClip.WIDTH_PX * shown.getScaleX()),
                (int) (NumberedClip.HEIGHT_PX * shown.getScaleY())));
    }

    private BufferedImage painted() {
        BufferedImage painted = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = painted.createGraphics();
        view.paint(g);
        g.dispose();
        return painted;
    }

    private void type(int key) {
        robot().pressAndReleaseKeys(key);
        robot().waitForIdle();
    }

    @Test
    void thePictureFillsTheViewInItsProportion() {
        Rectangle seen = GuiActionRunner.execute(() -> view.pictureToView()
                .createTransformedShape(new Rectangle(NumberedClip.WIDTH_PX, NumberedClip.HEIGHT_PX))
                .getBounds());
        assertTrue(seen.width >= view.getWidth() - 1 || seen.height >= view.getHeight() - 1);
        assertEquals((double) NumberedClip.WIDTH_PX / NumberedClip.HEIGHT_PX, (double) seen.width / seen.height, 0.01);
        assertEquals(view.getWidth() / 2.0, seen.getCenterX(), 1);
        assertEquals(view.getHeight() / 2.0, seen.getCenterY(), 1);
    }

    @Test
    void whatLiesOverThePictureStandsWhereItIsSeen() {
        Point2D inClip = new Point2D.Double(40, 60);
        GuiActionRunner.execute(() -> view.overlay((g, timeS, pictureToView) -> {
            Point2D at = pictureToView.transform(inClip, null);
            g.setColor(Color.RED);
            g.fillRect((int) at.getX() - 2, (int) at.getY() - 2, 5, 5);
        }));
        Point inView = GuiActionRunner.execute(() -> {
            Point2D at = view.pictureToView().transform(inClip, null);
            return new Point((int) Math.round(at.getX()), (int) Math.round(at.getY()));
        });
        assertEquals(Color.RED.getRGB(), GuiActionRunner.execute(() -> painted().getRGB(inView.x, inView.y)));
        Point2D back = GuiActionRunner.execute(() -> view.inPicture(inView)).orElseThrow();
        assertEquals(40, back.getX(), 0.5);
        assertEquals(60, back.getY(), 0.5);
        assertEquals(Optional.empty(), GuiActionRunner.execute(() -> view.inPicture(new Point(-1, 5))));
    }

    @Test
    void keysStepAndPlay() {
        type(KeyEvent.VK_PERIOD);
        type(KeyEvent.VK_PERIOD);
        until("two pictures on", () -> number() == 2);
        type(KeyEvent.VK_COMMA);
        until("one picture back", () -> number() == 1);
        window().label("review-time").requireText("0:00.0 / 0:03.9");
        GuiActionRunner.execute(() -> view.requestFocusInWindow());
        type(KeyEvent.VK_SPACE);
        until("the end", () -> number() == PICTURES - 1 && !player.playing());
        window().label("review-time").requireText("0:03.9 / 0:03.9");
    }

    @Test
    void buttonsDoWhatTheKeysDo() {
        window().button("review-on").click();
        until("one picture on", () -> number() == 1);
        window().button("review-back").click();
        until("one picture back", () -> number() == 0);
        window().toggleButton("review-speed-25").click();
        assertEquals(0.25, player.speed());
        window().button("review-play").focus();
        type(KeyEvent.VK_SPACE);
        assertTrue(player.playing(), "space on the button is one order, not two");
        assertEquals(
                "Pause",
                GuiActionRunner.execute(() -> window().button("review-play")
                        .target()
                        .getAccessibleContext()
                        .getAccessibleName()));
        window().button("review-play").click();
        assertFalse(player.playing());
    }

    @Test
    void theLoopIsTheStretchAskedFor() {
        window().toggleButton("review-loop").click();
        assertEquals(Optional.of(BAR), player.loop());
        window().toggleButton("review-loop").click();
        assertEquals(Optional.empty(), player.loop());
        GuiActionRunner.execute(() -> {
            player.loop(Optional.of(BAR));
            view.onChange().tell();
        });
        window().toggleButton("review-loop").requireSelected();
    }

    @Test
    void theSliderSeeks() {
        window().slider("review-position").slideTo(20);
        until("two seconds", () -> Math.abs(number() - 60) <= 1);
        window().label("review-time").requireText("0:02.0 / 0:03.9");
    }

    @Test
    void aTextFieldKeepsItsKeys() {
        window().textBox("words").enterText("a, b.");
        window().textBox("words").requireText("a, b.");
        assertFalse(player.playing());
        assertEquals(0, GuiActionRunner.execute(this::number));
    }

    @Test
    void everyControlIsReachedByKeyAndHasAName() {
        GuiActionRunner.execute(() -> {
            Transport transport = (Transport) window().panel("review-transport").target();
            for (Component control : transport.getComponents()) {
                assertTrue(control.getName().startsWith("review-"));
                assertFalse(control.getAccessibleContext().getAccessibleName().isBlank());
                assertTrue(control.isFocusable(), control.getName());
            }
        });
    }

    @Test
    void withoutAClipNothingCanBeOrdered() {
        GuiActionRunner.execute(() -> view.watch(Optional.empty()));
        window().button("review-play").requireDisabled();
        type(KeyEvent.VK_PERIOD);
        assertFalse(player.playing());
    }

    @Test
    void itIsSeenInBothThemesAndSizes() throws Exception {
        GuiActionRunner.execute(() -> view.overlay((g, timeS, pictureToView) -> {
            g.setColor(Theme.worn().palette().accent());
            g.setStroke(new BasicStroke(3));
            g.draw(pictureToView.createTransformedShape(new Rectangle(20, 20, 60, 40)));
        }));
        player.seek(2.5);
        until("the picture", () -> number() == 75);
        picture("transport", Theme.NIGHT, 960, 600);
    }

    @Test
    void timesAreMinutesSecondsAndTenthsBegun() {
        assertEquals("0:00.0", Transport.text(0));
        assertEquals("0:59.9", Transport.text(59.99));
        assertEquals("12:05.3", Transport.text(725.3));
    }
}
