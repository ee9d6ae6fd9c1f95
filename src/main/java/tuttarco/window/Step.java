package tuttarco.window;

import javax.swing.JComponent;

/** One step of the work, in the order of the work. Made and used on the event thread. */
interface Step {
    /** Its name in the row of steps; a word or two. */
    String title();

    /** Its key, which its components' names begin with: lower-case letters and hyphens. */
    String key();

    JComponent view();

    /** It comes into sight. */
    default void shown() {}

    /** It goes out of sight: playing stops. */
    default void hidden() {}
}
