package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.event.KeyEvent;
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
        pictures("review-first");
    }

    @Test
    void troubleIsToldInWords() {
        GuiActionRunner.execute(() -> session().trouble("The part does not fit."));
        assertEquals(
                "Please note: The part does not fit.",
                window().textBox("message").text());
    }
}
