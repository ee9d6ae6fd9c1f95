package tuttarco.corrections;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Pattern;
import tuttarco.files.InputException;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.JsonPlace;

/** A line of the log as JSON; the README describes its fields. */
public final class CorrectionLine {
    private static final int VERSION = 1;
    private static final String STROKE = "stroke";
    private static final String CHANGE = "change";
    private static final String ABSENT = "absent";
    private static final String BEAT = "beat";
    private static final String UNDO = "undo";
    private static final String REDO = "redo";
    private static final String[] WHAT = {STROKE, CHANGE, ABSENT, BEAT, UNDO, REDO};
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private CorrectionLine() {}

    static byte[] of(LogEntry entry) {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(line)) {
            json.writeStartObject();
            json.writeNumberField("version", VERSION);
            write(entry, json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new IllegalStateException("texts and numbers can always be written to memory", e);
        }
        return line.toByteArray();
    }

    /** Writes the fields of an entry into an object. */
    public static void write(LogEntry entry, JsonGenerator json) throws IOException {
        json.writeStringField("id", entry.id().toString());
        json.writeStringField("at", entry.at().toString());
        if (entry instanceof LogEntry.Done done) {
            write(done.correction(), json);
            if (!done.wasS().isEmpty()) {
                json.writeObjectFieldStart("was_s");
                for (Map.Entry<StrokeKind, Double> was : new TreeMap<>(done.wasS()).entrySet()) {
                    json.writeNumberField(was.getKey().word(), was.getValue());
                }
                json.writeEndObject();
            }
        } else if (entry instanceof LogEntry.Undone undone) {
            json.writeStringField("what", UNDO);
            json.writeStringField("of", undone.correction().toString());
        } else if (entry instanceof LogEntry.Redone redone) {
            json.writeStringField("what", REDO);
            json.writeStringField("of", redone.correction().toString());
        }
    }

    private static void write(Correction correction, JsonGenerator json) throws IOException {
        if (correction instanceof Correction.StrokeSet set) {
            writeHead(STROKE, set.player(), set.fromS(), set.toS(), json);
            json.writeStringField("kind", set.kind().word());
        } else if (correction instanceof Correction.ChangeMoved moved) {
            writeHead(CHANGE, moved.player(), moved.fromS(), moved.toS(), json);
        } else if (correction instanceof Correction.Absent absent) {
            writeHead(ABSENT, absent.player(), absent.fromS(), absent.toS(), json);
        } else if (correction instanceof Correction.BeatMoved moved) {
            json.writeStringField("what", BEAT);
            json.writeStringField("bar", moved.bar());
            json.writeNumberField("beat", moved.beat());
            writeTimes(moved.fromS(), moved.toS(), json);
        }
    }

    private static void writeHead(String what, String player, double fromS, double toS, JsonGenerator json)
            throws IOException {
        json.writeStringField("what", what);
        json.writeStringField("player", player);
        writeTimes(fromS, toS, json);
    }

    private static void writeTimes(double fromS, double toS, JsonGenerator json) throws IOException {
        json.writeNumberField("from_s", fromS);
        json.writeNumberField("to_s", toS);
    }

    /**
     * What a line says.
     *
     * @param where the file and the line, for what is wrong
     * @throws InputException if it says nothing that can be used
     */
    static LogEntry read(byte[] line, String where) throws InputException {
        JsonNode tree;
        try {
            tree = JSON.readTree(line);
        } catch (IOException e) {
            throw new InputException(where + " was cut off or is damaged", e);
        }
        JsonPlace root = new JsonPlace(where, "", tree);
        if (!tree.isObject()) {
            throw root.wrong("this is not a correction", "make the correction again");
        }
        int version = root.field("version").wholeNumber();
        if (version != VERSION) {
            throw root.wrong(
                    "this line has version " + version + "; this program reads version " + VERSION,
                    "use a newer program for it");
        }
        UUID id = id(root.field("id"));
        Instant at = instant(root.field("at"));
        String what = root.field("what").oneOf(WHAT, w -> w);
        if (what.equals(UNDO) || what.equals(REDO)) {
            root.object("version", "id", "at", "what", "of");
            UUID of = id(root.field("of"));
            return what.equals(UNDO) ? new LogEntry.Undone(id, at, of) : new LogEntry.Redone(id, at, of);
        }
        return new LogEntry.Done(id, at, correction(what, root), wasS(root));
    }

    private static Correction correction(String what, JsonPlace root) throws InputException {
        double fromS = root.field("from_s").number();
        double toS = root.field("to_s").number();
        if (what.equals(BEAT)) {
            root.object("version", "id", "at", "what", "bar", "beat", "from_s", "to_s");
            String bar = root.field("bar").barNumber();
            int beat = root.field("beat").wholeNumber();
            return root.make(() -> new Correction.BeatMoved(bar, beat, fromS, toS));
        }
        String player = root.field("player").text();
        if (what.equals(STROKE)) {
            root.object("version", "id", "at", "what", "player", "from_s", "to_s", "kind", "was_s");
            StrokeKind kind = root.field("kind").oneOf(StrokeKind.values(), StrokeKind::word);
            return root.make(() -> new Correction.StrokeSet(player, fromS, toS, kind));
        }
        if (what.equals(ABSENT)) {
            root.object("version", "id", "at", "what", "player", "from_s", "to_s", "was_s");
            return root.make(() -> new Correction.Absent(player, fromS, toS));
        }
        root.object("version", "id", "at", "what", "player", "from_s", "to_s");
        return root.make(() -> new Correction.ChangeMoved(player, fromS, toS));
    }

    private static Map<StrokeKind, Double> wasS(JsonPlace root) throws InputException {
        Map<StrokeKind, Double> wasS = new EnumMap<>(StrokeKind.class);
        if (root.optional("was_s").isPresent()) {
            JsonPlace was = root.field("was_s").object(words());
            for (StrokeKind kind : StrokeKind.values()) {
                if (was.optional(kind.word()).isPresent()) {
                    wasS.put(kind, was.field(kind.word()).number());
                }
            }
        }
        return wasS;
    }

    private static String[] words() {
        return Arrays.stream(StrokeKind.values()).map(StrokeKind::word).toArray(String[]::new);
    }

    private static UUID id(JsonPlace place) throws InputException {
        String text = place.text();
        if (!ID.matcher(text).matches()) {
            throw place.wrong("this is not the name of a line", "make the correction again");
        }
        return UUID.fromString(text);
    }

    private static Instant instant(JsonPlace place) throws InputException {
        try {
            return Instant.parse(place.text());
        } catch (DateTimeParseException e) {
            throw new InputException(
                    place.wrong("this is no time", "write it like \"2026-11-26T07:00:00Z\"")
                            .getMessage(),
                    e);
        }
    }
}
