package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import tuttarco.report.Fixtures;
import tuttarco.review.Draft;
import tuttarco.review.TakeReading;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Read the bows before, while and after, with a reader that waits half way through. */
class ReadingWindowTest extends WindowTest {
    @Override
    TakeReading.Reader reader() {
        return (draft, progress) -> {
            progress.reached(9.5, 19);
            new CountDownLatch(1).await();
            throw new AssertionError("nobody lets it go on");
        };
    }

    private void untilSaid(String sentence) {
        ReadSample.until(
                sentence,
                () -> ((javax.swing.JTextArea)
                                window().textBox("reading-sentence").target())
                        .getText()
                        .startsWith(sentence));
    }

    @Test
    void howFarItIsIsSeen() throws Exception {
        Take sample = TakeFile.read(Path.of("sample-clips", "unified.take.json"));
        GuiActionRunner.execute(() -> session().open(Draft.of(sample)));
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_4);
        pictures("reading");
        window().button("reading-begin").click();
        untilSaid("Read 0:09 of 0:19");
        assertEquals(
                500,
                GuiActionRunner.execute(
                        () -> window().progressBar("reading-bar").target().getValue()));
        pictures("reading-half");
        window().button("reading-stop").click();
        untilSaid("Stopped after 0:09 of the video");
        GuiActionRunner.execute(() -> session().analysed(Optional.of(Fixtures.unified())));
        untilSaid("The bows are read");
        assertTrue(window().button("reading-begin").isEnabled());
        pictures("reading-done");
    }
}
