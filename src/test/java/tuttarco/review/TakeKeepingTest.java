package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.take.TakeFile;

/** Two windows, or a window and an editor, on one take. */
class TakeKeepingTest {
    /** A take that uses all a take may hold. */
    private static final String FULL = """
            {
              "version": 1,
              "title": "Evening",
              "video": "films/evening.mp4",
              "day": "2026-11-25",
              "bowing": "free",
              "players": [
                {"label": "Ida", "desk": 1, "place": "outside", "instrument": "viola",
                 "seat": {"x": 10, "y": 20, "width": 30, "height": 40}, "facing": "camera-left", "leader": true},
                {"label": "Jon", "desk": 1, "place": "inside", "instrument": "violin",
                 "seat": {"x": 50, "y": 20, "width": 30, "height": 40}}
              ],
              "part": {"file": "part.musicxml", "name": "Viola", "voice": "2", "line": "upper", "repeats": false,
                       "over": "over.txt"},
              "beats": {"heard": "clicks", "first_bar": "12a", "anchors": [{"bar": "13", "beat": 2, "time_s": 4.5}]}
            }
            """;

    @TempDir
    Path folder;

    private final WindowThread window = new WindowThread();
    private final List<Background> backgrounds = new ArrayList<>();
    private Path file;

    @BeforeEach
    void writeTake() throws Exception {
        Files.createDirectories(folder.resolve("films"));
        for (String name : List.of("films/evening.mp4", "part.musicxml", "over.txt")) {
            Files.writeString(folder.resolve(name), "never read");
        }
        file = Files.writeString(folder.resolve("evening.take.json"), FULL);
    }

    @AfterEach
    void close() {
        backgrounds.forEach(Background::close);
    }

    private Session opened() throws Exception {
        Background background = new Background(window);
        backgrounds.add(background);
        Session session = new Session(background, new TakeKeeping());
        session.open(Draft.of(TakeFile.read(file)));
        return session;
    }

    private static Draft moved(Session session, int xPx) {
        Draft draft = session.draft().orElseThrow();
        List<Player> players = new Seats(draft.players(), List.of())
                .withSeat(0, new SeatBox(xPx, 20, 30, 40))
                .players();
        return draft.withPlayers(players);
    }

    private void saved(Session session) throws Exception {
        boolean[] done = {false};
        session.whenSaved(() -> done[0] = true);
        window.until(() -> done[0]);
    }

    private int xPxOnDisk() throws Exception {
        return TakeFile.read(file).players().get(0).seat().xPx();
    }

    @Test
    void whatTheWindowDoesNotShowIsKept() throws Exception {
        Session session = opened();
        session.change(moved(session, 11));
        saved(session);
        JsonMapper json = new JsonMapper();
        JsonNode expected = json.readTree(FULL);
        ((ObjectNode) expected.at("/players/0/seat")).put("x", 11);
        // said or not, these are so
        JsonNode actual = json.readTree(file.toFile());
        assertEquals(
                TakeFile.read(Files.writeString(folder.resolve("e.take.json"), expected.toString()))
                        .players(),
                TakeFile.read(file).players());
        for (String field : List.of("version", "title", "video", "day", "bowing", "part", "beats")) {
            assertEquals(expected.get(field), actual.get(field), field);
        }
        assertEquals(expected.size(), actual.size());
    }

    @Test
    void manyChangesAreSavedInTheirOrder() throws Exception {
        Session session = opened();
        for (int x = 0; x < 300; x++) {
            session.change(moved(session, x));
        }
        saved(session);
        assertEquals(299, xPxOnDisk());
        assertEquals("Saved in evening.take.json.", session.saving().sentence());
    }

    @Test
    void closingWaitsForWhatIsNotSavedYet() throws Exception {
        Session session = opened();
        session.change(moved(session, 77));
        session.background().close();
        assertEquals(77, xPxOnDisk());
    }

