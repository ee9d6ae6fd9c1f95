package tuttarco.window;

import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The steps in a row, numbered; Control and the number goes to one. */
final class StepRow extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient List<Step> steps;
    private final JButton next = new JButton();
    private int current;

    StepRow(List<Step> steps, IntConsumer chosen) {
        super(new MigLayout("insets 8 12 8 12, gap 4, fillx", "", ""));
        this.steps = steps;
        setName("steps");
        getAccessibleContext().setAccessibleName("Steps of the work");
        ButtonGroup group = new ButtonGroup();
        for (int i = 0; i < steps.size(); i++) {
            int index = i;
            JToggleButton button =
                    new JToggleButton((i + 1) + "  " + steps.get(i).title());
            button.setName("step-" + steps.get(i).key());
            button.setToolTipText("Control " + (i + 1));
            button.getAccessibleContext()
                    .setAccessibleName("Step " + (i + 1) + ", " + steps.get(i).title());
            button.addActionListener(e -> chosen.accept(index));
            group.add(button);
            add(button);
            Keys.bind(this, JComponent.WHEN_IN_FOCUSED_WINDOW, "ctrl " + (i + 1), () -> chosen.accept(index));
        }
        next.setName("step-next");
        next.setMnemonic('X');
        next.setToolTipText("On to the step that comes next");
        next.addActionListener(e -> chosen.accept(current + 1));
        add(next, "pushx, alignx right");
    }

    void choose(int index) {
        current = index;
        ((JToggleButton) getComponent(index)).setSelected(true);
        boolean last = index == steps.size() - 1;
        next.setVisible(!last);
        next.setText(last ? "" : "Next: " + steps.get(index + 1).title());
    }
}
