package tuttarco.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.util.OptionalInt;

/** What a scene is drawn with: colours for a picture, numbers for a {@link Sight}. Shapes are in the picture's pixels. */
interface Pen {
    /**
     * Fills a surface.
     *
     * @param bowArmOf index of the player whose bow arm (forearm, and hand with frog) this is; empty for all else
     */
    void fill(Shape shape, Paint paint, OptionalInt bowArmOf);

    /** Draws a line. */
    void draw(Shape shape, Stroke stroke, Paint paint);

    /** Draws in colour. */
    record Colours(Graphics2D graphics) implements Pen {
        @Override
        public void fill(Shape shape, Paint paint, OptionalInt bowArmOf) {
            graphics.setPaint(paint);
            graphics.fill(shape);
        }

        @Override
        public void draw(Shape shape, Stroke stroke, Paint paint) {
            graphics.setPaint(paint);
            graphics.setStroke(stroke);
            graphics.draw(shape);
        }
    }

    /** Draws surfaces in numbers: a bow arm in its player's index and one, all else in nought. Lines hide nothing. */
    record Numbers(Graphics2D graphics) implements Pen {
        @Override
        public void fill(Shape shape, Paint paint, OptionalInt bowArmOf) {
            graphics.setColor(new Color(bowArmOf.isPresent() ? bowArmOf.getAsInt() + 1 : 0));
            graphics.fill(shape);
        }

        @Override
        public void draw(Shape shape, Stroke stroke, Paint paint) {}
    }
}
