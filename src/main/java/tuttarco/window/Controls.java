package tuttarco.window;

import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import tuttarco.chart.Type;

/** Controls as every step has them: named, spoken, and reached by a key. */
final class Controls {
    /** A text of Swing that begins like a page is one, unless this is said. */
    private static final String NO_PAGE = "html.disable";

    /** Lines of a sentence that has its room kept, so that nothing moves when it changes. */
    private static final int LINES = 3;

    private Controls() {}

    /** Room for a sentence of up to three lines, as a constraint of the layout. */
    static String sentenceRoom(JComponent sentence) {
        int linePx = sentence.getFontMetrics(sentence.getFont()).getHeight();
        return "growx, wmin 0, h " + LINES * linePx + "!";
    }

    /**
     * A button.
     *
     * @param mnemonic the letter that presses it with Alt; 0 for none
     */
    static JButton button(String name, String text, char mnemonic, String tip, Runnable pressed) {
        JButton button = new JButton(text);
        dress(button, name, mnemonic, tip);
        button.addActionListener(e -> pressed.run());
        return button;
    }

    static <B extends AbstractButton> B dress(B button, String name, char mnemonic, String tip) {
        button.setName(name);
        button.setMnemonic(mnemonic);
        button.setToolTipText(tip);
        button.getAccessibleContext().setAccessibleDescription(tip);
        return button;
    }

    /** A word or two before a control, whose mnemonic goes to it. */
    static JLabel label(String text, char mnemonic, JComponent control) {
        JLabel label = new JLabel(text);
        label.setLabelFor(control);
        label.setDisplayedMnemonic(mnemonic);
        control.getAccessibleContext().setAccessibleName(text);
        return label;
    }

    static JLabel heading(String text) {
        JLabel heading = new JLabel(text);
        heading.setFont(Type.strong().deriveFont(heading.getFont().getSize2D()));
        return heading;
    }

    /** Words of the user's in one line. */
    static JLabel words(String name) {
        JLabel words = new JLabel(" ");
        words.setName(name);
        words.putClientProperty(NO_PAGE, true);
        return words;
    }
}
