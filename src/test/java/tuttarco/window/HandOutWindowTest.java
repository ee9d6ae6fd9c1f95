package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;

/** What is handed out, and where it can't be. */
class HandOutWindowTest extends ReadWindowTest {
    private void handOut() throws Exception {
        openAt(KeyEvent.VK_6);
    }

    private void write() {
        window().button("hand-out-write").click();
    }

    private String outcome() {
        return window().textBox("hand-out-outcome").text();
    }

    private void untilSaid(Predicate<String> sentence) {
        ReadSample.until(
                "it says how it went",
                () -> sentence.test(
                        ((JTextComponent) window().textBox("hand-out-outcome").target()).getText()));
    }

    @Test
    void withoutAReadTakeItSaysWhatComesFirst() {
        requireOpenFirst(KeyEvent.VK_6, "hand-out");
    }

    @Test
    void whatIsTickedIsWritten() throws Exception {
        handOut();
        assertEquals(
                folder.resolve("unified for the section").toString(),
                window().textBox("hand-out-folder").text());
        pictures("hand-out");
        Path out = folder.resolve("handed");
        window().textBox("hand-out-folder").setText(out.toString());
        window().checkBox("hand-out-data").check();
        window().checkBox("hand-out-marked-1").check();
        write();
        untilSaid(s -> s.startsWith("Written to "));
        List<String> names = ReadSample.names(out);
        assertTrue(
                names.containsAll(List.of(
                        "report.html",
                        "results.json",
                        "strokes.csv",
                        "sheets/desk-1-inside.pdf",
                        "captions.vtt",
                        "chapters.vtt",
                        "charts/section-by-beat.svg",
                        "unified as bowed by Desk 1 outside.musicxml",
                        "unified as bowed by Desk 1 outside.marks.txt")),
                names.toString());
        assertTrue(Files.readString(out.resolve("results.json")).contains("as bowed by"), "noted with the others");
        pictures("hand-out-after");
    }

    @Test
    void onlyWhatIsTickedIsWritten() throws Exception {
        handOut();
        Path out = folder.resolve("report only");
        window().textBox("hand-out-folder").setText(out.toString());
        window().checkBox("hand-out-captions").uncheck();
        window().checkBox("hand-out-sheets").uncheck();
        write();
        untilSaid(s -> s.startsWith("Written to "));
        assertTrue(ReadSample.names(out).stream().allMatch(n -> n.equals("report.html") || n.startsWith("charts/")));
        window().checkBox("hand-out-report").uncheck();
        write();
        untilSaid(s -> s.startsWith("Nothing is chosen"));
    }

    /** A run with names may have left it. */
    @Test
    void whatLiesThereFromBeforeIsTold() throws Exception {
        handOut();
        Path out = Files.createDirectory(folder.resolve("handed before"));
        Files.writeString(out.resolve("captions.vtt"), "WEBVTT");
        Files.writeString(out.resolve("notes.txt"), "mine");
        window().textBox("hand-out-folder").setText(out.toString());
        for (String kind : List.of("report", "captions")) {
            window().checkBox("hand-out-" + kind).uncheck();
        }
        write();
        untilSaid(s -> s.startsWith("Written to "));
        assertTrue(
                outcome().contains(" 1 file lies there from before and may name players or show faces: captions.vtt. "),
                outcome());
        pictures("hand-out-left");
    }

    /** Nobody is known by what is written unless that is ticked, and what is given away then is said. */
    @Test
    void whatIsGivenAwayIsSaid() throws Exception {
        handOut();
        assertTrue(privacy().startsWith("Players are called by desk and place. Faces are blurred"), privacy());
        window().checkBox("hand-out-names").requireNotSelected().check();
        assertTrue(privacy().startsWith("Names are written: "), privacy());
        window().checkBox("hand-out-faces").requireNotSelected().check();
        assertTrue(privacy().contains("Faces are shown as filmed: "), privacy());
        pictures("hand-out-shown");
    }

    private String privacy() {
        return window().textBox("hand-out-privacy").text();
    }

    /** What was stopped leaves the folder as it was, and can be begun again. */
    @Test
    void writingCanBeStopped() throws Exception {
        handOut();
        Path out = folder.resolve("stopped");
        window().textBox("hand-out-folder").setText(out.toString());
        JButton write = window().button("hand-out-write").target();
        JButton stop = (JButton) robot().finder().findByName("hand-out-stop", false);
        GuiActionRunner.execute(() -> {
            write.doClick();
            stop.doClick();
        });
        untilSaid(s -> s.equals("Stopped; nothing was left half written."));
        assertFalse(Files.exists(out));
        window().button("hand-out-write").requireEnabled();
    }

    @Test
    void whereNothingCanBeWrittenItSaysWhy() throws Exception {
        handOut();
        Path file = Files.writeString(folder.resolve("in-the-way"), "mine");
        window().textBox("hand-out-folder").setText(file.resolve("out").toString());
        write();
        untilSaid(s -> s.contains("it is a file, name a folder instead"));
        assertEquals("mine", Files.readString(file));
        window().textBox("hand-out-folder").setText("  ");
        write();
        untilSaid(s -> s.equals("Choose a folder to write to."));
        assertFalse(outcome().isEmpty());
    }
}
