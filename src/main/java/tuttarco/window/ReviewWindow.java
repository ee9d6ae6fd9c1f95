package tuttarco.window;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.WindowConstants;
import tuttarco.review.Session;
import tuttarco.review.TakeReading;

/** The window: the steps of the work above, the step that is worked on, and what the user is told below. */
public final class ReviewWindow {
    /** A screen of 1366 x 768 less the system's bars. */
    private static final Dimension USUAL_SIZE = new Dimension(1340, 710);

    private static final Dimension LEAST_SIZE = new Dimension(960, 600);

    private final JFrame frame = new JFrame("Tuttarco");
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final List<Step> steps;
    private final StepRow row;
    private int current;

    /** Makes the window, not yet seen; on the event thread. */
    public ReviewWindow(Session session, TakeReading reading, Runnable closed) {
        steps = List.of(
                new OpenStep(session),
                new SeatsStep(session),
                new MusicStep(session),
                new ReadingStep(session, reading),
                new ReviewStep(session),
                new HandOutStep(session));
        steps.forEach(step -> middle.add(step.view(), step.key()));
        row = new StepRow(steps, this::go);
        frame.setName("tuttarco");
        frame.add(row, BorderLayout.NORTH);
        frame.add(middle, BorderLayout.CENTER);
        frame.add(new StatusLine(session), BorderLayout.SOUTH);
        frame.setMinimumSize(LEAST_SIZE);
        frame.setSize(USUAL_SIZE);
        frame.setLocationByPlatform(true);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                steps.get(current).hidden();
                closed.run();
            }
        });
        session.onDraft()
                .add(() -> frame.setTitle(
                        session.draft().map(d -> d.title() + " - Tuttarco").orElse("Tuttarco")));
        session.onGoTo(this::go);
        row.choose(0);
    }

    public void show() {
        frame.setVisible(true);
        steps.get(current).shown();
    }

    JFrame frame() {
        return frame;
    }

    private void go(String key) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).key().equals(key)) {
                go(i);
            }
        }
    }

    /** Goes to a step, counted from 0. */
    void go(int index) {
        steps.get(current).hidden();
        current = index;
        row.choose(index);
        cards.show(middle, steps.get(index).key());
        steps.get(index).shown();
    }
}
