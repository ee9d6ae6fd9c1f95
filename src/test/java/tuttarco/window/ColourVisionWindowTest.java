package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Fixtures;

/** With, against and unsure differ in shape for those who don't see all colours; the section is made by hand. */
class ColourVisionWindowTest extends WindowTest {
    /** Darker or lighter than the ground by this ratio of contrast counts as drawn; the shade of a down-bow does not. */
    private static final double DRAWN = 1.5;

    /** Cells of the players' rows: desk 1 outside and desk 3 inside on bar 3 beat 1, desk 2 outside on bar 8 beat 1. */
    private static final Point WITH = new Point(8, 1);

    private static final Point AGAINST = new Point(8, 6);
    private static final Point UNSURE = new Point(28, 3);

    /** Of a cell: how much is drawn in it, and how much of its edge, as parts of either. */
    private record Shape(double filled, double edge) {}

    @ParameterizedTest
    @EnumSource(Theme.class)
    void statesDifferInShapeWhateverColoursAreSeen(Theme theme) throws Exception {
        Optional<AnalysedTake> section = Optional.of(Fixtures.unified());
        GuiActionRunner.execute(() -> session().analysed(section));
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_5);
        untilSpots();
        Path file = picture("colour-vision", theme, 1900, 1080);
        BufferedImage picture = ImageIO.read(file.toFile());
        Point corner = GuiActionRunner.execute(() -> SwingUtilities.convertPoint(
                robot().finder().findByName("review-section", SectionView.class),
                new Point(),
                ((JFrame) window().target()).getRootPane()));
        double ground = ColourVision.luminance(theme.palette().ground().getRGB());
        for (ColourVision vision : ColourVision.values()) {
            for (int row = 0; row < 3; row++) {
                assertEquals(1, vision.rowSum(row), 1e-5, "grey stays grey");
            }
            BufferedImage seen = vision.of(picture);
            ImageIO.write(seen, "png", new File(file.toString().replace(".png", "-" + vision + ".png")));
            Shape with = shape(seen, corner, WITH, ground);
            Shape against = shape(seen, corner, AGAINST, ground);
            Shape unsure = shape(seen, corner, UNSURE, ground);
            String all = vision + ": with " + with + ", against " + against + ", unsure " + unsure;
            assertTrue(with.filled() > 0.03 && with.filled() < 0.4, all);
            assertTrue(against.filled() > 0.6, all);
            assertTrue(with.edge() < 0.1, all);
            assertTrue(unsure.edge() > 0.2 && unsure.edge() < 0.9, all);
            assertTrue(unsure.filled() > 0.01 && unsure.filled() < 0.4, all);
        }
    }

    /** The inner two thirds of a cell, and the ring in which a dotted border runs. */
    private static Shape shape(BufferedImage seen, Point corner, Point cell, double ground) {
        Rectangle box = SectionView.box(cell.y, cell.x);
        box.translate(corner.x, corner.y);
        int filled = 0;
        int inner = 0;
        int drawnEdge = 0;
        int edge = 0;
        for (int y = box.y; y < box.y + box.height; y++) {
            for (int x = box.x; x < box.x + box.width; x++) {
                int inPx = Math.min(
                        Math.min(x - box.x, box.x + box.width - 1 - x),
                        Math.min(y - box.y, box.y + box.height - 1 - y));
                int in = (int) (inPx / Drawn.scale());
                boolean drawn = drawn(seen.getRGB(x, y), ground);
                if (in >= 4) {
                    inner++;
                    filled += drawn ? 1 : 0;
                } else if (in == 1) {
                    edge++;
                    drawnEdge += drawn ? 1 : 0;
                }
            }
        }
        return new Shape((double) filled / inner, (double) drawnEdge / edge);
    }

    private static boolean drawn(int rgb, double ground) {
        double own = ColourVision.luminance(rgb);
        double contrast = (Math.max(own, ground) + 0.05) / (Math.min(own, ground) + 0.05);
        return contrast > DRAWN;
    }
}
