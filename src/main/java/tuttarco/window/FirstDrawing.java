package tuttarco.window;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.VolatileImage;
import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Cell;
import tuttarco.chart.CellPen;
import tuttarco.chart.Palette;
import tuttarco.chart.SignKey;
import tuttarco.chart.StrokePen;
import tuttarco.chart.Type;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * Draws once, where nobody sees it, what the window will draw: letters are outlined and classes loaded the first time, which
 * would hold the window up.
 */
final class FirstDrawing {
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,:;()-–%?!'";

    private static final int SIDE_PX = 64;

    private FirstDrawing() {}

    /**
     * Draws; on any thread.
     *
     * @param screen on which the window will be
     */
    static void draw(Palette palette, GraphicsConfiguration screen) {
        VolatileImage picture = screen.createCompatibleVolatileImage(SIDE_PX, SIDE_PX);
        Graphics2D g = picture.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(Drawn.scale(), Drawn.scale());
            for (Font font : List.of(Type.small(), Type.body(), Type.strong())) {
                Drawn.text(g, LETTERS, font, 0, 0);
            }
            CellPen pen = new CellPen();
            Rectangle2D box = new Rectangle2D.Double(0, 0, SIDE_PX, SIDE_PX);
            SignKey.ofReadings().forEach(sign -> sign.cells().forEach(cell -> pen.add(cell, box)));
            SignKey.byHand().forEach(sign -> sign.cells().forEach(cell -> pen.add(cell, box)));
            pen.add(new Cell(Cell.State.SHOWN, Optional.of(BowDirection.DOWN)), box);
            pen.draw(g, palette);
            StrokePen strokes = new StrokePen();
            strokes.addAgainst(box);
            for (StrokeKind kind : StrokeKind.values()) {
                strokes.add(
                        new Bow(
                                new Stroke(0, 1, kind, 1),
                                new Edge.ClipEnd(),
                                new Edge.ByHand(),
                                new BowUse.Unknown(BowUse.Reason.NO_STROKE)),
                        kind == StrokeKind.UP,
                        box);
            }
            strokes.draw(g, palette);
            Path2D curve = new Path2D.Double();
            curve.moveTo(0, 0);
            curve.lineTo(SIDE_PX, SIDE_PX);
            g.setStroke(new BasicStroke());
            g.draw(curve);
            g.fill(curve);
        } finally {
            g.dispose();
            picture.flush();
        }
    }
}
