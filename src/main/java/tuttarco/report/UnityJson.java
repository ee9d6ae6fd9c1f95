package tuttarco.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import tuttarco.compare.Unity;
import tuttarco.compare.Unity.Agreement;

/** Whether the section bowed as one, in {@code results.json}. */
final class UnityJson {
    private UnityJson() {}

    static void write(Unity unity, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("unity");
        if (unity instanceof Unity.Told told) {
            json.writeStringField("bowed", told.kind().word());
            json.writeNumberField("players", told.players());
            json.writeNumberField("beats", told.beats());
            write("section", told.section(), json);
            if (told.desks().isPresent()) {
                write("partners", told.desks().get().partners(), json);
                write("desks", told.desks().get().apart(), json);
            }
        } else if (unity instanceof Unity.NotTold notTold) {
            json.writeStringField("unknown", notTold.reason().words());
        }
        json.writeEndObject();
    }

    private static void write(String field, Agreement agreement, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        ResultsJson.number("agreement", agreement.agreement(), json);
        ResultsJson.number("by_chance", agreement.byChance(), json);
        ResultsJson.number("index", agreement.index(), json);
        ResultsJson.number("low", agreement.interval().low(), json);
        ResultsJson.number("high", agreement.interval().high(), json);
        ResultsJson.number("p_value", agreement.pValue(), json);
        json.writeEndObject();
    }
}
