package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;

class StepsWindowTest extends WindowTest {
    @Test
    void theStepsAreReachedByMouseAndByKey() {
        window().toggleButton("step-seats").click();
        window().panel("seats").requireVisible();
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_5);
        window().panel("review").requireVisible();
        window().toggleButton("step-review").requireSelected();
        assertTrue(Files.exists(picture("steps", Theme.NIGHT, new Dimension(1340, 710))));
    }

    @Test
    void troubleIsToldInWords() {
        GuiActionRunner.execute(() -> session().trouble("The part does not fit."));
        assertEquals(
                "Please note: The part does not fit.", window().label("message").text());
    }
}
