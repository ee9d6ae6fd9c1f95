package tuttarco.season;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import tuttarco.compare.BarEvenness;
import tuttarco.files.InputException;
import tuttarco.season.PlayerOnRecord.LagOnRecord;
import tuttarco.seats.Place;
import tuttarco.take.Bowing;
import tuttarco.take.JsonPlace;

/** A take on record as one line of JSON; the README describes its fields. */
final class TakeLine {
    private static final int VERSION = 1;
    private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private TakeLine() {}

    static byte[] of(TakeOnRecord take) {
        ObjectNode root = JSON.createObjectNode();
        root.put("version", VERSION);
        root.put("video", take.videoSha256());
        root.put("title", take.title());
        take.day().ifPresent(day -> root.put("day", day.toString()));
        root.put("bowing", take.bowing().word());
        root.put("marked", take.marked());
        put(root, "unity", take.unity());
        putBars(root.putArray("bars"), take.beats());
        ArrayNode players = root.putArray("players");
        take.players().forEach(player -> put(players.addObject(), player));
        ArrayNode evenness = root.putArray("evenness");
        take.evenness().forEach(bar -> put(evenness.addObject(), bar));
        try {
            return JSON.writeValueAsBytes(root);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of texts and numbers can always be written", e);
        }
    }

    private static void putBars(ArrayNode bars, List<BeatOnRecord> beats) {
        int first = 0;
        for (int next = 1; next <= beats.size(); next++) {
            if (next == beats.size() || beats.get(next).beginsBar()) {
                put(bars.addObject(), beats.subList(first, next));
                first = next;
            }
        }
    }

    private static void put(ObjectNode node, List<BeatOnRecord> bar) {
        if (!bar.get(0).bar().isEmpty()) {
            node.put("bar", bar.get(0).bar());
        }
        ArrayNode beats = node.putArray("beats");
        ArrayNode timesS = node.putArray("times_s");
        for (BeatOnRecord beat : bar) {
            beats.add(beat.beat());
            timesS.add(beat.timeS());
        }
        node.put(
                "marked",
                Letters.MARKED.of(bar.stream().map(BeatOnRecord::marked).toList()));
    }

    private static void put(ObjectNode node, PlayerOnRecord player) {
        node.put("label", player.label());
        node.put("desk", player.desk());
        node.put("place", player.place().word());
        node.put("leader", player.leader());
        node.put("played", Letters.PLAYED.of(player.played()));
        node.put("verdicts", Letters.VERDICTS.of(player.verdicts()));
        node.put("leader_verdicts", Letters.VERDICTS.of(player.leaderVerdicts()));
        ArrayNode beats = node.putArray("lag_beats");
        ArrayNode lagsMs = node.putArray("lags_ms");
        for (LagOnRecord lag : player.lags()) {
            beats.add(lag.beat());
            lagsMs.add(lag.lagMs());
        }
        put(node, "smallest_ms", player.smallestMs());
    }

    private static void put(ObjectNode node, BarEvenness bar) {
        if (!bar.bar().isEmpty()) {
            node.put("bar", bar.bar());
        }
        node.put("first_beat", bar.firstIndex());
        put(node, "momentary_lufs", bar.momentaryLufs());
        put(node, "spread_lu", bar.spreadLu());
        put(node, "dip_lu", bar.dipLu());
        node.put("changes", bar.changes());
    }

    private static void put(ObjectNode node, String name, OptionalDouble figure) {
        figure.ifPresent(value -> node.put(name, value));
    }

    /**
     * What a line says; empty where it is not JSON, as a line that was cut off never is.
     *
     * @param where the file and the line, for what is wrong
     */
    static Optional<TakeOnRecord> read(byte[] line, String where) throws InputException {
        JsonNode tree;
        try {
            tree = JSON.readTree(line);
        } catch (IOException e) {
            return Optional.empty();
        }
        JsonPlace root = new JsonPlace(where, "", tree);
        if (!tree.isObject()) {
            throw root.wrong("this is not a take on record", "delete the line and analyse that take again");
        }
        int version = root.field("version").wholeNumber();
        if (version != VERSION) {
            throw root.wrong(
                    "this line has version " + version + "; this program reads version " + VERSION,
                    "delete the line and analyse that take again");
        }
        return Optional.of(take(root));
    }

