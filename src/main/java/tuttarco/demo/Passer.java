package tuttarco.demo;

import java.awt.Color;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.util.OptionalInt;

/** Someone who walks past close to the camera: head and shoulders cross the picture once. */
record Passer(Picture picture, double startS, double endS) {
    private static final Color COAT = new Color(0x33302E);
    private static final Color HAIR = new Color(0x4A3A2C);
    /** Width of the shoulders as a share of the picture's width (chosen: hides one of four players). */
    private static final double WIDTH = 0.26;

    static Passer in(Scene scene) {
        return new Passer(scene.picture(), 0.3 * scene.durationS(), 0.72 * scene.durationS());
    }

    void paint(Pen pen, double timeS) {
        pen.fill(new Area(shoulders(timeS)), COAT, OptionalInt.empty());
        pen.fill(head(timeS), HAIR, OptionalInt.empty());
    }

    private double xPx(double timeS) {
        double half = WIDTH * picture.widthPx() / 2;
        double share = (timeS - startS) / (endS - startS);
        return -half - 2 + share * (picture.widthPx() + 2 * half + 4);
    }

    private Ellipse2D head(double timeS) {
        double r = 0.24 * WIDTH * picture.widthPx();
        return new Ellipse2D.Double(xPx(timeS) - r, 0.30 * picture.heightPx(), 2 * r, 2.5 * r);
    }

    private RoundRectangle2D shoulders(double timeS) {
        double width = WIDTH * picture.widthPx();
        double topPx = 0.30 * picture.heightPx() + 0.42 * width * 1.15;
        return new RoundRectangle2D.Double(
                xPx(timeS) - width / 2, topPx, width, picture.heightPx(), 0.6 * width, 0.6 * width);
    }
}
