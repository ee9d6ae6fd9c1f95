package tuttarco.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;

/** Where our own renderer drew the eyes, noses and mouths of a scene. */
public final class DrawnFaces {
    private final Scene scene;
    private final Layout layout;
    private final Hands hands;

    DrawnFaces(Scene scene) {
        this.scene = scene;
        this.layout = Layout.of(scene);
        this.hands = new Hands(scene);
    }

    /** Those of a small section of two in three bars, in a picture that a film shows as large as it is. */
    public static DrawnFaces ofTwo() {
        Cast violin = new Cast(Instrument.VIOLIN, Facing.CAMERA);
        return new DrawnFaces(SceneFixture.of(List.of(violin, violin))
                .with(Picture.of(640, 360).at(20)));
    }

    /** Renders the scene with its take, which is returned, and its clicks. */
    public Path render(Path folder) throws Exception {
        return Rendering.write(scene, folder, percent -> {});
    }

    /** When the first click is heard, seconds. */
    public double firstClickS() {
        return scene.tempo().beats().beats().get(0).timeS();
    }

    List<Player> players() {
        return layout.players();
    }

    /** What the camera sees of them, in pixels of the picture; of both views while one dissolves into the other. */
    public List<Point2D> at(double timeS) {
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
}
