package tuttarco.window;

import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import tuttarco.review.ReadingWords;
import tuttarco.review.Session;
import tuttarco.review.TakeReading.State;

/** What must be done before a step makes sense, in a sentence, and the way there. */
final class FirstThis extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final Sentence sentence;
    private final JButton there = new JButton();
    private String step = "";

    FirstThis(String stepKey, Session session) {
        super(new MigLayout("insets 24 32 24 32, fillx, wrap 1", "[grow, fill]", "[]16[]"));
        this.session = session;
        sentence = new Sentence(stepKey + "-first");
        there.setName(stepKey + "-first-go");
        there.addActionListener(e -> this.session.goTo(step));
        add(sentence);
        add(there, "grow 0");
    }

    void say(State.NotYet first) {
        step = first.step();
        sentence.say(first.sentence());
        there.setText(ReadingWords.next(first));
    }
}
