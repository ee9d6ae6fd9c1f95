package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A window in which the sample is open and its bows are read. */
abstract class ReadWindowTest extends WindowTest {
    @TempDir
    static Path folder;

    private static ReadSample sample;

    @BeforeAll
    static void read() throws Exception {
        sample = ReadSample.in(folder);
    }

    /** Opens it as nobody has corrected it, and goes to a step by its number. */
    final void openAt(int digit) throws Exception {
        sample.open(session());
        press(KeyEvent.VK_CONTROL, digit);
        robot().waitForIdle();
    }

    /** Goes to a step while nothing is open, which leads to what comes first. */
    final void requireOpenFirst(int digit, String step) {
        press(KeyEvent.VK_CONTROL, digit);
        assertEquals(
                "Open a video or a take first.",
                window().textBox(step + "-first").text());
        window().button(step + "-first-go").click();
        window().panel("open").requireVisible();
    }
}
