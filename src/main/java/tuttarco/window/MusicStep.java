package tuttarco.window;

import javax.swing.JComponent;
import javax.swing.JPanel;
import tuttarco.review.Session;

/** Part and beats. */
final class MusicStep implements Step {
    private final JPanel view = new JPanel();

    MusicStep(Session session) {
        view.setName(key());
    }

    @Override
    public String title() {
        return "Part and beats";
    }

    @Override
    public String key() {
        return "music";
    }

    @Override
    public JComponent view() {
        return view;
    }
}
