package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Open. */
final class OpenStep implements Step {
    private final JPanel view = new JPanel();

    OpenStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Open";
    }

    @Override
    public String key() {
        return "open";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
