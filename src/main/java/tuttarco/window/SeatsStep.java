package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Seats. */
final class SeatsStep implements Step {
    private final JPanel view = new JPanel();

    SeatsStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Seats";
    }

    @Override
    public String key() {
        return "seats";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
