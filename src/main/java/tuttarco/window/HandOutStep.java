package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Hand out. */
final class HandOutStep implements Step {
    private final JPanel view = new JPanel();

    HandOutStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Hand out";
    }

    @Override
    public String key() {
        return "hand-out";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