    @Test
    void ofTwoWindowsTheSecondIsNotWrittenOverTheFirst() throws Exception {
        Session first = opened();
        Session second = opened();
        first.change(moved(first, 1));
        saved(first);
        second.change(moved(second, 2));
        saved(second);
        assertEquals(1, xPxOnDisk());
        assertInstanceOf(Saving.ChangedElsewhere.class, second.saving());
        assertTrue(second.saving().sentence().contains("evening.take.json was changed elsewhere"));
        assertEquals(second.saving().sentence(), second.message().sentence());
        first.change(moved(first, 3));
        saved(first);
        assertEquals(3, xPxOnDisk(), "the first goes on");
    }

    @Test
    void theSecondMayTakeWhatTheFirstSaved() throws Exception {
        Session first = opened();
        Session second = opened();
        first.change(moved(first, 1));
        saved(first);
        second.change(moved(second, 2));
        saved(second);
        second.takeTheirs();
        window.until(() -> second.saving() instanceof Saving.Saved);
        assertEquals(1, second.draft().orElseThrow().players().get(0).seat().xPx());
        second.change(moved(second, 5));
        saved(second);
        assertEquals(5, xPxOnDisk());
    }

    @Test
    void theSecondMayGoOnUnderAnotherName() throws Exception {
        Files.writeString(folder.resolve("evening 2.take.json"), "somebody's");
        Files.writeString(folder.resolve("evening 3.corrections.jsonl"), "somebody's");
        Files.writeString(folder.resolve("evening.corrections.jsonl"), "every line");
        Session first = opened();
        Session second = opened();
        first.change(moved(first, 1));
        saved(first);
        second.change(moved(second, 2));
        saved(second);
        second.keepMine();
        saved(second);
        Path own = folder.resolve("evening 4.take.json");
        assertEquals(own, second.draft().orElseThrow().file());
        assertEquals(2, TakeFile.read(own).players().get(0).seat().xPx());
        assertEquals(1, xPxOnDisk());
        assertEquals("somebody's", Files.readString(folder.resolve("evening 2.take.json")));
        assertEquals("every line", Files.readString(folder.resolve("evening 4.corrections.jsonl")));
        assertEquals("somebody's", Files.readString(folder.resolve("evening 3.corrections.jsonl")));
        second.change(moved(second, 4));
        saved(second);
        assertEquals(4, TakeFile.read(own).players().get(0).seat().xPx());
    }

    @Test
    void whatAnEditorHasBrokenIsLeftAsItIs() throws Exception {
        Session session = opened();
        Files.writeString(file, "{ half");
        session.change(moved(session, 2));
        saved(session);
        assertInstanceOf(Saving.ChangedElsewhere.class, session.saving());
        assertEquals("{ half", Files.readString(file));
    }

    @Test
    void anotherLayoutIsNoChange() throws Exception {
        Session session = opened();
        Files.writeString(file, FULL.replace("\n", " "));
        session.change(moved(session, 2));
        saved(session);
        assertEquals(2, xPxOnDisk());
    }

    @Test
    void aTakeThatWasDeletedIsWrittenAnew() throws Exception {
        Session session = opened();
        Files.delete(file);
        session.change(moved(session, 2));
        saved(session);
        assertEquals(2, xPxOnDisk());
    }

    @Test
    void aTakeThatCameUpBesideAVideoMeanwhileIsNotWrittenOver() throws Exception {
        Files.delete(file);
        Background background = new Background(window);
        backgrounds.add(background);
        Session session = new Session(background, new TakeKeeping());
        session.open(Draft.ofVideo(Files.writeString(folder.resolve("evening.mp4"), "never read")));
        Files.writeString(file, FULL);
        session.change(
                session.draft().orElseThrow().withPlayers(SeatsTest.four().players()));
        saved(session);
        assertInstanceOf(Saving.ChangedElsewhere.class, session.saving());
        assertEquals(FULL, Files.readString(file));
    }

    @Test
    void whereNothingCanBeWrittenThatIsSaidAndCanBeTriedAgain() throws Exception {
        Session session = opened();
        Files.delete(file);
        Files.createDirectories(file.resolve("in the way"));
        session.change(moved(session, 2));
        saved(session);
        assertFalse(session.saving() instanceof Saving.Saved, session.saving().toString());
        Files.delete(file.resolve("in the way"));
        Files.delete(file);
        session.saveAgain();
        saved(session);
        assertEquals(2, xPxOnDisk());
    }
}
