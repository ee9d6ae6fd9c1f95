package tuttarco.window;

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
        Controls.key(component, when, KeyStroke.getKeyStroke(key), e -> done.run());
    }
}
