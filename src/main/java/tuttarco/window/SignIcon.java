package tuttarco.window;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.Icon;
import tuttarco.bow.BowDirection;
import tuttarco.chart.BowSigns;

/** A bow sign on a button. */
record SignIcon(BowDirection direction) implements Icon {
    private static final double SIDE_PX = 14;
    private static final double SIGN_PX = 12;
    private static final double WEIGHT_PX = 1.6;

    @Override
    public void paintIcon(Component c, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.translate(x, y);
        g.scale(Drawn.scale(), Drawn.scale());
        g.setPaint(
                c.isEnabled()
                        ? Theme.worn().palette().ink()
                        : Theme.worn().palette().secondary());
        g.fill(BowSigns.of(direction, SIDE_PX / 2, SIDE_PX / 2, SIGN_PX, WEIGHT_PX));
        g.dispose();
    }

    @Override
    public int getIconWidth() {
        return (int) Math.ceil(SIDE_PX * Drawn.scale());
    }

    @Override
    public int getIconHeight() {
        return getIconWidth();
    }
}
