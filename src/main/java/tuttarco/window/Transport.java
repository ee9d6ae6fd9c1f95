package tuttarco.window;

import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JPanel;
import tuttarco.playback.Loop;

/**
 * The bar below a picture: play and pause, one picture back or on, speed, loop, and where the clip stands. Its keys
 * work wherever the focus is in the step it stands in.
 */
public final class Transport extends JPanel {
    private static final long serialVersionUID = 1L;

    /**
     * @param stepKey begins the names of the controls
     * @param stretch what is looped when the user asks for it: the bar at the place where the clip stands, say; empty if
     *     there is none
     */
    public Transport(String stepKey, PictureView view, Supplier<Optional<Loop>> stretch) {}
}
