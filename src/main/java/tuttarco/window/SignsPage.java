package tuttarco.window;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.Cell;
import tuttarco.chart.CellPen;
import tuttarco.chart.SignKey;

/** What the signs in the section and on the players mean. */
final class SignsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Side of a sign's cell, pixels before scaling. */
    private static final int SIDE_PX = 22;

    SignsPage() {
        super(new MigLayout("insets 6 10 6 10, gapx 24, gapy 6, wrap 2"));
        setName("review-signs");
        Stream.of(SignKey.ofReadings(), SignKey.byHand())
                .flatMap(List::stream)
                .map(sign -> new JLabel(sign.words(), new Signs(sign.cells()), JLabel.LEADING))
                .forEach(this::add);
    }

    private record Signs(List<Cell> cells) implements Icon {
        @Override
        public void paintIcon(Component on, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            try {
                g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
                g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
                g.translate(x, y);
                g.scale(Drawn.scale(), Drawn.scale());
                CellPen pen = new CellPen();
                for (int i = 0; i < cells.size(); i++) {
                    pen.add(cells.get(i), new Rectangle2D.Double(i * SIDE_PX, 0, SIDE_PX, SIDE_PX));
                }
                pen.draw(g, Theme.worn().palette());
            } finally {
                g.dispose();
            }
        }

        @Override
        public int getIconWidth() {
            return Drawn.scaled(cells.size() * SIDE_PX, SIDE_PX).width;
        }

        @Override
        public int getIconHeight() {
            return Drawn.scaled(SIDE_PX, SIDE_PX).height;
        }
    }
}
