package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    @TempDir
    Path folder;

    /**
     * What a clip shows of its players' faces.
     *
     * @param points eyes, noses and mouths that the camera sees
     * @param bare those of them that are not blurred
     */
    private record Shown(int points, int bare) {
        @Override
        public String toString() {
            return bare + " of " + points + " bare";
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
        for (double timeS = EVERY_S / 2; timeS < scene.durationS() - EVERY_S; timeS += EVERY_S) {
            List<Shape> blurred = faces.at(timeS);
            for (Point2D point : points(scene, layout, hands, timeS)) {
                points++;
                bare += blurred.stream().anyMatch(shape -> shape.contains(point)) ? 0 : 1;
            }
        }
        return new Shown(points, bare);
    }

    /** In pixels of the picture; of both views while one dissolves into the other. */
    private static List<Point2D> points(Scene scene, Layout layout, Hands hands, double timeS) {
        double other = hands.otherView(timeS);
        List<AffineTransform> views = new ArrayList<>();
        if (other < 1) {
            views.add(hands.at(timeS));
        }
        if (other > 0) {
            views.add(hands.elsewhere(timeS));
        }
        List<Point2D> points = new ArrayList<>();
        for (Performer performer : layout.performers()) {
            for (Vec part : face(performer, layout.camera(), timeS)) {
                Camera.Spot spot = layout.camera().see(part);
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
    @ValueSource(strings = {"sway", "shake", "cut-back"})
    void nothingOfAFaceIsBare(String name) throws Exception {
        Shown shown = shown(SceneFixture.listed(name));
        assertTrue(shown.points() > 100, shown.toString());
        assertEquals(0, shown.bare(), shown.toString());
    }

    /** Prints the figures of all scenes for the method page. */
    @Test
    @Tag("campaign")
    void figuresForTheMethodPage() throws Exception {
        int points = 0;
        int bare = 0;
        for (SceneCatalogue.Listed scene : SceneCatalogue.all()) {
            Shown shown = shown(scene);
            System.out.println(scene.name() + ": " + shown);
            points += shown.points();
            bare += shown.bare();
        }
        System.out.println("all: " + new Shown(points, bare));
        assertTrue(points > 0);
    }
}
