package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.musicxml.MeasureReader.Measure;
import tuttarco.musicxml.WrittenNote.Joins;

/**
 * Gives each slur a name of its own, in the order written: MusicXML's numbers are used again and again, so that in another
 * order a slur could end where a different one does. An end without a beginning before it keeps its number.
 */
final class SlurNames {
    private static final String MARK = "#";

    private final Map<String, String> open = new HashMap<>();
    private final List<Map<String, String>> openAfter = new ArrayList<>();
    private int count;

    /** The measures with names for numbers. */
    List<Measure> named(List<Measure> measures) {
        List<Measure> named = new ArrayList<>();
        for (Measure measure : measures) {
            named.add(
                    measure.withNotes(measure.notes().stream().map(this::named).toList()));
            openAfter.add(Map.copyOf(open));
        }
        return named;
    }

    /** The slurs that reach over the end of the measure: their names by number. */
    Map<String, String> openAfter(int measure) {
        return openAfter.get(measure);
    }

    static boolean isName(String text) {
        return text.contains(MARK);
    }

    private WrittenNote named(WrittenNote note) {
        Joins joins = note.joins();
        List<String> stops = joins.slurStops().stream()
                .map(number -> Optional.ofNullable(open.remove(number)).orElse(number))
                .toList();
        List<String> starts = new ArrayList<>();
        for (String number : joins.slurStarts()) {
            String name = number + MARK + count++;
            open.put(number, name);
            starts.add(name);
        }
        return note.with(joins.slurred(stops, starts));
    }
}
