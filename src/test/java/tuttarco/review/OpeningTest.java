package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.cli.TinyTake;
import tuttarco.files.InputException;
import tuttarco.take.TakeFile;
import tuttarco.video.TestClips;

class OpeningTest {
    @TempDir
    Path folder;

    private final WindowThread window = new WindowThread();
    private final Background background = new Background(window);
    private final Session session = new Session(background, new TakeKeeping());

    @AfterEach
    void close() {
        background.close();
    }

    private Opening opening() {
        return new Opening(session, new Remembered(Optional.of(folder.resolve("state"))));
    }

    private Path clip(String name) throws Exception {
        Path video = folder.resolve(name);
        TinyTake.writeClip(video, 4, 30);
        return video;
    }

    @Test
    void aVideoIsOpenedAndItsTakeWillLieBesideIt() throws Exception {
        Path video = clip("evening.mkv");
        Opening opening = opening();
        opening.open(video);
        window.until(() -> session.draft().isPresent() && !opening.recent().isEmpty());
        assertEquals(
                folder.resolve("evening.take.json"),
                session.draft().orElseThrow().file());
        assertEquals(List.of(), session.draft().orElseThrow().players());
        assertEquals(video, opening.recent().get(0).file());
        assertEquals(320, opening.found().orElseThrow().facts().widthPx());
    }

    @Test
    void theTakeBesideAVideoIsOpenedRatherThanWrittenOver() throws Exception {
        Path video = clip("evening.mkv");
        Draft set = Draft.ofVideo(video).withPlayers(SeatsTest.four().players());
        TakeFile.write(set.take().orElseThrow(), set.file());
        byte[] before = Files.readAllBytes(set.file());
        Opening opening = opening();
        opening.open(video);
        window.until(() -> session.draft().isPresent());
        assertEquals(set, session.draft().orElseThrow());
        background.close();
        assertArrayEquals(before, Files.readAllBytes(set.file()));
    }

    @Test
    void whatIsWrongIsOneSentence() throws Exception {
        Path text = Files.writeString(folder.resolve("words.mp4"), "no video");
        Path take = Files.writeString(folder.resolve("a.take.json"), "{}");
        for (Path wrong : List.of(text, take, folder, folder.resolve("none.mp4"), folder.resolve("none.take.json"))) {
            String said = assertThrows(InputException.class, () -> Opening.find(wrong))
                    .getMessage();
            String name =
                    wrong.equals(folder) ? "is a folder" : wrong.getFileName().toString();
            assertTrue(said.contains(name) && said.contains(";"), said);
        }
    }

    @Test
    void whatWillMakeTheReadingHardIsToldWithWhatToDo() throws Exception {
        Path dark = folder.resolve("dark.mkv");
        TestClips.write(dark, List.of(0.0, 0.04, 0.08), timeS -> TestClips.plain(640, 360, 8));
        List<String> notes = Opening.find(dark).notes();
        assertEquals(2, notes.size(), notes.toString());
        assertTrue(
                notes.get(0).contains("no sound") && notes.get(0).contains("a list or a steady tempo"),
                notes.toString());
        assertTrue(notes.get(1).contains("darker") && notes.get(1).contains("more light"), notes.toString());
        Path small = folder.resolve("small.mkv");
        TestClips.write(small, List.of(0.0, 0.04, 0.08), timeS -> TestClips.plain(160, 120, 90));
        assertTrue(Opening.find(small).notes().get(1).contains("only 160 by 120 pixels"));
        Path well = folder.resolve("well.mkv");
        TestClips.write(well, List.of(0.0, 0.04, 0.08), timeS -> TestClips.plain(640, 360, 90));
        assertEquals(1, Opening.find(well).notes().size());
    }

    @Test
    void whereNothingCanBeSavedTheVideoIsCopiedToAnotherPlace() throws Exception {
        Path video = clip("evening.mkv");
        Path other = folder.resolve("other");
        Opening opening = new Opening(session, new Remembered(Optional.empty()), place -> place.equals(other));
        opening.open(video);
        window.until(() -> opening.state() instanceof Opening.State.NeedsPlace);
        assertTrue(session.draft().isEmpty());
        assertTrue(session.message().sentence().contains("evening.mkv"));
        opening.copyTo(other);
        window.until(() -> session.draft().isPresent());
        assertEquals(other.resolve("evening.mkv"), session.draft().orElseThrow().video());
        assertEquals(-1, Files.mismatch(video, other.resolve("evening.mkv")));
    }

    @Test
    void aTakeIsCopiedWithAllItNames() throws Exception {
        TinyTake.writeClip(folder.resolve("clip.mkv"), 4, 30);
        Path take = TinyTake.writeTexts(folder);
        Path other = folder.resolve("other");
        Opening opening = new Opening(session, new Remembered(Optional.empty()), place -> place.equals(other));
        opening.open(take);
        window.until(() -> opening.state() instanceof Opening.State.NeedsPlace);
        opening.copyTo(other);
        window.until(() -> session.draft().isPresent());
        assertEquals(
                other.resolve("tiny.take.json"), session.draft().orElseThrow().file());
        assertEquals(
                TakeFile.read(take).players(),
                TakeFile.read(other.resolve("tiny.take.json")).players());
        Path copied = other.resolve("part.bowing.txt");
        assertEquals(Optional.of(copied), session.draft().orElseThrow().part());
    }

    @Test
    void nothingIsCopiedOverWhatLiesThere() throws Exception {
        Path video = clip("evening.mkv");
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.writeString(other.resolve("evening.mkv"), "mine");
        Opening opening = new Opening(session, new Remembered(Optional.empty()), place -> place.equals(other));
        opening.open(video);
        window.until(() -> opening.state() instanceof Opening.State.NeedsPlace);
        opening.copyTo(other);
        window.until(() -> opening.state() instanceof Opening.State.Waiting);
        assertEquals("mine", Files.readString(other.resolve("evening.mkv")));
        assertTrue(
                session.message().sentence().contains("already"),
                session.message().sentence());
    }

    @Test
    void drawingTheSampleCanBeStoppedAndLeavesNothing() throws Exception {
        Opening opening = opening();
        opening.sample(folder);
        window.until(() -> opening.state() instanceof Opening.State.Drawing drawing && drawing.percent() > 0);
        opening.stop();
        assertInstanceOf(Opening.State.Waiting.class, opening.state());
        background.close();
        assertTrue(session.draft().isEmpty());
        assertTrue(Files.notExists(folder.resolve("tuttarco-sample")));
    }
}
