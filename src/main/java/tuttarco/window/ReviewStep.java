package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Review. */
final class ReviewStep implements Step {
    private final JPanel view = new JPanel();

    ReviewStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Review";
    }

    @Override
    public String key() {
        return "review";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
