package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.musicxml.MeasureReader.Measure;
import tuttarco.musicxml.WrittenNote.Joins;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartBuilder;
import tuttarco.score.PartSpan.Position;

/**
 * Puts written measures together in the order played.
 *
 * <p>Over a jump a slur or tie joins only what is written so: an end that belongs to a beginning elsewhere is passed over,
 * and one without (as at a second ending) belongs to what is open where the jump leaves.
 */
final class PartPlaying {
    private final List<Measure> measures;
    private final List<Integer> order;
    private final SlurNames slurs = new SlurNames();
    private final StrokeJoiner joiner = new StrokeJoiner();

    /** Measures played without a jump between them are one run. */
    private int run;

    /** Slurs that are open where the last jump left, as named there. */
    private Map<String, String> carried = Map.of();

    PartPlaying(List<Measure> measures, List<Integer> order) {
        this.measures = slurs.named(measures);
        this.order = order;
    }

    Part part(String name, Instrument instrument) throws InputException {
        PartBuilder builder = new PartBuilder(instrument);
        int before = -1;
        for (int index : order) {
            boolean jumped = index != before + 1;
            if (jumped) {
                carried = carriedFrom(before);
                run++;
            }
            Measure measure = measures.get(index);
            add(jumped ? withoutTieFromElsewhere(index) : measure, new BarGrid(measure, index == 0), builder);
            before = index;
        }
        joiner.finish(builder);
        return builder.build(name);
    }

    private Map<String, String> carriedFrom(int measure) {
        Map<String, String> names = new HashMap<>();
        slurs.openAfter(measure).forEach((number, name) -> names.put(number, inRun(name)));
        return names;
    }

    private Measure withoutTieFromElsewhere(int index) {
        Measure measure = measures.get(index);
        List<WrittenNote> before =
                index == 0 ? List.of() : measures.get(index - 1).notes();
        if (measure.notes().isEmpty() || before.isEmpty()) {
            return measure;
        }
        WrittenNote first = measure.notes().get(0);
        WrittenNote last = before.get(before.size() - 1);
        boolean tiedElsewhere = last.joins().tieStarts() && !Collections.disjoint(last.pitches(), first.pitches());
        if (!tiedElsewhere) {
            return measure;
        }
        List<WrittenNote> notes = new ArrayList<>(measure.notes());
        notes.set(0, first.with(first.joins().withoutTieStop()));
        return measure.withNotes(notes);
    }

    private void add(Measure measure, BarGrid grid, PartBuilder builder) throws InputException {
        int bar = builder.bar(grid.bar());
        BigFraction at = BigFraction.ZERO;
        for (WrittenNote note : measure.notes()) {
            if (note.start().compareTo(at) > 0) {
                joiner.rest(grid.position(bar, at), grid.position(bar, note.start()));
            }
            addStrokes(note, bar, grid);
            addSound(note, bar, grid, measure.notesIn(), builder);
            at = note.end();
        }
        if (at.compareTo(grid.lengthQuarters()) < 0) {
            joiner.rest(grid.position(bar, at), grid.position(bar, grid.lengthQuarters()));
        }
    }

    private void addStrokes(WrittenNote note, int bar, BarGrid grid) {
        if (note.strokes() == 0) {
            joiner.rest(grid.position(bar, note.start()), grid.position(bar, note.end()));
            return;
        }
        Joins joins = note.strokes() == 1 ? played(note.joins()) : note.joins().markOnly();
        BigFraction each = note.length().divide(note.strokes());
        for (int i = 0; i < note.strokes(); i++) {
            BigFraction start = note.start().add(each.multiply(i));
            joiner.note(grid.position(bar, start), grid.position(bar, start.add(each)), i == 0 ? joins : Joins.NONE);
        }
    }

    private Joins played(Joins joins) {
        List<String> stops = joins.slurStops().stream()
                .map(stop -> SlurNames.isName(stop) ? inRun(stop) : carried.getOrDefault(stop, stop))
                .toList();
        return joins.slurred(stops, joins.slurStarts().stream().map(this::inRun).toList());
    }

    private String inRun(String name) {
        return name + "/" + run;
    }

    /** A tied note lets the one before it sound on. */
    private static void addSound(WrittenNote note, int bar, BarGrid grid, int writtenIn, PartBuilder builder) {
        if (note.pitches().isEmpty()) {
            return;
        }
        Position end = grid.position(bar, note.end());
        if (note.joins().tieStops() && builder.sounds(note.pitches())) {
            builder.hold(end);
        } else {
            builder.note(new Note(
                    grid.position(bar, note.start()),
                    end,
                    note.pitches(),
                    note.plucked(),
                    new Note.Written(writtenIn, note.place())));
        }
    }
}
