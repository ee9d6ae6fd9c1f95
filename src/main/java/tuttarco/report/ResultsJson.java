package tuttarco.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.compare.BarAgreement;
import tuttarco.compare.BeatReading;
import tuttarco.compare.BowSharing;
import tuttarco.compare.BowingCandidate;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence;
import tuttarco.compare.Lag;
import tuttarco.compare.Measure;
import tuttarco.compare.Metric;
import tuttarco.compare.PlayerTiming;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Scope;
import tuttarco.compare.SharedBow;
import tuttarco.compare.SharedBow.Amounts;
import tuttarco.compare.SharedBow.EndsKnown;
import tuttarco.compare.SharedBow.Opposite;
import tuttarco.compare.Spot;
import tuttarco.compare.Timing;
import tuttarco.compare.Togetherness;
import tuttarco.corrections.CorrectionLine;
import tuttarco.corrections.LogEntry;
import tuttarco.files.OwnFiles;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.take.Bowing;

/**
 * {@code results.json}: everything, as {@code results.schema.json} beside this class describes it. It notes the files that
 * lie in the folder already, so it is written last.
 */
public final class ResultsJson implements Output {
    public static final String FORMAT = "urn:tuttarco:results:1";

    private static final String NAME = "results.json";
    private static final String FILES = "files";

    /** No run writes more files than this; sixty players have about 130. */
    private static final int MOST_FILES = 10_000;

    @Override
    public String name() {
        return NAME;
    }

