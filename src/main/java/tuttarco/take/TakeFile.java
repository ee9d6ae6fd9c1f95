package tuttarco.take;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tuttarco.beats.Beat;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFile;
import tuttarco.score.PartChoice;
import tuttarco.score.PartChoice.Line;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * Reads and writes take files: JSON, version 1, as {@code take.schema.json} beside this class describes. Paths in a take
 * begin in its folder and don't leave it.
 */
public final class TakeFile {
    /** The version written, and the only one read. */
    public static final int VERSION = 1;

    static final int MOST_BYTES = 1 << 20;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private TakeFile() {}

    /**
     * Reads a take whose files all exist.
     *
     * @throws InputException if the file can't be read or isn't a take, with the place in it
     */
    public static Take read(Path file) throws InputException {
        String name = InputBytes.name(file);
        JsonPlace root = new JsonPlace(name, "", tree(InputBytes.read(file, MOST_BYTES), name));
        if (!root.value().isObject()) {
            throw root.wrong("this is not a take", "write a JSON object with version, title, video and players");
        }
        int version = root.field("version").wholeNumber();
        if (version != VERSION) {
            throw new InputException(name + ": this take file has version " + version + "; this program reads version "
                    + VERSION + "; save it again in that version");
        }
        root.object("version", "title", "video", "day", "bowing", "players", "part", "beats");
        return take(root, file, new TakeFolder(file.toAbsolutePath().getParent()));
    }

    /**
     * Writes a take, whole or not at all.
     *
     * @throws OutputException if it can't be written, or if one of the take's files lies outside the folder of {@code file}
     */
    public static void write(Take take, Path file) throws OutputException {
        write(take, file.toAbsolutePath().normalize().getParent(), file);
    }

