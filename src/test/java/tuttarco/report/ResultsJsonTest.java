package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.files.OwnFiles;
import tuttarco.files.Sha256;

class ResultsJsonTest extends OutputContract {
    @Override
    Output output() {
        return new ResultsJson();
    }

    private static JsonSchema schema() throws Exception {
        try (InputStream in = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        }
    }

    @ParameterizedTest
    @MethodSource("takes")
    void isAsItsSchemaSays(AnalysedTake take) throws Exception {
        assertEquals(Set.of(), schema().validate(new ObjectMapper().readTree(written(take))));
    }

    @Test
    void theSchemaRefusesWhatItDoesNotKnow() throws Exception {
        ObjectNode json = (ObjectNode) new ObjectMapper().readTree(written(Fixtures.unified()));
        assertFalse(schema().validate(json.deepCopy().put("more", 1)).isEmpty());
        assertFalse(schema().validate(json.deepCopy().put("bowing", "mixed")).isEmpty());
        assertFalse(schema().validate(withoutHash(json)).isEmpty());
    }

    private static JsonNode withoutHash(ObjectNode json) {
        ObjectNode copy = json.deepCopy();
        copy.remove("sha256");
        return copy;
    }

    @Test
    void aFacingThatWasNotDeclaredIsAuto() throws Exception {
        JsonNode declared =
                new ObjectMapper().readTree(written(Fixtures.unified())).get("players");
        JsonNode seen =
                new ObjectMapper().readTree(written(Fixtures.withoutFacing())).get("players");
        assertEquals(8, declared.size());
        assertEquals(8, seen.size());
        for (int i = 0; i < 8; i++) {
            assertEquals("camera", declared.get(i).get("facing").asText());
            assertEquals("auto", seen.get(i).get("facing").asText());
        }
    }

    @Test
    void notesTheFilesWrittenBeforeIt() throws Exception {
        Files.writeString(Files.createDirectory(folder.resolve("charts")).resolve("a.svg"), "abc");
        JsonNode json = new ObjectMapper().readTree(written(Fixtures.unified()));
        assertEquals(1, json.get("files").size());
        assertEquals(
                Map.of("charts/a.svg", json.at("/files/charts~1a.svg").asText()),
                ResultsJson.filesNotedIn(folder).sha256());
        assertEquals(
                Sha256.of("abc".getBytes(StandardCharsets.UTF_8)),
                json.at("/files/charts~1a.svg").asText());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "\u0000\u0001",
                "{\"format\": \"urn:other\", \"files\": {\"a\": \"b\"}}",
                "{\"format\": \"urn:tuttarco:results:1\", \"title\": \"from before files were noted\"}",
                "{\"format\": \"urn:tuttarco:results:1\", \"files\": [\"a\"]}",
                "{\"format\": \"urn:tuttarco:results:1\", \"files\": {\"a\": 1}}",
                "{\"format\": \"urn:tuttarco:results:1\", \"files\": {\"a\": \"b\", \"c\""
            })
    void aNoteThatIsNotOursNotesNothing(String json) throws Exception {
        Files.writeString(folder.resolve("results.json"), json);
        assertEquals(OwnFiles.NONE, ResultsJson.filesNotedIn(folder));
    }

    @Test
    void whereNothingWasWrittenNothingIsNoted() throws Exception {
        assertEquals(OwnFiles.NONE, ResultsJson.filesNotedIn(folder));
        Files.createDirectory(folder.resolve("results.json"));
        assertEquals(OwnFiles.NONE, ResultsJson.filesNotedIn(folder));
        assertEquals(OwnFiles.NONE, ResultsJson.filesNotedIn(folder.resolve("missing")));
    }

    @Test
    void holdsEverything() throws Exception {
        JsonNode json = new ObjectMapper().readTree(written(Fixtures.unified()));
        assertEquals("urn:tuttarco:results:1", json.get("format").asText());
        assertEquals("ab".repeat(32), json.at("/sha256/video").asText());
        assertEquals("0.15", json.at("/settings/switch_s").asText());
        assertEquals(8, json.get("players").size());
        assertEquals(50, json.at("/readings/0/strokes").size());
        assertEquals(8 * 48, json.get("beats").size());
        assertEquals(12, json.get("bars").size());
        assertEquals(2, json.get("divergences").size());
        assertEquals(7, json.get("lags").size());
        assertEquals(25.0, json.at("/lags/4/median_ms").asDouble());
        assertEquals(true, json.at("/lags/6/median_ms").isMissingNode());
    }

    /** What is meant to fall apart is not called late, and who may bow at will is not compared. */
    @Test
    void ofAFreeTakeNothingIsClaimedOfLatenessOrBow() throws Exception {
        JsonNode unified = new ObjectMapper().readTree(written(Fixtures.unified()));
        assertEquals(7, unified.get("timing").size());
        assertEquals(7, unified.get("bow_sharing").size());
        assertFalse(unified.at("/bow_sharing/0/half").asBoolean(true));
        JsonNode free = new ObjectMapper().readTree(written(Fixtures.free()));
        assertTrue(free.path("timing").isMissingNode());
        assertTrue(free.path("bow_sharing").isMissingNode());
    }
}
