package tuttarco.window;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.Type;
import tuttarco.report.AnalysedTake;
import tuttarco.review.ReadingWords;
import tuttarco.review.Session;
import tuttarco.review.TakeReading;
import tuttarco.review.TakeReading.State;

/** Reads the bows in the background, with how far it is; it can be stopped and goes on where it was. */
final class ReadingStep implements Step {
    /** Tenths of a percent. */
    private static final int WHOLE = 1000;

    private final Session session;
    private final TakeReading reading;
    private final JPanel view =
            new JPanel(new MigLayout("insets 24 32 24 32, fillx, wrap 1", "[grow, fill]", "[]16[]8[]16[]24[]"));
    private final Sentence sentence = new Sentence("reading-sentence");
    private final JProgressBar bar = new JProgressBar(0, WHOLE);
    private final JButton begin = new JButton();
    private final JButton stop = new JButton("Stop");
    private final Sentence notes = new Sentence("reading-notes");
    private AnalysedTake told;

    ReadingStep(Session session, TakeReading reading) {
        this.session = session;
        this.reading = reading;
        view.setName(key());
        JLabel heading = new JLabel("Read the bows");
        heading.setFont(Labels.scaled(Type.heading()));
        view.add(heading);
        view.add(sentence);
        bar.setName("reading-bar");
        bar.getAccessibleContext().setAccessibleName("How far the reading is");
        view.add(bar, "h 12!");
        begin.setName("reading-begin");
        begin.addActionListener(e -> begin());
        stop.setName("reading-stop");
        stop.setMnemonic('S');
        stop.addActionListener(e -> reading.stop());
        JPanel buttons = new JPanel(new MigLayout("insets 0"));
        buttons.add(begin);
        buttons.add(stop);
        view.add(buttons);
        view.add(notes);
        reading.onState().add(this::show);
        show();
    }

    /** What stands on the first button is what it does. */
    private void begin() {
        State state = reading.state();
        if (state instanceof State.NotYet notYet) {
            session.goTo(notYet.step());
        } else if (state instanceof State.Done) {
            session.goTo("review");
        } else {
            reading.begin();
        }
    }

    private void show() {
        State state = reading.state();
        Optional<AnalysedTake> analysed = session.analysed();
        sentence.say(ReadingWords.of(state, session.draft()));
        begin.setText(ReadingWords.next(state));
        boolean going = state instanceof State.Going || state instanceof State.Stopping;
        boolean focused = begin.isFocusOwner() || stop.isFocusOwner();
        begin.setEnabled(!going);
        stop.setEnabled(state instanceof State.Going);
        if (focused) {
            (going ? stop : begin).requestFocusInWindow();
        }
        bar.setIndeterminate(state instanceof State.Stopping
                || state instanceof State.Going far && far.lengthS().isEmpty());
        bar.setValue((int) Math.round(WHOLE * ReadingWords.share(state)));
        Optional<AnalysedTake> now = state instanceof State.Done ? analysed : Optional.empty();
        if (now.isEmpty()) {
            notes.say("");
        } else if (now.get() != told) {
            session.background()
                    .run(() -> ReadingWords.done(now.get()), words -> tell(now.get(), words), session::trouble);
        }
        told = now.orElse(null);
    }

    private void tell(AnalysedTake of, String words) {
        if (of == told) {
            notes.say(words);
        }
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

    @Override
    public void shown() {
        begin.requestFocusInWindow();
    }
}
