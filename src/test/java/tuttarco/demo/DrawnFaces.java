package tuttarco.demo;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
        return layout.performers().stream()
                .flatMap(performer -> seen(face(performer, layout.camera(), timeS), timeS))
                .toList();
    }

    /** Where the same players hold their bows, likewise. */
    List<Point2D> grips(double timeS) {
        return layout.performers().stream()
                .map(performer ->
                        performer.axes(timeS).room(performer.figure(timeS).grip()))
                .flatMap(grip -> seen(List.of(grip), timeS))
                .toList();
    }

    private Stream<Point2D> seen(List<Vec> places, double timeS) {
        double other = hands.otherView(timeS);
        List<AffineTransform> views = new ArrayList<>();
        if (other < 1) {
            views.add(hands.at(timeS));
        }
        if (other > 0) {
            views.add(hands.elsewhere(timeS));
        }
        return places.stream()
                .map(layout.camera()::see)
                .flatMap(spot -> views.stream().map(view -> inPicture(spot, view)))
                .filter(this::shown);
    }

    private Point2D inPicture(Camera.Spot spot, AffineTransform view) {
        Point2D at = view.transform(new Point2D.Double(spot.xPx(), spot.yPx()), null);
        Picture picture = scene.picture();
        return new Point2D.Double(picture.mirrored() ? picture.widthPx() - at.getX() : at.getX(), at.getY());
    }

    private boolean shown(Point2D at) {
        Picture picture = scene.picture();
        return at.getX() >= 0 && at.getX() < picture.widthPx() && at.getY() >= 0 && at.getY() < picture.heightPx();
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
