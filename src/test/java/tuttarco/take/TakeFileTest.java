package tuttarco.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.beats.Beat;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.files.OutputException;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

class TakeFileTest {
    @TempDir
    Path folder;

    private Take good() throws IOException, InputException {
        return TakeFile.read(TakeFolders.with(folder, TakeFolders.GOOD));
    }

    private String refusal(String take) throws IOException {
        Path file = TakeFolders.with(folder, take);
        InputException e = assertThrows(InputException.class, () -> TakeFile.read(file));
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void aTakeIsReadWithItsFilesResolved() throws Exception {
        Take take = good();
        assertEquals("Serenade, bars 17 to 32", take.title());
        assertEquals(folder.resolve("strings.mp4"), take.video());
        assertEquals(Optional.of(folder.resolve("parts/serenade.bowing.txt")), take.part());
        assertEquals(new BeatsGiven.Steady(92.5, 1.25), take.beats());
        assertEquals(Bowing.UNIFIED, take.bowing());
        assertEquals(
                List.of(
                        new Player(
                                "Desk 1 outside",
                                1,
                                Place.OUTSIDE,
                                Instrument.VIOLIN,
                                new SeatBox(10, 20, 300, 400),
                                Optional.of(Facing.CAMERA_LEFT),
                                true),
                        new Player(
                                "<b>Desk 1</b> & inside",
                                1,
                                Place.INSIDE,
                                Instrument.VIOL,
                                new SeatBox(320, 20, 300, 400),
                                Optional.of(Facing.AWAY_RIGHT),
                                false)),
                take.players());
    }

    @Test
    void aWrittenTakeIsReadAgainAsItWas() throws Exception {
        Take take = good();
        TakeFile.write(take, take.file());
        assertEquals(take, TakeFile.read(take.file()));
        Take listed = new Take(
                take.file(),
                "Szerenád",
                take.video(),
                take.players(),
                Optional.empty(),
                new BeatsGiven.Listed(folder.resolve("beats.csv")),
                Bowing.FREE);
        TakeFile.write(listed, take.file());
        assertEquals(listed, TakeFile.read(take.file()));
        Take heard = new Take(
                take.file(),
                "Serenade",
                take.video(),
                take.players(),
                take.part(),
                new BeatsGiven.Anchored(
                        new BeatsGiven.HeardByPart(), List.of(new Beat("17", 1, 42.3), new Beat("12a", 3, 50))),
                Bowing.FREE);
        TakeFile.write(heard, take.file());
        assertEquals(heard, TakeFile.read(take.file()));
        Take carried = new Take(
                take.file(),
                "Serenade",
                take.video(),
                take.players(),
                Optional.empty(),
                new BeatsGiven.Carried(folder.resolve("monday.take.json")),
                Bowing.FREE);
        TakeFile.write(carried, take.file());
        assertEquals(carried, TakeFile.read(take.file()));
    }

    @ParameterizedTest
    @ValueSource(strings = {", \"facing\": \"auto\"", ""})
    void aFacingMayBeLeftToTheProgram(String instead) throws Exception {
        String declared = ", \"facing\": \"away-right\"";
        assertTrue(TakeFolders.GOOD.contains(declared));
        Take take = TakeFile.read(TakeFolders.with(folder, TakeFolders.GOOD.replace(declared, instead)));
        assertEquals(Optional.of(Facing.CAMERA_LEFT), take.players().get(0).facing());
        assertEquals(Optional.empty(), take.players().get(1).facing());
        TakeFile.write(take, take.file());
        assertTrue(Files.readString(take.file()).matches("(?s).*\"facing\" *: *\"auto\".*"), "said in so many words");
        assertEquals(take, TakeFile.read(take.file()));
    }

    @Test
    void aTakeIsNotWrittenWhereItsFilesWouldLieOutside() throws Exception {
        Take take = good();
        Path elsewhere = folder.resolve("other/strings.take.json");
        assertThrows(OutputException.class, () -> TakeFile.write(take, elsewhere));
        assertFalse(Files.exists(elsewhere));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "version": 1,        | "version": 7,             | this take file has version 7; this program reads version 1
            "version": 1,        | "version": "1",           | version: this is not a whole number
            "version": 1,        | "version": 1e999,         | version: this is not a whole number
            "version": 1,        | "version": 1.0,           | version: this is not a whole number
            "version": 1,        |                           | there is no 'version'
            "version": 1,        | "version": 1, "tempo": 3, | there is no field 'tempo' here
            "version": 1,        | "version": 1, "title": "x", | or a field stands twice
            "bowing": "unified", | "bowing": "unified", "day": "2026-02-29", | day: '2026-02-29' is no day of the calendar; write it like "2026-11-25"
            "bowing": "unified", | "bowing": "unified", "day": "25.11.2026", | day: '25.11.2026' is no day
            "bowing": "unified", | "bowing": "unified", "day": "+12026-11-25", | day: '+12026-11-25' is no day
            "bowing": "unified", | "bowing": "unified", "day": "2026-11-25T19:30", | day: '2026-11-25T19:30' is no day
            "bowing": "unified", | "bowing": "unified", "day": 20261125, | day: this is not a text
            "bowing": "unified", | "bowing": "both",         | bowing: 'both' is not known; write one of unified, free
            "bowing": "unified", |                           | there is no 'bowing'
            "bowing": "unified", | "bowing": null,           | bowing: this is not a text
            "desk": 1, "place": "inside" | "desk": 0, "place": "inside" | players[1]: desks are numbered from 1, not 0
            "desk": 1, "place": "inside" | "desk": 1, "place": "middle" | players[1].place: 'middle' is not known
            "instrument": "viol" | "instrument": "viola d'amore" | players[1].instrument
            "away-right"         | "sideways"                | players[1].facing: 'sideways' is not known
            "away-right"         | "Auto"                    | players[1].facing: 'Auto' is not known; write one of auto, away,
            "away-right"         | null                      | players[1].facing: this is not a text
            "away-right"         | "away-right", "leader": true | players: a section has one leader, not two
            "away-right"         | "away-right", "leader": "yes" | players[1].leader: this is neither true nor false
            <b>Desk 1</b> & inside | Desk 1 outside          | players: each player has a label of his or her own
            <b>Desk 1</b> & inside | a\\u0007b               | players[1].label: a text has
            <b>Desk 1</b> & inside | \\u0020                 | players[1].label: this is not a text
            "x": 320,            | "x": -1,                  | players[1].seat: a seat box begins inside the picture
            "x": 320,            | "x": 1.5,                 | players[1].seat.x: this is not a whole number
            "x": 320,            | "x": 99999999999,         | players[1].seat.x: this is not a whole number
            "x": 320,            | "x": 320, "z": 1,         | players[1].seat: there is no field 'z' here
            "x": 320,            |                           | players[1].seat: there is no 'x'
            "x": 320,            | "x": NaN,                 | line 10, column
            "tempo_bpm": 92.5    | "tempo_bpm": 1e999        | beats.tempo_bpm: this is not a number that can be used
            "start_s": 1.25      | "start_s": 1e300          | beats: a start is a time in seconds
            "tempo_bpm": 92.5    | "tempo_bpm": 5            | beats: a tempo lies between 10 and 1000
            "tempo_bpm": 92.5    | "tempo_bpm": "fast"       | beats.tempo_bpm: this is not a number
            "tempo_bpm": 92.5,   |                           | beats: there is no 'tempo_bpm'
            "tempo_bpm": 92.5,   | "file": "beats.csv",      | beats: there is no field 'start_s' here
            "part": "parts/serenade.bowing.txt", |           | beats: these need a part, for its notes or its metre and bars
            "start_s": 1.25      | "start_s": 1.25, "anchors": [] | beats.anchors: there is no anchor in the list
            "start_s": 1.25      | "start_s": 1.25, "anchors": {} | beats.anchors: this is not a list
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"time_s": 1}] | beats.anchors[0]: there is no 'bar'
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 17}] | beats.anchors[0]: there is no 'time_s'
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1.5, "time_s": 1}] | beats.anchors[0].bar: this is not a
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": "", "time_s": 1}] | beats.anchors[0].bar: this is not a
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "time_s": "1"}] | beats.anchors[0].time_s: this is not a number
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "time_s": 1e9}] | beats.anchors[0]: an anchor has a time
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "time_s": 1e999}] | beats.anchors[0].time_s: this is not a number
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "beat": 0, "time_s": 1}] | beats.anchors[0]: beats count from 1
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "at": 1}] | beats.anchors[0]: there is no field 'at' here
            "tempo_bpm": 92.5, "start_s": 1.25 | "anchors": [{"bar": 1, "time_s": 1}] | beats: there is no 'tempo_bpm'
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "metronome" | beats.heard: 'metronome' is not known; write one of part, clicks
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "clicks" | beats: nothing says which bar the clicks begin with
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "clicks", "first_bar": 1.5 | beats.first_bar: this is not a text
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "part", "first_bar": 1 | beats: there is no field 'first_bar' here
            "tempo_bpm": 92.5,   | "heard": "part",          | beats: there is no field 'start_s' here
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "sunday.take.json" | beats.take: there is no file sunday.take.json beside
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "../monday.take.json" | beats.take: ../monday.take.json leaves the take's
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": true | beats.take: this is not a text
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "monday.take.json", "heard": "part" | beats: there is no field 'heard' here
            strings.mp4          | none.mp4                  | video: there is no file none.mp4 beside the take file
            strings.mp4          | parts                     | video: there is no file parts
            strings.mp4          | ../strings.mp4            | video: ../strings.mp4 leaves the take's folder
            strings.mp4          | parts/../strings.mp4      | video: parts/../strings.mp4 leaves
            strings.mp4          | /etc/hostname             | video: /etc/hostname leaves
            strings.mp4          | C:/strings.mp4            | video: a path is written with /
            strings.mp4          | parts\\\\..\\\\x          | video: a path is written with /
            strings.mp4          | a\\u0000b                 | video: a text has
            """)
    void mistakesAreNamedWithTheirPlace(String part, String instead, String expected) throws IOException {
        assertTrue(TakeFolders.GOOD.contains(part), part);
        String message = refusal(TakeFolders.GOOD.replace(part, instead == null ? "" : instead));
        assertTrue(message.startsWith("strings.take.json: ") && message.contains(expected), message);
    }

    @Test
    void aTakeNeedsPlayers() throws IOException {
        String start = "{\"version\": 1, \"title\": \"t\", \"video\": \"strings.mp4\", \"bowing\": \"free\", ";
        assertTrue(refusal(start + "\"players\": [], \"beats\": {\"file\": \"beats.csv\"}}")
                .contains("at least one player"));
        assertTrue(refusal(start + "\"players\": {}, \"beats\": {}}").contains("players: this is not a list"));
        assertTrue(refusal(start + "\"beats\": {\"file\": \"beats.csv\"}}").contains("there is no 'players'"));
    }

    @Test
    void somethingElseIsRefused() throws IOException {
        refusal("");
        refusal("null");
        refusal("[]");
        refusal("7");
        refusal("{} {}");
        refusal("\u0089PNG\r\n\u001a\n");
        refusal("[".repeat(100_000));
        refusal(TakeFolders.GOOD + " ".repeat(2_000_000));
        Path none = folder.resolve("none.take.json");
        assertThrows(InputException.class, () -> TakeFile.read(none));
        assertThrows(InputException.class, () -> TakeFile.read(folder));
    }

    @Test
    void aLinkOutOfTheFolderIsRefused(@TempDir Path outside) throws IOException {
        Path file = TakeFolders.with(folder, TakeFolders.GOOD);
        Path video = Files.write(outside.resolve("real.mp4"), new byte[0]);
        Files.delete(folder.resolve("strings.mp4"));
        Files.createSymbolicLink(folder.resolve("strings.mp4"), video);
        InputException e = assertThrows(InputException.class, () -> TakeFile.read(file));
        assertTrue(e.getMessage().contains("video: strings.mp4 is a link that leaves"), e.getMessage());
    }

    @Test
    void damagedTakesAreReadOrRefused() {
        Mutations.onlyInputExceptions(TakeFolders.GOOD.getBytes(StandardCharsets.UTF_8), 400, damaged -> {
            Path file = TakeFolders.with(folder, "");
            Files.write(file, damaged);
            TakeFile.read(file);
        });
    }

    @Test
    void seatsLieInsideThePicture() throws Exception {
        Take take = good();
        TakeSeats.requireInside(take, 620, 420);
        InputException e = assertThrows(InputException.class, () -> TakeSeats.requireInside(take, 619, 420));
        assertTrue(e.getMessage().contains("players[1].seat"), e.getMessage());
        assertThrows(InputException.class, () -> TakeSeats.requireInside(take, 620, 419));
    }
}