    /** What an earlier run noted to have written into the folder; nothing where no run did or its note can't be read. */
    public static OwnFiles filesNotedIn(Path folder) {
        Path file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return OwnFiles.NONE;
        }
        try (JsonParser json = new JsonFactory().createParser(file.toFile())) {
            return filesNoted(json);
        } catch (IOException notOurs) {
            return OwnFiles.NONE;
        }
    }

    private static OwnFiles filesNoted(JsonParser json) throws IOException {
        boolean ours = json.nextToken() == JsonToken.START_OBJECT
                && "format".equals(json.nextFieldName())
                && FORMAT.equals(json.nextTextValue())
                && FILES.equals(json.nextFieldName())
                && json.nextToken() == JsonToken.START_OBJECT;
        Map<String, String> sha256 = new HashMap<>();
        while (ours && json.nextToken() == JsonToken.FIELD_NAME && sha256.size() < MOST_FILES) {
            String name = json.currentName();
            String noted = json.nextTextValue();
            ours = noted != null;
            if (ours) {
                sha256.put(name, noted);
            }
        }
        return ours ? new OwnFiles(sha256) : OwnFiles.NONE;
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        Map<String, String> files = OwnFiles.in(folder).sha256();
        try (JsonGenerator json =
                new JsonFactory().createGenerator(folder.resolve(name()).toFile(), JsonEncoding.UTF8)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            writeWords(FILES, files, json);
            writeHead(take, json);
            writePlayers(take, json);
            writeReadings(take, json);
            writeComparison(take.comparison(), json);
            UnityJson.write(take.unity(), json);
            if (take.evenness().isPresent()) {
                EvennessJson.write(
                        take.evenness().get(), take.comparison().beats().beats(), json);
            }
            if (take.take().bowing() == Bowing.UNIFIED) {
                writeTiming(take.together().timing(), json);
                writeSharing(take.together().sharing(), json);
            }
            writeTogether(take.together(), json);
            json.writeEndObject();
        }
    }

    private static void writeHead(AnalysedTake take, JsonGenerator json) throws IOException {
        json.writeStringField("program_version", take.programVersion());
        json.writeStringField("title", take.take().title());
        json.writeStringField("bowing", take.take().bowing().word());
        writeWords("sha256", take.sha256(), json);
        writeWords("settings", take.settings(), json);
        json.writeObjectFieldStart("clip");
        json.writeNumberField("width_px", take.clip().widthPx());
        json.writeNumberField("height_px", take.clip().heightPx());
        number("frames_per_s", take.clip().framesPerS(), json);
        number("read_until_s", take.endS(), json);
        json.writeEndObject();
        json.writeArrayFieldStart("notes");
        for (String note : take.notes()) {
            json.writeString(note);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("corrections");
        for (LogEntry.Done done : take.corrected()) {
            json.writeStartObject();
            CorrectionLine.write(done, json);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeWords(String field, Map<String, String> words, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        for (Map.Entry<String, String> word : new TreeMap<>(words).entrySet()) {
            json.writeStringField(word.getKey(), word.getValue());
        }
        json.writeEndObject();
    }

    private static void writePlayers(AnalysedTake take, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("players");
        for (Player p : take.comparison().players()) {
            json.writeStartObject();
            json.writeStringField("label", p.label());
            json.writeNumberField("desk", p.desk());
            json.writeStringField("place", p.place().word());
            json.writeStringField("instrument", p.instrument().word());
            json.writeStringField("facing", p.facing().map(Facing::word).orElse(Facing.AUTO));
            json.writeBooleanField("leader", p.leader());
            json.writeArrayFieldStart("seat_px");
            json.writeNumber(p.seat().xPx());
            json.writeNumber(p.seat().yPx());
            json.writeNumber(p.seat().widthPx());
            json.writeNumber(p.seat().heightPx());
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeReadings(AnalysedTake take, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("readings");
        for (Bows player : take.bows()) {
            json.writeStartObject();
            json.writeStringField("player", player.player().label());
            json.writeArrayFieldStart("strokes");
            for (Bow bow : player.bows()) {
                writeStroke(bow, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeStroke(Bow bow, JsonGenerator json) throws IOException {
        json.writeStartObject();
        number("start_s", bow.stroke().startS(), json);
        error("start_se_s", bow.start(), json);
        number("end_s", bow.stroke().endS(), json);
        error("end_se_s", bow.end(), json);
        json.writeStringField("direction", bow.stroke().kind().word());
        number("confidence", bow.stroke().confidence(), json);
        byHand("by_hand", bow.stroke().source() == Stroke.Source.BY_HAND, json);
        byHand("start_by_hand", bow.start() instanceof Edge.ByHand, json);
        byHand("end_by_hand", bow.end() instanceof Edge.ByHand, json);
        if (bow.stroke().kind().direction().isPresent()) {
            writeUse(bow.use(), json);
        }
        json.writeEndObject();
    }

    private static void error(String field, Edge edge, JsonGenerator json) throws IOException {
        if (edge instanceof Edge.Change change) {
            number(field, change.standardErrorS(), json);
        }
    }

    /** Only what was not read says so. */
    private static void byHand(String field, boolean byHand, JsonGenerator json) throws IOException {
        if (byHand) {
            json.writeBooleanField(field, true);
        }
    }

    private static void writeUse(BowUse use, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("bow");
        if (use instanceof BowUse.Measured measured) {
            number("length_shoulder_widths", measured.lengthShoulderWidths(), json);
            number("length_share", measured.lengthShare(), json);
        }
        if (use instanceof BowUse.Placed placed) {
            json.writeStringField("region", placed.part().word());
            number("region_confidence", placed.confidence(), json);
        }
        if (use instanceof BowUse.Unknown unknown) {
            json.writeStringField("unknown", unknown.reason().word());
        }
        json.writeEndObject();
    }

    private static void writeComparison(Comparison comparison, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("beats");
        for (var player : comparison.beatReadings()) {
            for (BeatReading reading : player) {
                writeBeat(reading, json);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("bars");
        for (BarAgreement bar : comparison.bars()) {
            writeBar(bar, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("divergences");
        for (Divergence divergence : comparison.divergences()) {
            writeDivergence(divergence, comparison.beats(), json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("spots");
        for (Spot spot : RehearsalList.of(comparison)) {
            writeSpot(spot, comparison.beats(), json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("bowing_candidates");
        for (BowingCandidate candidate : BowingCandidate.in(comparison)) {
            writeCandidate(candidate, comparison.beats(), json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("lags");
        for (Lag lag : comparison.lags()) {
            json.writeStartObject();
            json.writeStringField("player", lag.player().label());
            json.writeNumberField("changes", lag.changes());
            if (lag.medianMs().isPresent()) {
                number("median_ms", lag.medianMs().get(), json);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeTiming(Timing timing, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("timing");
        for (PlayerTiming player : timing.players()) {
            json.writeStartObject();
            json.writeStringField("player", player.player().label());
            json.writeStringField("claim", player.claim().word());
            if (player.lag().isPresent()) {
                number("p", player.lag().get().p(), json);
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeSharing(BowSharing sharing, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("bow_sharing");
        for (SharedBow player : sharing.players()) {
            json.writeStartObject();
            json.writeStringField("player", player.player().label());
            if (player.amount() instanceof Amounts amounts) {
                json.writeBooleanField("half", amounts.half());
            }
            if (player.ends() instanceof EndsKnown ends) {
                json.writeBooleanField("other_end", ends.apart());
                json.writeArrayFieldStart("opposite");
                for (Opposite opposite : ends.opposite()) {
                    json.writeStartObject();
                    number("time_s", opposite.startS(), json);
                    json.writeStringField("region", opposite.part().word());
                    json.writeEndObject();
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void writeTogether(Togetherness together, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("metrics");
        for (Metric metric : Metric.values()) {
            json.writeStartObject();
            json.writeStringField("key", metric.key());
            json.writeStringField("title", metric.title());
            json.writeStringField("unit", metric.unit().word());
            json.writeStringField("help", metric.help());
            json.writeStringField("reference", metric.reference());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("measures");
        for (Measure measure : together.measures()) {
            writeMeasure(measure, json);
        }
        json.writeEndArray();
    }

    private static void writeMeasure(Measure measure, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("metric", measure.metric().key());
        json.writeStringField("scope", measure.scope().sort());
        json.writeStringField("name", measure.scope().name());
        if (measure.scope() instanceof Scope.InBar bar) {
            number("time_s", bar.startS(), json);
        }
        json.writeNumberField("count", measure.count());
        if (measure.value().isPresent()) {
            number("value", measure.value().get(), json);
        }
        if (measure.interval().isPresent()) {
            number("low", measure.interval().get().low(), json);
            number("high", measure.interval().get().high(), json);
        }
        json.writeEndObject();
    }

    private static void writeBeat(BeatReading reading, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("player", reading.player().label());
        writePlace("", reading.beat(), json);
        Optional<BowDirection> marked = reading.marked();
        if (marked.isPresent()) {
            json.writeStringField("marked", marked.get().word());
        }
        json.writeStringField("played", reading.played().word());
        number("confidence", reading.confidence(), json);
        byHand("by_hand", reading.source() == Stroke.Source.BY_HAND, json);
        json.writeStringField("verdict", reading.verdict().word());
        json.writeStringField("leader_verdict", reading.leaderVerdict().word());
        json.writeEndObject();
    }

    private static void writeBar(BarAgreement bar, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("bar", bar.bar());
        json.writeNumberField("with", bar.with());
        json.writeNumberField("judged", bar.judged());
        if (bar.interval().isPresent()) {
            number("low", bar.interval().get().low(), json);
            number("high", bar.interval().get().high(), json);
        }
        json.writeEndObject();
    }

    private static void writeDivergence(Divergence d, BeatMap beats, JsonGenerator json) throws IOException {
        json.writeStartObject();
        writePlace("first_", d.first(), json);
        writePlace("last_", d.last(), json);
        writeLabels(d.players(), json);
        json.writeStringField("against", d.against().word());
        json.writeStringField("standing", d.standing().word());
        number("confidence", d.confidence(), json);
        json.writeArrayFieldStart("departures");
        for (Departure departure : d.departures()) {
            writeDeparture(departure, beats, json);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void writeLabels(List<Player> players, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("players");
        for (Player player : players) {
            json.writeString(player.label());
        }
        json.writeEndArray();
    }

    private static void writeDeparture(Departure departure, BeatMap beats, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("player", departure.player().label());
        writePlace("first_", beats.beats().get(departure.firstIndex()), json);
        writePlace("last_", beats.beats().get(departure.lastIndex()), json);
        number("confidence", departure.confidence(), json);
        if (departure.back() instanceof Departure.BackAt back) {
            writePlace("back_", beats.beats().get(back.index()), json);
            json.writeStringField("way_back", back.way().word());
        }
        json.writeEndObject();
    }

    private static void writeSpot(Spot spot, BeatMap beats, JsonGenerator json) throws IOException {
        json.writeStartObject();
        writePlace("first_", beats.beats().get(spot.firstIndex()), json);
        writePlace("last_", beats.beats().get(spot.lastIndex()), json);
        writeLabels(spot.players(), json);
        json.writeStringField("against", spot.against().word());
        json.writeStringField("standing", spot.standing().word());
        number("confidence", spot.confidence(), json);
        number("weight", spot.weight(), json);
        json.writeEndObject();
    }

    private static void writeCandidate(BowingCandidate candidate, BeatMap beats, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("bar", candidate.bar());
        number("time_s", beats.beats().get(candidate.firstIndex()).timeS(), json);
        writeLabels(candidate.players(), json);
        json.writeNumberField("judged", candidate.judged());
        writeDirections("marked", candidate.marked(), json);
        writeDirections("instead", candidate.instead(), json);
        json.writeEndObject();
    }

    private static void writeDirections(String field, List<Optional<BowDirection>> directions, JsonGenerator json)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (Optional<BowDirection> direction : directions) {
            json.writeString(direction.map(BowDirection::word).orElse("none"));
        }
        json.writeEndArray();
    }

    private static void writePlace(String prefix, Beat beat, JsonGenerator json) throws IOException {
        json.writeStringField(prefix + "bar", beat.bar());
        json.writeNumberField(prefix + "beat", beat.beat());
        number(prefix + "time_s", beat.timeS(), json);
    }

    /** Six decimals at most: microseconds, far below what can be read from a picture. */
    static void number(String field, double value, JsonGenerator json) throws IOException {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
        json.writeFieldName(field);
        json.writeNumber(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }
}
