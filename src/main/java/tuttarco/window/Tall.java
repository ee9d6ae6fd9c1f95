package tuttarco.window;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.UIManager;

/** A panel that scrolls up and down only: it is as wide as there is room. */
final class Tall extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    Tall(LayoutManager layout) {
        super(layout);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    /** A line. */
    @Override
    public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
        return getFontMetrics(UIManager.getFont("defaultFont")).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
        return seen.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
