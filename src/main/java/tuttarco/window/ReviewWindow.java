package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.WindowConstants;
import tuttarco.chart.Palette;
import tuttarco.review.Correcting;
import tuttarco.review.HandingOut;
import tuttarco.review.Opening;
import tuttarco.review.Saving;
import tuttarco.review.SeatsModel;
import tuttarco.review.Session;
import tuttarco.review.TakeReading;

/** The window: the steps of the work above, the step that is worked on, and what the user is told below. */
public final class ReviewWindow {
    /** A screen of 1366 x 768 less the system's bars. */
    private static final Dimension USUAL_SIZE = new Dimension(1340, 710);

    private static final Dimension LEAST_SIZE = new Dimension(960, 600);

    private final Session session;
    private final JFrame frame = new JFrame("Tuttarco");
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final List<Step> steps;
    private final StepRow row;
    private int current;

    /** Makes the window, not yet seen; on the event thread. */
    public ReviewWindow(
            Session session,
            Opening opening,
            TakeReading reading,
            Correcting correcting,
            HandingOut handing,
            Runnable closed) {
        this(session, opening, new MusicStep(session), reading, correcting, handing, closed);
    }

    /** The same with another step for part and beats. */
    ReviewWindow(
            Session session,
            Opening opening,
            MusicStep music,
            TakeReading reading,
            Correcting correcting,
            HandingOut handing,
            Runnable closed) {
        this.session = session;
        OpenStep open = new OpenStep(session, opening, () -> go(1));
        steps = List.of(
                open,
                new SeatsStep(new SeatsModel(session)),
                music,
                new ReadingStep(session, reading),
                new ReviewStep(session, correcting),
                new HandOutStep(session, handing));
        steps.forEach(step -> middle.add(step.view(), step.key()));
        row = new StepRow(steps, this::go);
        frame.setName("tuttarco");
        JPanel above = new JPanel(new BorderLayout());
        above.add(row, BorderLayout.NORTH);
        above.add(new SavingBar(session), BorderLayout.SOUTH);
        frame.add(above, BorderLayout.NORTH);
        frame.getRootPane().setTransferHandler(open.dropped(() -> go(0)));
        frame.add(middle, BorderLayout.CENTER);
        frame.add(new StatusLine(session), BorderLayout.SOUTH);
        frame.setMinimumSize(onScreen(LEAST_SIZE));
        frame.setSize(onScreen(USUAL_SIZE));
        frame.setLocationByPlatform(true);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                session.background()
                        .inOrder(
                                () -> {
                                    correcting.close();
                                    return true;
                                },
                                written -> close(session.saving()),
                                why -> close(new Saving.Failed(why)));
            }

            @Override
            public void windowClosed(WindowEvent e) {
                steps.get(current).hidden();
                closed.run();
            }
        });
        frame.addWindowFocusListener(new WindowAdapter() {
            @Override
            public void windowGainedFocus(WindowEvent e) {
                correcting.reload();
            }
        });
        session.onDraft()
                .add(() -> frame.setTitle(
                        session.draft().map(d -> d.title() + " - Tuttarco").orElse("Tuttarco")));
        session.onGoTo(this::go);
        row.choose(0);
        Palette palette = Theme.worn().palette();
        session.background()
                .run(
                        () -> {
                            FirstDrawing.draw(palette, frame.getGraphicsConfiguration());
                            return palette;
                        },
                        drawn -> {},
                        session::trouble);
    }

    /** Closes the window, unless something is not saved and the user goes back to it. */
    private void close(Saving saving) {
        if (saving instanceof Saving.Saved || closesAllTheSame(saving.sentence())) {
            frame.dispose();
        }
    }

    private boolean closesAllTheSame(String sentence) {
        Object[] choices = {"Back", "Close without saving"};
        return JOptionPane.showOptionDialog(
                        frame,
                        Labels.wrapped(sentence),
                        "Not saved",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        choices,
                        choices[0])
                == 1;
    }

    /** A size of the usual scale in the one that is set, no larger than the screen. */
    private static Dimension onScreen(Dimension size) {
        Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
        return new Dimension(
                Math.min(screen.width, UIScale.scale(size.width)), Math.min(screen.height, UIScale.scale(size.height)));
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
        if (index != current) {
            session.wentOn();
        }
        current = index;
        row.choose(index);
        cards.show(middle, steps.get(index).key());
        steps.get(index).shown();
    }
}
