package tuttarco.window;

import java.awt.Dimension;
import javax.swing.JTextArea;
import javax.swing.UIManager;

/** Words that wrap where the window ends; they can be read out and copied, not changed. */
final class Sentence extends JTextArea {
    private static final long serialVersionUID = 1L;

    Sentence(String name) {
        setName(name);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(null);
        setFont(UIManager.getFont("defaultFont"));
    }

    void say(String text) {
        setText(text);
        getAccessibleContext().setAccessibleName(text);
        revalidate();
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }
}
