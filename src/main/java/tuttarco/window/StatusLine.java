package tuttarco.window;

import java.awt.Color;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.Palette;
import tuttarco.review.Message;
import tuttarco.review.Saving;
import tuttarco.review.Session;

/** What the user is told, at the foot of the window. */
final class StatusLine extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Sentence sentence = new Sentence("message") {
        private static final long serialVersionUID = 1L;

        /** Asked for whenever it is painted, so that it is readable in either theme. */
        @Override
        public Color getForeground() {
            Palette palette = Theme.worn().palette();
            return trouble ? palette.accent() : palette.ink();
        }
    };
    private final JLabel saved = new JLabel();
    private boolean trouble;

    StatusLine(Session session) {
        super(new MigLayout("insets 6 16 8 16, fillx", "[grow]16[]", ""));
        saved.setName("saved");
        add(sentence, "growx, wmin 0");
        add(saved);
        session.onMessage().add(() -> show(session.message()));
        session.onSaving().add(() -> show(session.saving()));
    }

    /** What is not saved is told above. */
    private void show(Saving saving) {
        saved.putClientProperty("html.disable", true);
        saved.setText(saving instanceof Saving.Saved ? saving.sentence() : "");
    }

    /** Trouble is told by a word, so that nobody needs its colour. */
    private void show(Message message) {
        trouble = message.kind() == Message.Kind.TROUBLE;
        String text = trouble ? "Please note: " + message.sentence() : message.sentence();
        // a line that is empty keeps its room
        sentence.say(text.isEmpty() ? " " : text);
    }
}
