package tuttarco.window;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.Type;

/** A list of things told in sentences: a heading each, and words below that wrap where the list ends. */
final class ToldList<T> extends JList<T> {
    private static final long serialVersionUID = 1L;

    private final DefaultListModel<T> model = new DefaultListModel<>();

    ToldList(String name, String spokenName, Function<T, String> heading, Function<T, String> words) {
        setName(name);
        getAccessibleContext().setAccessibleName(spokenName);
        setModel(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Told<>(heading, words));
    }

    /** A list keeps the heights of its cells, which depend on its width. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean otherWidth = width != getWidth();
        super.setBounds(x, y, width, height);
        if (otherWidth) {
            setFixedCellHeight(1);
            setFixedCellHeight(-1);
        }
    }

    void tell(List<T> things) {
        model.clear();
        model.addAll(things);
    }

    /** No going to what begins with a letter: letters do something else. */
    @Override
    public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
        return -1;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    private static final class Told<T> extends JPanel implements ListCellRenderer<T> {
        private static final long serialVersionUID = 1L;

        private final transient Function<T, String> heading;
        private final transient Function<T, String> words;
        private final JLabel head = new JLabel();
        private final Sentence text = new Sentence("told");

        Told(Function<T, String> heading, Function<T, String> words) {
            super(new MigLayout("insets 6 10 6 10, gap 0, fillx, wrap 1", "[grow, fill]", ""));
            this.heading = heading;
            this.words = words;
            head.putClientProperty("html.disable", true);
            head.setFont(Labels.scaled(Type.strong()));
            add(head, "wmin 0");
            add(text);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends T> list, T value, int index, boolean selected, boolean focused) {
            head.setText(heading.apply(value));
            text.setText(words.apply(value));
            setBackground(selected ? list.getSelectionBackground() : list.getBackground());
            head.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
            text.setForeground(head.getForeground());
            setBorder(BorderFactory.createEmptyBorder());
            getAccessibleContext().setAccessibleName(value.toString());
            int widthPx = Math.max(1, list.getWidth());
            setSize(widthPx, Short.MAX_VALUE);
            text.setSize(widthPx - getInsets().left - 20, Short.MAX_VALUE);
            invalidate();
            setPreferredSize(null);
            Dimension needed = getPreferredSize();
            setPreferredSize(new Dimension(widthPx, needed.height));
            return this;
        }
    }
}
