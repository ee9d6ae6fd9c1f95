package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.faces.FacesInClip;
import tuttarco.faces.Looks;
import tuttarco.pose.PackedModel;

/** Where faces are blurred, against where our own renderer drew eyes, nose and mouth. */
class FacesCoveredTest {
    private static final double EVERY_S = 0.2;

    /** How much smaller pictures are drawn to count what is blurred. */
    private static final int SMALLER = 4;

    /** Of a scene's points, so many may be bare at most, and of all scenes' together. */
    private static final double BARE_IN_SCENE = 0.01;

    private static final double BARE_IN_ALL = 0.001;

    @TempDir
    Path folder;

    /**
     * What a clip shows of its players' faces.
     *
     * @param points eyes, noses and mouths that the camera sees
     * @param bare those of them that are not blurred
     * @param grips where bows are held
     * @param hidden those of them that are blurred
     * @param blurredShare share of all pictures that is blurred
     */
    private record Shown(int points, int bare, int grips, int hidden, double blurredShare) {
        @Override
        public String toString() {
            return bare + " of " + points + " bare, " + hidden + " of " + grips + " grips hidden, "
                    + String.format(Locale.ROOT, "%.1f %% blurred", 100 * blurredShare);
        }
    }

    private Shown shown(SceneCatalogue.Listed listed) throws Exception {
        PackedModel.orSkip();
        listed.render(folder);
        Scene scene = listed.scene();
        DrawnFaces drawn = new DrawnFaces(scene);
        FacesInClip faces =
                FacesInClip.of(folder.resolve(scene.name() + ".mp4"), drawn.players(), Looks.steady(), timeS -> {});
        int points = 0;
        int bare = 0;
        int grips = 0;
        int hidden = 0;
        DoubleSummaryStatistics shares = new DoubleSummaryStatistics();
        for (double timeS = EVERY_S / 2; timeS < scene.durationS() - EVERY_S; timeS += EVERY_S) {
            List<Shape> blurred = faces.at(timeS);
            List<Point2D> drawnFaces = drawn.at(timeS);
            points += drawnFaces.size();
            bare += drawnFaces.size() - within(blurred, drawnFaces);
            List<Point2D> held = drawn.grips(timeS);
            grips += held.size();
            hidden += within(blurred, held);
            shares.accept(share(blurred, scene.picture()));
        }
        return new Shown(points, bare, grips, hidden, shares.getAverage());
    }

    private static int within(List<Shape> shapes, List<Point2D> points) {
        return (int) points.stream()
                .filter(point -> shapes.stream().anyMatch(shape -> shape.contains(point)))
                .count();
    }

    /** How much of a picture lies within shapes: drawn small, and counted. */
    private static double share(List<Shape> shapes, Picture picture) {
        int widthPx = picture.widthPx() / SMALLER;
        int heightPx = picture.heightPx() / SMALLER;
        BufferedImage small = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = small.createGraphics();
        g.scale(1.0 / SMALLER, 1.0 / SMALLER);
        shapes.forEach(g::fill);
        g.dispose();
        byte[] pixels = (byte[]) small.getRaster().getDataElements(0, 0, widthPx, heightPx, null);
        int inside = 0;
        for (byte pixel : pixels) {
            inside += pixel == 0 ? 0 : 1;
        }
        return (double) inside / pixels.length;
    }

    @ParameterizedTest
    @ValueSource(strings = {"sway", "shake", "cut-back", "profile-cello"})
    void nothingOfAFaceIsBare(String name) throws Exception {
        Shown shown = shown(SceneFixture.listed(name));
        assertTrue(shown.points() > 100, shown.toString());
        assertEquals(0, shown.bare(), shown.toString());
    }

    /** Prints the figures of all scenes for the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() throws Exception {
        List<Shown> all = new ArrayList<>();
        for (SceneCatalogue.Listed scene : SceneCatalogue.all()) {
            Shown shown = shown(scene);
            System.out.println(scene.name() + ": " + shown);
            all.add(shown);
        }
        Shown together = new Shown(
                all.stream().mapToInt(Shown::points).sum(),
                all.stream().mapToInt(Shown::bare).sum(),
                all.stream().mapToInt(Shown::grips).sum(),
                all.stream().mapToInt(Shown::hidden).sum(),
                all.stream().mapToDouble(Shown::blurredShare).average().orElseThrow());
        System.out.println("all: " + together);
        assertTrue(all.stream().allMatch(shown -> shown.bare() <= BARE_IN_SCENE * shown.points()), "see above");
        assertTrue(together.bare() <= BARE_IN_ALL * together.points(), together.toString());
    }
}
