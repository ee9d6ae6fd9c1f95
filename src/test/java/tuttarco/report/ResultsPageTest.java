package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on results.json tells of every field there can be, and of no other; so does the schema. */
class ResultsPageTest {
    private static final Path PAGE = Path.of("src/site/markdown/results.md");
    private static final Pattern HEADING = Pattern.compile("#+ `([^`]*)`.*");
    private static final Pattern FIELDS = Pattern.compile("\\| (`[a-z0-9_`, ]+`) \\|.*\\S.*\\|");

    private static JsonNode schema() throws IOException {
        try (InputStream in = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            return new ObjectMapper().readTree(in);
        }
    }

    /** Names of the fields by the place of the object they stand in. */
    private static Map<String, Set<String>> ofSchema(JsonNode schema) {
        Map<String, Set<String>> fields = new TreeMap<>();
        gather(schema, "results.json", fields);
        return fields;
    }

    private static void gather(JsonNode schema, String place, Map<String, Set<String>> into) {
        if (schema.has("items")) {
            gather(schema.get("items"), place + "[]", into);
        }
        if (schema.has("properties")) {
            assertFalse(schema.path("additionalProperties").asBoolean(true), place + " lets in anything");
            Set<String> names = new TreeSet<>();
            schema.get("properties").fields().forEachRemaining(field -> {
                names.add(field.getKey());
                String below = place.equals("results.json") ? field.getKey() : place + "." + field.getKey();
                gather(field.getValue(), below, into);
            });
            into.put(place, names);
        }
    }

    private static Map<String, Set<String>> ofPage() throws IOException {
        Map<String, Set<String>> fields = new TreeMap<>();
        String place = "";
        for (String line : Files.readAllLines(PAGE)) {
            Matcher heading = HEADING.matcher(line);
            Matcher told = FIELDS.matcher(line);
            if (heading.matches()) {
                place = heading.group(1);
            } else if (told.matches()) {
                Set<String> names = fields.computeIfAbsent(place, p -> new TreeSet<>());
                for (String name : told.group(1).replace("`", "").split(", ")) {
                    assertTrue(names.add(name), "told twice: " + line);
                }
            }
        }
        return fields;
    }

    @Test
    void thePageTellsOfEveryFieldAndOfNoOther() throws IOException {
        Map<String, Set<String>> schema = ofSchema(schema());
        assertTrue(schema.size() > 15, schema.keySet().toString());
        assertEquals(schema, ofPage());
    }
}
