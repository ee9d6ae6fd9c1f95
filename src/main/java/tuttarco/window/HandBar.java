package tuttarco.window;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Words;
import tuttarco.review.ByHand;
import tuttarco.review.Correcting;
import tuttarco.review.Judged;
import tuttarco.review.Reviewing;
import tuttarco.strokes.StrokeKind;

/** Sets right what was read of the chosen player in the chosen beats; a key does what each button does. */
final class HandBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Reviewing reviewing;
    private final transient Correcting correcting;
    private final JComponent step;
    private final JLabel chosen = new JLabel(" ");
    private final JButton undo;
    private final JButton redo;

    /** @param step in which the keys work, wherever the focus is */
    HandBar(JComponent step, Reviewing reviewing, ByHand byHand, Correcting correcting) {
        super(new MigLayout("insets 4 8 4 8, gap 4", "[grow, fill]8[][][][][]16[][]", "[]"));
        this.step = step;
        this.reviewing = reviewing;
        this.correcting = correcting;
        chosen.setName("review-chosen");
        chosen.putClientProperty("html.disable", true);
        add(chosen, "wmin 0");
        String here = "of the chosen player in the chosen beats";
        button("down", "Down", "Down-bow " + here, "D", () -> byHand.set(StrokeKind.DOWN))
                .setIcon(new SignIcon(BowDirection.DOWN));
        button("up", "Up", "Up-bow " + here, "U", () -> byHand.set(StrokeKind.UP))
                .setIcon(new SignIcon(BowDirection.UP));
        button("still", "Still", "No stroke " + here, "S", () -> byHand.set(StrokeKind.STILL));
        button("unseen", "Not seen", "Nothing to be seen " + here, "N", () -> byHand.set(StrokeKind.UNSEEN));
        button("absent", "Absent", "The chosen player is not there in these bars", "A", byHand::absent);
        undo = button("undo", "Undo", "Take the last correction back", "ctrl Z", correcting::undo);
        redo = button("redo", "Redo", "Make what was taken back count again", "ctrl shift Z", correcting::redo);
        reviewing.onChange().add(this::refresh);
        correcting.onChange().add(this::refresh);
        refresh();
    }

    private JButton button(String name, String text, String help, String key, Runnable done) {
        JButton button = new JButton(text);
        button.setName("review-" + name);
        button.setToolTipText(help + " (" + spoken(key) + ")");
        button.getAccessibleContext().setAccessibleDescription(help);
        button.addActionListener(e -> done.run());
        Keys.bind(step, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, () -> {
            if (button.isEnabled()) {
                done.run();
            }
        });
        add(button);
        return button;
    }

    private static String spoken(String key) {
        return key.replace("ctrl", "Control").replace("shift", "Shift");
    }

    private void refresh() {
        Optional<Judged> judged = reviewing.judged();
        chosen.setText(
                judged.map(j -> reviewing.choice().player().map(Words::plain).orElse("") + ", "
                                + j.table().spoken(reviewing.beats()))
                        .orElse(" "));
        undo.setEnabled(judged.isPresent() && correcting.canUndo());
        redo.setEnabled(judged.isPresent() && correcting.canRedo());
    }
}
