package tuttarco.demo;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How much of each bow arm the camera sees, and when. The scene is painted small and in numbers, each arm's forearm
 * and hand with frog in one of their own; what is left of it when all is painted, as a share of the same arm painted
 * alone, is seen. The forearm counts because it tells a stroke too: rendered players were read by it from behind a stand.
 */
final class Sight {
    /** How often it is looked, hertz: as often as most scenes' cameras take frames. */
    static final double LOOKS_PER_S = 25;

    /** Least share of hand and forearm that counts as seen: below it not even as much as the hand by itself is left. */
    static final double LEAST_SHARE = 0.2;
    /** Most pixels a metre of the small painting (chosen: hand and forearm cover some fifty). */
    private static final double MOST_PX_PER_M = 40;
    /** Side of the square an arm is painted alone in, pixels: hand and forearm reach half a metre from the grip. */
    private static final int ALONE_PX = 64;

    private final Layout layout;
    private final Stage stage;
    private final Hands hands;
    private final double scale;
    private final BufferedImage all;
    private final BufferedImage alone = new BufferedImage(ALONE_PX, ALONE_PX, BufferedImage.TYPE_INT_RGB);
    /** Look by look, the share seen of each player's bow arm. */
    private final List<double[]> looks = new ArrayList<>();

    Sight(Scene scene, Layout layout) {
        this.layout = layout;
        this.stage = new Stage(scene, layout);
        this.hands = new Hands(scene);
        double nearestPxPerM = layout.performers().stream()
                .mapToDouble(p -> layout.camera().see(p.floor()).pxPerM())
                .max()
                .orElseThrow();
        this.scale = Math.min(1, MOST_PX_PER_M / nearestPxPerM);
        this.all = new BufferedImage(
                (int) Math.ceil(scale * scene.picture().widthPx()),
                (int) Math.ceil(scale * scene.picture().heightPx()),
                BufferedImage.TYPE_INT_RGB);
        for (int look = 0; look <= scene.durationS() * LOOKS_PER_S; look++) {
            looks.add(look(look / LOOKS_PER_S));
        }
    }

    /** Whether enough of a player's bow arm is seen at a look. */
    boolean sees(Performer performer, int look) {
        return share(performer, look) >= LEAST_SHARE;
    }

    /** Share of a player's hand and forearm that is seen at a look, 0 to 1. */
    double share(Performer performer, int look) {
        return looks.get(Math.min(looks.size() - 1, look))[performer.index()];
    }

    /** Number of the look nearest to a time. */
    static int nearest(double timeS) {
        return (int) Math.round(timeS * LOOKS_PER_S);
    }

    /** From when on a look is the nearest, seconds. */
    static double startS(int look) {
        return (look - 0.5) / LOOKS_PER_S;
    }

    /** Who is shown in another view is not seen: a reader knows the seats of the first only. */
    private double[] look(double timeS) {
        if (hands.otherView(timeS) > 0) {
            return new double[layout.performers().size()];
        }
        AffineTransform small = AffineTransform.getScaleInstance(scale, scale);
        small.concatenate(hands.at(timeS));
        stage.paint(pen(all, small), timeS);
        int[] seen = new int[layout.performers().size() + 1];
        for (int number : numbers(all)) {
            seen[number & 0xFFFFFF]++;
        }
        return layout.performers().stream()
                .mapToDouble(p -> (double) seen[p.index() + 1] / Math.max(1, wholePx(p, timeS, small)))
                .toArray();
    }

    /** Pixels of an arm that nothing hides. */
    private long wholePx(Performer performer, double timeS, AffineTransform small) {
        Camera.Spot grip = layout.camera()
                .see(performer.axes(timeS).room(performer.figure(timeS).grip()));
        double[] at = {grip.xPx(), grip.yPx()};
        small.transform(at, 0, at, 0, 1);
        AffineTransform centred =
                AffineTransform.getTranslateInstance(ALONE_PX / 2 - Math.rint(at[0]), ALONE_PX / 2 - Math.rint(at[1]));
        centred.concatenate(small);
        FigurePainter.paintBowArm(performer, timeS, new Brush(pen(alone, centred), layout.camera()), layout.camera());
        return Arrays.stream(numbers(alone))
                .filter(number -> (number & 0xFFFFFF) != 0)
                .count();
    }

    /** A pen for an empty image. */
    private static Pen pen(BufferedImage image, AffineTransform toImage) {
        Arrays.fill(numbers(image), 0);
        Graphics2D graphics = image.createGraphics();
        graphics.setTransform(toImage);
        return new Pen.Numbers(graphics);
    }

    private static int[] numbers(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }
}