    private static TakeOnRecord take(JsonPlace root) throws InputException {
        root.object("version", "video", "title", "day", "bowing", "marked", "unity", "bars", "players", "evenness");
        String video = root.field("video").text();
        if (!SHA_256.matcher(video).matches()) {
            throw root.field("video").wrong("this is not a SHA-256 in lower-case hex", "delete the line");
        }
        String title = root.field("title").text();
        Optional<JsonPlace> dated = root.optional("day");
        Optional<LocalDate> day = dated.isPresent() ? Optional.of(dated.get().day()) : Optional.empty();
        Bowing bowing = root.field("bowing").oneOf(Bowing.values(), Bowing::word);
        boolean marked = root.field("marked").yesOrNo();
        OptionalDouble unity = figure(root, "unity");
        List<BeatOnRecord> beats = new ArrayList<>();
        for (JsonPlace bar : root.field("bars").list()) {
            beats.addAll(bar(bar));
        }
        List<PlayerOnRecord> players = new ArrayList<>();
        for (JsonPlace player : root.field("players").list()) {
            players.add(player(player, beats.size()));
        }
        List<BarEvenness> evenness = new ArrayList<>();
        for (JsonPlace bar : root.field("evenness").list()) {
            evenness.add(evenness(bar, beats.size()));
        }
        if (players.stream().map(PlayerOnRecord::label).distinct().count() < players.size()) {
            throw root.field("players").wrong("two players have the same label", "delete the line");
        }
        return new TakeOnRecord(video, title, day, bowing, marked, unity, beats, players, evenness);
    }

    private static List<BeatOnRecord> bar(JsonPlace place) throws InputException {
        place.object("bar", "beats", "times_s", "marked");
        String bar = number(place);
        List<JsonPlace> beats = place.field("beats").list();
        List<JsonPlace> timesS = listOf(place.field("times_s"), beats.size());
        var marked = Letters.MARKED.at(place.field("marked"), beats.size());
        List<BeatOnRecord> read = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            read.add(new BeatOnRecord(
                    bar, beats.get(i).wholeNumber(), i == 0, timesS.get(i).number(), marked.get(i)));
        }
        return read;
    }

    private static String number(JsonPlace place) throws InputException {
        Optional<JsonPlace> bar = place.optional("bar");
        return bar.isPresent() ? bar.get().barNumber() : "";
    }

    private static PlayerOnRecord player(JsonPlace place, int beats) throws InputException {
        place.object(
                "label",
                "desk",
                "place",
                "leader",
                "played",
                "verdicts",
                "leader_verdicts",
                "lag_beats",
                "lags_ms",
                "smallest_ms");
        List<JsonPlace> lagBeats = place.field("lag_beats").list();
        List<JsonPlace> lagsMs = listOf(place.field("lags_ms"), lagBeats.size());
        List<LagOnRecord> lags = new ArrayList<>();
        for (int i = 0; i < lagBeats.size(); i++) {
            lags.add(new LagOnRecord(beat(lagBeats.get(i), beats), lagsMs.get(i).number()));
        }
        return new PlayerOnRecord(
                place.field("label").text(),
                place.field("desk").wholeNumber(),
                place.field("place").oneOf(Place.values(), Place::word),
                place.field("leader").yesOrNo(),
                Letters.PLAYED.at(place.field("played"), beats),
                Letters.VERDICTS.at(place.field("verdicts"), beats),
                Letters.VERDICTS.at(place.field("leader_verdicts"), beats),
                lags,
                figure(place, "smallest_ms"));
    }

    private static BarEvenness evenness(JsonPlace place, int beats) throws InputException {
        place.object("bar", "first_beat", "momentary_lufs", "spread_lu", "dip_lu", "changes");
        return new BarEvenness(
                number(place),
                beat(place.field("first_beat"), beats),
                figure(place, "momentary_lufs"),
                figure(place, "spread_lu"),
                figure(place, "dip_lu"),
                place.field("changes").wholeNumber());
    }

    private static OptionalDouble figure(JsonPlace place, String name) throws InputException {
        Optional<JsonPlace> figure = place.optional(name);
        return figure.isPresent() ? OptionalDouble.of(figure.get().number()) : OptionalDouble.empty();
    }

    /** Index of one of the take's beats. */
    private static int beat(JsonPlace place, int beats) throws InputException {
        int beat = place.wholeNumber();
        if (beat < 0 || beat >= beats) {
            throw place.wrong("there is no beat " + beat + " among " + beats + " counted from 0", "delete the line");
        }
        return beat;
    }

    private static List<JsonPlace> listOf(JsonPlace place, int size) throws InputException {
        List<JsonPlace> entries = place.list();
        if (entries.size() != size) {
            throw place.wrong("this has " + entries.size() + " entries, not " + size, "delete the line");
        }
        return entries;
    }
}
