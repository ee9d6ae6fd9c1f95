package tuttarco.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.PartChoice;
import tuttarco.score.PartChoice.Line;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;

/** The published schema and the reader say the same. */
class TakeSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private static JsonSchema schema() throws IOException {
        try (InputStream in = Objects.requireNonNull(TakeFile.class.getResourceAsStream("take.schema.json"))) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        }
    }

    private static boolean valid(String take) throws IOException {
        JsonNode tree = JSON.readTree(take);
        return schema().validate(tree).isEmpty();
    }

    @Test
    void theSchemaNamesTheVersionThatIsRead() throws IOException {
        assertEquals("urn:tuttarco:take:" + TakeFile.VERSION, schema().getId());
    }

    @Test
    void aTakeThatIsReadOrWrittenIsValid() throws Exception {
        assertTrue(valid(TakeFolders.GOOD));
        Path file = TakeFolders.with(folder, TakeFolders.GOOD);
        TakeFile.write(TakeFile.read(file), file);
        assertTrue(valid(Files.readString(file)));
        String listed = TakeFolders.GOOD
                .replace("\"tempo_bpm\": 92.5, \"start_s\": 1.25", "\"file\": \"beats.csv\"")
                .replace("\"part\": \"parts/serenade.bowing.txt\",", "");
        assertTrue(valid(listed));
        TakeFile.read(TakeFolders.with(folder, listed));
    }

    @Test
    void aTakeMayChooseAPart() throws Exception {
        String choice = """
                "part": {"file": "parts/serenade.bowing.txt", "name": "Violin II", "voice": "2", "line": "lower",
                         "repeats": false, "over": "parts/serenade.bowing.txt"},""";
        String chosen = TakeFolders.GOOD.replace("\"part\": \"parts/serenade.bowing.txt\",", choice);
        assertTrue(valid(chosen));
        Path file = TakeFolders.with(folder, chosen);
        Take take = TakeFile.read(file);
        assertEquals(
                new PartChoice(Optional.of("Violin II"), Optional.of("2"), Optional.of(Line.LOWER), false),
                take.partChoice());
        assertEquals(Optional.of(folder.resolve("parts/serenade.bowing.txt")), take.over());
        TakeFile.write(take, file);
        assertTrue(valid(Files.readString(file)));
        assertEquals(take, TakeFile.read(file));
        Path onlyOver = TakeFolders.with(folder, chosen.replaceFirst("\"name\"(?s:.*)false, ", ""));
        Take over = TakeFile.read(onlyOver);
        assertEquals(PartChoice.DEFAULT, over.partChoice());
        TakeFile.write(over, file);
        assertTrue(valid(Files.readString(file)));
        assertEquals(over, TakeFile.read(file));
        assertEquals(take.over(), over.over());
    }

    @Test
    void aTakeMaySayItsDay() throws Exception {
        String dated = TakeFolders.GOOD.replace("\"bowing\"", "\"day\": \"2024-02-29\", \"bowing\"");
        assertTrue(valid(dated));
        Path file = TakeFolders.with(folder, dated);
        Take take = TakeFile.read(file);
        assertEquals(Optional.of(LocalDate.of(2024, 2, 29)), take.day());
        TakeFile.write(take, file);
        assertTrue(valid(Files.readString(file)));
        assertEquals(take, TakeFile.read(file));
    }

    @Test
    void aTakeMayHaveNoBeatsYet() throws Exception {
        String none = TakeFolders.GOOD.replaceFirst(",\\s*\"beats\": \\{[^}]*}", "");
        assertFalse(none.contains("beats\":"));
        Path file = TakeFolders.with(folder, none);
        assertEquals(new BeatsGiven.Missing(), TakeFile.read(file).beats());
        TakeFile.write(TakeFile.read(file), file);
        assertTrue(valid(Files.readString(file)));
        assertEquals(new BeatsGiven.Missing(), TakeFile.read(file).beats());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"heard\": \"part\"",
                "\"take\": \"monday.take.json\"",
                "\"take\": \"monday.take.json\", \"anchors\": [{\"bar\": 17, \"time_s\": 42.3}]",
                "\"heard\": \"part\", \"anchors\": [{\"bar\": 17, \"time_s\": 42.3}]",
                "\"heard\": \"clicks\", \"first_bar\": \"12a\"",
                "\"heard\": \"clicks\", \"anchors\": [{\"bar\": 17, \"time_s\": 42.3}]",
                "\"file\": \"beats.csv\", \"anchors\": [{\"bar\": \"12a\", \"beat\": 3, \"time_s\": 42}]"
            })
    void beatsMayBeHeardAndAnchored(String beats) throws Exception {
        String take = TakeFolders.GOOD.replace("\"tempo_bpm\": 92.5, \"start_s\": 1.25", beats);
        assertTrue(valid(take), take);
        Path file = TakeFolders.with(folder, take);
        Take read = TakeFile.read(file);
        TakeFile.write(read, file);
        assertTrue(valid(Files.readString(file)));
        assertEquals(read, TakeFile.read(file));
    }

    @Test
    void whatIsHeardNeedsAPart() throws Exception {
        String without = TakeFolders.GOOD
                .replace("\"tempo_bpm\": 92.5, \"start_s\": 1.25", "\"heard\": \"part\"")
                .replace("\"part\": \"parts/serenade.bowing.txt\",", "");
        assertFalse(valid(without));
        Path file = TakeFolders.with(folder, without);
        assertThrows(InputException.class, () -> TakeFile.read(file));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "version": 1,        | "version": 2,
            "version": 1,        | "version": 1, "tempo": 3,
            "version": 1,        |
            "title":             | "titel":
            "Serenade, bars 17 to 32" | " "
            "Serenade, bars 17 to 32" | "a\\u0085b"
            "bowing": "unified", | "bowing": "both",
            "bowing": "unified", | "bowing": "unified", "day": "2026-11-32",
            "bowing": "unified", | "bowing": "unified", "day": "25 November",
            "bowing": "unified", | "bowing": "unified", "day": 20261125,
            "desk": 1, "place": "inside" | "desk": 0, "place": "inside"
            "desk": 1, "place": "inside" | "desk": 1, "place": "middle"
            "instrument": "viol" | "instrument": "harp"
            "away-right"         | "backwards"
            "away-right"         | "away-right", "leader": true
            "away-right"         | "away-right", "leader": "yes"
            "x": 320,            | "x": -1,
            "x": 320,            | "x": 1.5,
            "x": 320,            | "x": 99999999999,
            "x": 320,            | "x": 320, "z": 1,
            "width": 300, "height": 400}, "facing": "away-right" | "width": 0, "height": 400}, "facing": "away-right"
            "tempo_bpm": 92.5    | "tempo_bpm": 5
            "start_s": 1.25      | "start_s": 1e300
            "tempo_bpm": 92.5    | "tempo_bpm": "fast"
            "tempo_bpm": 92.5,   |
            "tempo_bpm": 92.5,   | "file": "beats.csv",
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "metronome"
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "clicks"
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "clicks", "first_bar": 1.5
            "tempo_bpm": 92.5, "start_s": 1.25 | "heard": "part", "first_bar": 1
            "tempo_bpm": 92.5,   | "heard": "part",
            "tempo_bpm": 92.5,   | "take": "monday.take.json",
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "../monday.take.json"
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": 7
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "monday.take.json", "heard": "part"
            "tempo_bpm": 92.5, "start_s": 1.25 | "take": "monday.take.json", "first_bar": 1
            "start_s": 1.25      | "start_s": 1.25, "anchors": []
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"time_s": 1}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 17}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1.5, "time_s": 1}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": "", "time_s": 1}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "beat": 0, "time_s": 1}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "time_s": 1e9}]
            "start_s": 1.25      | "start_s": 1.25, "anchors": [{"bar": 1, "at": 1}]
            "tempo_bpm": 92.5, "start_s": 1.25 | "anchors": [{"bar": 1, "time_s": 1}]
            "part": "parts/serenade.bowing.txt", |
            "part": "parts/serenade.bowing.txt", | "part": {"name": "Viola"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "parts/serenade.bowing.txt", "line": "middle"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "parts/serenade.bowing.txt", "repeats": "no"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "parts/serenade.bowing.txt", "voices": "2"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "../serenade.bowing.txt"},
            "part": "parts/serenade.bowing.txt", | "part": {"over": "parts/serenade.bowing.txt"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "parts/serenade.bowing.txt", "over": "../a.bowing.txt"},
            "part": "parts/serenade.bowing.txt", | "part": {"file": "parts/serenade.bowing.txt", "over": true},
            strings.mp4          | ../strings.mp4
            strings.mp4          | parts/../strings.mp4
            strings.mp4          | /etc/hostname
            strings.mp4          | C:/strings.mp4
            """)
    void bothRefuseTheSame(String part, String instead) throws IOException {
        assertTrue(TakeFolders.GOOD.contains(part), part);
        String take = TakeFolders.GOOD.replace(part, instead == null ? "" : instead);
        assertFalse(valid(take));
        Path file = TakeFolders.with(folder, take);
        assertThrows(InputException.class, () -> TakeFile.read(file));
    }

    @Test
    void everyWordOfTheSchemaIsOneOfTheProgramAndTheOtherWayRound() throws IOException {
        JsonNode player = schema().getSchemaNode().at("/$defs/player/properties");
        assertEquals(Set.copyOf(Facing.words()), enumOf(player, "facing"));
        assertEquals(words(Instrument.values(), Instrument::word), enumOf(player, "instrument"));
        assertEquals(words(Place.values(), Place::word), enumOf(player, "place"));
        JsonNode top = schema().getSchemaNode().at("/properties");
        assertEquals(words(Bowing.values(), Bowing::word), enumOf(top, "bowing"));
    }

    private static <T> Set<String> words(T[] values, Function<T, String> word) {
        return Stream.of(values).map(word).collect(Collectors.toSet());
    }

    private static Set<String> enumOf(JsonNode properties, String name) {
        Set<String> words = new HashSet<>();
        properties.get(name).get("enum").forEach(word -> words.add(word.textValue()));
        return words;
    }
}
