package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Read the bows. */
final class ReadingStep implements Step {
    private final JPanel view = new JPanel();

    ReadingStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Read the bows";
    }

    @Override
    public String key() {
        return "reading";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
