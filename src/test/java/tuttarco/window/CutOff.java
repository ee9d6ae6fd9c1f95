package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.FontMetrics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.Icon;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;

/** Finds words that have no room where they stand, and controls that lie beside what holds them. */
final class CutOff {
    private CutOff() {}

    /** What is cut off of all that is seen in a window, in words. */
    static List<String> in(Container window) {
        List<String> cut = new ArrayList<>();
        look(window, false, cut);
        return cut;
    }

    private static void look(Container holder, boolean scrolled, List<String> cut) {
        boolean scrolls = scrolled || holder instanceof JViewport;
        for (Component component : holder.getComponents()) {
            if (!component.isShowing() || component instanceof CellRendererPane) {
                continue;
            }
            if (!scrolls && component instanceof JComponent control && control.isFocusable()) {
                whole(control, cut);
            }
            if (component instanceof JLabel label) {
                words(label, label.getText(), label.getIcon(), cut);
            } else if (component instanceof AbstractButton button) {
                words(button, button.getText(), button.getIcon(), cut);
            } else if (component instanceof JTextArea area && !scrolls) {
                if (!area.getText().isBlank() && area.getPreferredSize().height > area.getHeight()) {
                    cut.add(told(area) + " says more than is seen: " + area.getText());
                }
            } else if (component instanceof JComboBox<?> box) {
                choice(box, cut);
            }
            if (component instanceof Container inner && !(component instanceof JComboBox<?>)) {
                look(inner, scrolls, cut);
            }
        }
    }

    /** The mark of the focus around it may reach beyond. */
    private static void whole(JComponent control, List<String> cut) {
        int mark = UIScale.scale(UIManager.getInt("Component.focusWidth"));
        Rectangle inner = new Rectangle(control.getSize());
        inner.grow(-mark, -mark);
        boolean words = !(control instanceof JLabel label) || !label.getText().isEmpty();
        if (words && (inner.isEmpty() || !control.getVisibleRect().contains(inner))) {
            cut.add(told(control) + " of " + control.getSize() + " is seen only in " + control.getVisibleRect());
        }
    }

    /** As Swing shortens them: with three points. */
    private static void words(JComponent component, String words, Icon icon, List<String> cut) {
        if (words == null || words.isBlank()) {
            return;
        }
        Insets insets = component.getInsets();
        Rectangle room = new Rectangle(
                component.getWidth() - insets.left - insets.right, component.getHeight() - insets.top - insets.bottom);
        FontMetrics metrics = component.getFontMetrics(component.getFont());
        String seen = SwingUtilities.layoutCompoundLabel(
                component, metrics, words, icon, 0, 0, 0, 0, room, new Rectangle(), new Rectangle(), 4);
        if (!seen.equals(words) || metrics.getAscent() > component.getHeight()) {
            cut.add(told(component) + " shows only '" + seen + "' of '" + words + "'");
        }
    }

    private static void choice(JComboBox<?> box, List<String> cut) {
        Component words =
                renderer(box).getListCellRendererComponent(new JList<>(), box.getSelectedItem(), -1, false, false);
        int arrow = box.getHeight();
        if (words.getPreferredSize().width + arrow > box.getWidth()) {
            cut.add(told(box) + " shows only a part of '" + box.getSelectedItem() + "'");
        }
    }

    @SuppressWarnings("unchecked")
    private static ListCellRenderer<Object> renderer(JComboBox<?> box) {
        return (ListCellRenderer<Object>) box.getRenderer();
    }

    private static String told(Component component) {
        String name = component.getName();
        return component.getClass().getSimpleName() + " "
                + (name == null ? "in " + component.getParent().getName() : name);
    }
}
