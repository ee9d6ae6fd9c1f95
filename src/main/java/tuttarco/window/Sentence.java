package tuttarco.window;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Words that wrap where the window ends; they can be read out and copied, not changed. */
class Sentence extends JTextArea {
    private static final long serialVersionUID = 1L;

    Sentence(String name) {
        setName(name);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        // a look puts a border of its own where there is none
        setBorder(BorderFactory.createEmptyBorder());
        setFont(UIManager.getFont("defaultFont"));
    }

    final void say(String text) {
        setText(text);
        getAccessibleContext().setAccessibleName(text);
        revalidate();
    }

    /** How high it is depends on how wide it is. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean otherWidth = width != getWidth();
        super.setBounds(x, y, width, height);
        if (otherWidth) {
            revalidate();
        }
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }
}
