package tuttarco.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.beats.Beat;
import tuttarco.compare.BarEvenness;
import tuttarco.compare.Evenness;

/** How evenly the take sounded, in {@code results.json}. */
final class EvennessJson {
    private EvennessJson() {}

    static void write(Evenness evenness, List<Beat> beats, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("evenness");
        json.writeStringField("caution", Evenness.CAUTION);
        number("integrated_lufs", evenness.integratedLufs(), json);
        json.writeNumberField("changes", evenness.changes());
        number("dip_lu", evenness.dipLu(), json);
        number("amid_strokes_lu", evenness.amidStrokesLu(), json);
        json.writeArrayFieldStart("bars");
        for (BarEvenness bar : evenness.bars()) {
            json.writeStartObject();
            json.writeStringField("bar", bar.bar());
            ResultsJson.number("time_s", beats.get(bar.firstIndex()).timeS(), json);
            number("momentary_lufs", bar.momentaryLufs(), json);
            number("spread_lu", bar.spreadLu(), json);
            json.writeNumberField("changes", bar.changes());
            number("dip_lu", bar.dipLu(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void number(String field, OptionalDouble value, JsonGenerator json) throws IOException {
        if (value.isPresent()) {
            ResultsJson.number(field, value.getAsDouble(), json);
        }
    }
}