    /**
     * Writes a take that will lie in another folder than it is written to.
     *
     * @param folder where the take will lie
     * @throws OutputException as {@link #write(Take, Path)} does, with that folder
     */
    public static void write(Take take, Path folder, Path file) throws OutputException {
        WholeFile.write(file, TakeJson.of(take, folder).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Does nothing if a take file may name the other file.
     *
     * @throws OutputException if that lies outside the take's folder
     */
    public static void requireInside(Path named, Path takeFile) throws OutputException {
        TakeJson.inside(takeFile.toAbsolutePath().normalize().getParent(), named);
    }

    private static JsonNode tree(byte[] content, String name) throws InputException {
        try {
            JsonNode tree = JSON.readTree(content);
            if (tree.isMissingNode()) {
                throw new InputException(name + " is empty; write a take in it");
            }
            return tree;
        } catch (JsonProcessingException e) {
            String place = e.getLocation() == null
                    ? ""
                    : "line " + e.getLocation().getLineNr() + ", column "
                            + e.getLocation().getColumnNr() + ": ";
            throw new InputException(
                    name + ": " + place + "the JSON is broken here, or a field stands twice in one object; correct it",
                    e);
        } catch (IOException e) {
            throw new InputException(name + " is not text in UTF-8; save it as JSON in UTF-8", e);
        }
    }

    private static Take take(JsonPlace root, Path file, TakeFolder folder) throws InputException {
        String title = root.field("title").text();
        Bowing bowing = root.field("bowing").oneOf(Bowing.values(), Bowing::word);
        List<Player> players = new ArrayList<>();
        JsonPlace listed = root.field("players");
        for (JsonPlace place : listed.list()) {
            players.add(player(place));
        }
        Optional<JsonPlace> counted = root.optional("beats");
        BeatsGiven beats = counted.isPresent() ? beats(counted.get(), folder) : new BeatsGiven.Missing();
        Path video = folder.file(root.field("video"));
        Optional<JsonPlace> dated = root.optional("day");
        Optional<LocalDate> day = dated.isPresent() ? Optional.of(dated.get().day()) : Optional.empty();
        Optional<JsonPlace> named = root.optional("part");
        boolean chosen = named.filter(place -> place.value().isObject()).isPresent();
        Optional<JsonPlace> partFile = chosen ? Optional.of(named.get().field("file")) : named;
        Optional<Path> part = partFile.isPresent() ? Optional.of(folder.file(partFile.get())) : Optional.empty();
        PartChoice choice = chosen ? partChoice(named.get()) : PartChoice.DEFAULT;
        Optional<JsonPlace> overFile = chosen ? named.get().optional("over") : Optional.empty();
        Optional<Path> over = overFile.isPresent() ? Optional.of(folder.file(overFile.get())) : Optional.empty();
        if (beats.needPart() && part.isEmpty()) {
            throw root.field("beats")
                    .wrong(
                            "these need a part, for its notes or its metre and bars",
                            "add a part, or give the beats as a list");
        }
        return listed.make(() -> new Take(file, title, video, players, part, choice, over, beats, bowing, day));
    }

    private static PartChoice partChoice(JsonPlace place) throws InputException {
        place.object("file", "name", "voice", "line", "repeats", "over");
        Optional<JsonPlace> name = place.optional("name");
        Optional<JsonPlace> voice = place.optional("voice");
        Optional<JsonPlace> line = place.optional("line");
        Optional<JsonPlace> repeats = place.optional("repeats");
        return new PartChoice(
                name.isPresent() ? Optional.of(name.get().text()) : Optional.empty(),
                voice.isPresent() ? Optional.of(voice.get().text()) : Optional.empty(),
                line.isPresent() ? Optional.of(line.get().oneOf(Line.values(), Line::word)) : Optional.empty(),
                repeats.isEmpty() || repeats.get().yesOrNo());
    }

    private static Player player(JsonPlace place) throws InputException {
        place.object("label", "desk", "place", "instrument", "seat", "facing", "leader");
        String label = place.field("label").text();
        int desk = place.field("desk").wholeNumber();
        Place side = place.field("place").oneOf(Place.values(), Place::word);
        Instrument instrument = place.field("instrument").oneOf(Instrument.values(), Instrument::word);
        SeatBox seat = seat(place.field("seat"));
        Optional<Facing> facing = facing(place);
        Optional<JsonPlace> leader = place.optional("leader");
        boolean leads = leader.isPresent() && leader.get().yesOrNo();
        return place.make(() -> new Player(label, desk, side, instrument, seat, facing, leads));
    }

    /** Where it is missing or "auto", the facing is seen, not declared. */
    private static Optional<Facing> facing(JsonPlace place) throws InputException {
        Optional<JsonPlace> facing = place.optional("facing");
        return facing.isPresent()
                ? Facing.ofWord(facing.get().oneOf(Facing.words().toArray(String[]::new), Function.identity()))
                : Optional.empty();
    }

    private static SeatBox seat(JsonPlace place) throws InputException {
        place.object("x", "y", "width", "height");
        int xPx = place.field("x").wholeNumber();
        int yPx = place.field("y").wholeNumber();
        int widthPx = place.field("width").wholeNumber();
        int heightPx = place.field("height").wholeNumber();
        return place.make(() -> new SeatBox(xPx, yPx, widthPx, heightPx));
    }

    private static BeatsGiven beats(JsonPlace place, TakeFolder folder) throws InputException {
        BeatsGiven source = beatSource(place, folder);
        Optional<JsonPlace> listed = place.optional("anchors");
        if (listed.isEmpty()) {
            return source;
        }
        List<Beat> anchors = new ArrayList<>();
        for (JsonPlace anchor : listed.get().list()) {
            anchors.add(anchor(anchor));
        }
        return listed.get().make(() -> new BeatsGiven.Anchored(source, anchors));
    }

    private static Beat anchor(JsonPlace place) throws InputException {
        place.object("bar", "beat", "time_s");
        String bar = place.field("bar").barNumber();
        Optional<JsonPlace> counted = place.optional("beat");
        int beat = counted.isPresent() ? counted.get().wholeNumber() : 1;
        double timeS = place.field("time_s").number();
        return place.make(() -> BeatsGiven.anchor(bar, beat, timeS));
    }

    private static BeatsGiven heard(JsonPlace place, JsonPlace heard) throws InputException {
        String[] words = {BeatsGiven.HeardByPart.WORD, BeatsGiven.HeardClicks.WORD};
        if (heard.oneOf(words, Function.identity()).equals(BeatsGiven.HeardByPart.WORD)) {
            place.object("heard", "anchors");
            return new BeatsGiven.HeardByPart();
        }
        place.object("heard", "first_bar", "anchors");
        Optional<JsonPlace> bar = place.optional("first_bar");
        if (bar.isEmpty() && place.optional("anchors").isEmpty()) {
            throw place.wrong("nothing says which bar the clicks begin with", "add first_bar, or an anchor");
        }
        return new BeatsGiven.HeardClicks(
                bar.isPresent() ? Optional.of(bar.get().barNumber()) : Optional.empty());
    }

    private static BeatsGiven beatSource(JsonPlace place, TakeFolder folder) throws InputException {
        place.object("file", "take", "tempo_bpm", "start_s", "heard", "first_bar", "anchors");
        Optional<JsonPlace> file = place.optional("file");
        if (file.isPresent()) {
            place.object("file", "anchors");
            return new BeatsGiven.Listed(folder.file(file.get()));
        }
        Optional<JsonPlace> take = place.optional("take");
        if (take.isPresent()) {
            place.object("take", "anchors");
            return new BeatsGiven.Carried(folder.file(take.get()));
        }
        Optional<JsonPlace> heard = place.optional("heard");
        if (heard.isPresent()) {
            return heard(place, heard.get());
        }
        double tempoBpm = place.field("tempo_bpm").number();
        double startS = place.field("start_s").number();
        return place.make(() -> new BeatsGiven.Steady(tempoBpm, startS));
    }
}
