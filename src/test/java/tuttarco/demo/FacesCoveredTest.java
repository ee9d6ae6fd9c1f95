package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
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
        Layout layout = Layout.of(scene);
        Hands hands = new Hands(scene);
        FacesInClip faces =
                FacesInClip.of(folder.resolve(scene.name() + ".mp4"), layout.players(), Looks.steady(), timeS -> {});
        int points = 0;
        int bare = 0;
        int grips = 0;
        int hidden = 0;
        DoubleSummaryStatistics shares = new DoubleSummaryStatistics();
        for (double timeS = EVERY_S / 2; timeS < scene.durationS() - EVERY_S; timeS += EVERY_S) {
            List<Shape> blurred = faces.at(timeS);
            for (Performer performer : layout.performers()) {
                List<Point2D> face =
                        seen(face(performer, layout.camera(), timeS), scene, layout.camera(), hands, timeS);
                points += face.size();
                bare += face.size() - within(blurred, face);
                Vec grip = performer.axes(timeS).room(performer.figure(timeS).grip());
                List<Point2D> held = seen(List.of(grip), scene, layout.camera(), hands, timeS);
                grips += held.size();
                hidden += within(blurred, held);
            }
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

    /** What the picture shows of places in the room, in its pixels; in both views while one dissolves into the other. */
    private static List<Point2D> seen(List<Vec> places, Scene scene, Camera camera, Hands hands, double timeS) {
        double other = hands.otherView(timeS);
        List<AffineTransform> views = new ArrayList<>();
        if (other < 1) {
            views.add(hands.at(timeS));
        }
        if (other > 0) {
            views.add(hands.elsewhere(timeS));
        }
        List<Point2D> points = new ArrayList<>();
        for (Vec place : places) {
            Camera.Spot spot = camera.see(place);
            for (AffineTransform view : views) {
                Point2D at = view.transform(new Point2D.Double(spot.xPx(), spot.yPx()), null);
                int widthPx = scene.picture().widthPx();
                double x = scene.picture().mirrored() ? widthPx - at.getX() : at.getX();
                if (x >= 0
                        && x < widthPx
                        && at.getY() >= 0
                        && at.getY() < scene.picture().heightPx()) {
                    points.add(new Point2D.Double(x, at.getY()));
                }
            }
        }
        return points;
    }

    /** What of a player's face is turned to the camera, as {@link FigurePainter} draws it. */
    private static List<Vec> face(Performer performer, Camera camera, double timeS) {
        Figure figure = performer.figure(timeS);
        Axes axes = performer.axes(timeS);
        Vec ahead = new Vec(0, 1, 0).turned(figure.headTurnRad());
        Vec side = new Vec(ahead.y(), -ahead.x(), 0);
        Vec toCamera = camera.towards(axes.room(figure.head()));
        List<Vec> parts = new ArrayList<>();
        for (int x = -1; x <= 1; x += 2) {
            Vec out = ahead.times(0.09).plus(side.times(0.034 * x));
            if (toCamera.dot(axes.direction(out)) > 0) {
                parts.add(figure.head()
                        .plus(ahead.times(0.075))
                        .plus(side.times(0.034 * x))
                        .plus(new Vec(0, 0, 0.012)));
            }
        }
        if (toCamera.dot(axes.direction(ahead)) > 0) {
            parts.add(figure.head().plus(ahead.times(0.105)).plus(new Vec(0, 0, -0.028)));
            parts.add(figure.head().plus(ahead.times(0.078)).plus(new Vec(0, 0, -0.062)));
        }
        return parts.stream().map(axes::room).toList();
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
