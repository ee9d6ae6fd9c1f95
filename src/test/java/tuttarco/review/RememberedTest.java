package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {
    @TempDir
    Path folder;

    private Remembered remembered() {
        return new Remembered(Optional.of(folder.resolve("state")));
    }

    private Path video(String name) throws Exception {
        return Files.writeString(folder.resolve(name), "");
    }

    private List<Path> recent() {
        return remembered().recent().stream().map(Remembered.Recent::file).toList();
    }

    private void open(Path video) throws Exception {
        remembered().opened(video, Draft.ofVideo(video));
    }

    @Test
    void theLatestComesFirstAndEachOnce() throws Exception {
        Path a = video("a.mp4");
        Path b = video("b.mp4");
        open(a);
        open(b);
        open(a);
        assertEquals(List.of(a, b), recent());
    }

    @Test
    void tenAreKept() throws Exception {
        List<Path> expected = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            Path video = video(i + ".mp4");
            open(video);
            expected.add(0, video);
        }
        assertEquals(expected.subList(0, 10), recent());
    }

    @Test
    void aTakeStandsForItsVideo() throws Exception {
        Path video = video("a.mp4");
        open(video);
        Draft draft = Draft.ofVideo(video);
        remembered().opened(draft.file(), draft);
        assertEquals(List.of(draft.file()), recent());
    }

    @Test
    void whatIsGoneIsShownAsGoneAndCanBeTakenOff() throws Exception {
        Path a = video("a.mp4");
        Path b = video("b.mp4");
        open(a);
        open(b);
        Files.delete(a);
        assertEquals(
                List.of(new Remembered.Recent(b, true), new Remembered.Recent(a, false)),
                remembered().recent());
        remembered().forget(a);
        assertEquals(List.of(b), recent());
    }

    @Test
    void aDamagedListIsReadAsFarAsItGoes() throws Exception {
        Path a = video("a.mp4");
        open(a);
        Path list = folder.resolve("state/recent-takes.txt");
        Files.writeString(list, "relative.mp4\n\n\0\n" + a + "\n" + a + "\n");
        assertEquals(List.of(a), recent());
        Files.write(list, new byte[] {(byte) 0xC3, 0x28, 10});
        assertEquals(List.of(), recent());
        open(a);
        assertEquals(List.of(a), recent());
    }

    @Test
    void theNoteIsReadOnce() throws Exception {
        assertFalse(remembered().noteRead());
        remembered().readNote();
        assertTrue(remembered().noteRead());
    }

    @Test
    void whoHasNoFolderIsNotRemembered() throws Exception {
        Remembered nowhere = new Remembered(Optional.empty());
        Path a = video("a.mp4");
        nowhere.opened(a, Draft.ofVideo(a));
        nowhere.readNote();
        assertEquals(List.of(), nowhere.recent());
        assertFalse(nowhere.noteRead());
    }
}
