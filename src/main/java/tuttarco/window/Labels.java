package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import tuttarco.chart.Type;

/** Words of a step: headings, text that goes on in the next line, named buttons. */
final class Labels {
    private Labels() {}

    /** A typeface of the charts in the size of this screen. */
    static Font scaled(Font font) {
        return font.deriveFont(UIScale.scale(font.getSize2D()));
    }

    static JLabel heading(String text) {
        JLabel heading = new JLabel(text);
        heading.setFont(scaled(Type.heading()));
        return heading;
    }

    /** Text of several lines; whatever stands in it is shown as it is. */
    static JTextArea text(String name, String text) {
        JTextArea area = new JTextArea(text);
        area.setName(name);
        area.setEditable(false);
        area.setFocusable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        return area;
    }

    /** Text for a dialogue. */
    static JTextArea wrapped(String text) {
        JTextArea area = text("words", text);
        area.setColumns(50);
        return area;
    }

    /** A button that does something. */
    static JButton button(String name, String text, char mnemonic, Runnable done) {
        JButton button = new JButton(text);
        button.setName(name);
        button.setMnemonic(mnemonic);
        button.addActionListener(e -> done.run());
        return button;
    }

    /** A label for a component, which is called so for those who can't see it. */
    static JLabel of(String text, JComponent component) {
        JLabel label = new JLabel(text);
        label.setLabelFor(component);
        component.getAccessibleContext().setAccessibleName(text);
        return label;
    }
}
