package tuttarco.window;

import java.awt.Component;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** Shows the choices of a list by words for them. */
final class WordRenderer<T> extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    private final transient Function<T, String> word;

    WordRenderer(Function<T, String> word) {
        this.word = word;
    }

    @Override
    @SuppressWarnings("unchecked")
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focused) {
        super.getListCellRendererComponent(list, value == null ? " " : word.apply((T) value), index, selected, focused);
        return this;
    }
}
