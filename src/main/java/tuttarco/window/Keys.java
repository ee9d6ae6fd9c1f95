package tuttarco.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys that do something. */
final class Keys {
    private Keys() {}

    /**
     * Has a key do something.
     *
     * @param when one of the conditions of {@link JComponent}
     * @param key as {@link KeyStroke#getKeyStroke(String)} reads it
     */
    static void bind(JComponent component, int when, String key, Runnable done) {
        component.getInputMap(when).put(KeyStroke.getKeyStroke(key), key);
        component.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                done.run();
            }
        });
    }
}
