package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.cli.TinyTake;
import tuttarco.review.Draft;
import tuttarco.video.TestClips;

/** From the note on filming to an open take, and what is wrong with a file. */
class OpenWindowTest extends WindowTest {
    @TempDir
    static Path state;

    @TempDir
    Path folder;

    private boolean writable = true;

    @Override
    Optional<Path> stateFolder() {
        return Optional.of(state);
    }

    @Override
    boolean writable(Path of) {
        return writable;
    }

    private static void until(String what, BooleanSupplier so) {
        Pause.pause(new Condition(what) {
            @Override
            public boolean test() {
                return Boolean.TRUE.equals(GuiActionRunner.execute(so::getAsBoolean));
            }
        });
    }

    private void read() {
        if (Files.notExists(state.resolve("note-on-filming-read.txt"))) {
            pictures("open-note");
            window().button("open-note-read").click();
            until("that is remembered", () -> Files.exists(state.resolve("note-on-filming-read.txt")));
        }
        window().button("open-choose").requireVisible();
    }

    @Test
    void aDroppedVideoIsOpenedAndRemembered() throws Exception {
        read();
        Path video = folder.resolve("clip.mkv");
        TinyTake.writeClip(video, 12, 30);
        drop(video);
        until("it is open", () -> session().draft().isPresent());
        assertEquals(Draft.takeOf(video), session().draft().orElseThrow().file());
        assertTrue(
                session().message().sentence().contains("no sound"),
                session().message().sentence());
        until("it is in the list", () -> window().list("open-recent").contents().length > 0);
        assertTrue(window().list("open-recent").contents()[0].contains("clip.mkv"));
        pictures("open");
        window().button("open-go-on").click();
        window().panel("seats").requireVisible();
    }

    @Test
    void whatMakesReadingHardIsTold() throws Exception {
        read();
        Path video = folder.resolve("night.mkv");
        TestClips.write(video, List.of(0.0, 0.04, 0.08), timeS -> TestClips.plain(320, 160, 0));
        drop(video);
        until("it is open", () -> session().draft().isPresent());
        String told = window().textBox("message").text();
        assertTrue(told.startsWith("Please note: "), told);
        for (String word : List.of("no sound", "darker", "film with more light", "only 320 by 160 pixels")) {
            assertTrue(told.contains(word), told);
        }
    }

    @Test
    void whereNothingCanBeSavedAnotherFolderIsAskedFor() throws Exception {
        read();
        writable = false;
        Path video = folder.resolve("clip.mkv");
        TinyTake.writeClip(video, 3, 30);
        drop(video);
        until("that is told", () -> session().message().sentence().contains("Nothing can be saved in the folder"));
        assertEquals(Optional.empty(), session().draft());
        window().button("open-elsewhere").requireVisible().requireEnabled();
        assertEquals(List.of("clip.mkv"), ReadSample.names(folder));
    }

    @Test
    void whatIsNoVideoIsToldInOneSentence() throws Exception {
        read();
        drop(Files.writeString(folder.resolve("words.txt"), "no video"));
        until("that is told", () -> session().message().sentence().contains("words.txt can't be read as a video"));
        drop(folder, folder);
        assertTrue(session().message().sentence().contains("one file at a time"));
        drop(folder);
        until("that is told", () -> session().message().sentence().contains("is a folder"));
    }

    @Test
    void theNoteCanBeReadAgain() {
        read();
        window().button("open-note-again").click();
        window().textBox("open-note").requireVisible();
        assertTrue(window().textBox("open-note").text().contains("guardians"));
        window().button("open-note-read").click();
        window().button("open-choose").requireVisible();
    }
}
