package tuttarco.beats;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Bar;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/** A part laid out along one line, in quarter notes from its beginning. */
public final class PartRuler {
    private final List<Bar> bars;
    /** Where each bar begins, and one entry more for the end of the last. */
    private final double[] startQuarters;

    private final Map<String, List<Integer>> barsByNumber = new HashMap<>();

    public PartRuler(Part part) {
        bars = part.bars();
        startQuarters = new double[bars.size() + 1];
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            barsByNumber.computeIfAbsent(bar.number(), n -> new ArrayList<>()).add(i);
            startQuarters[i + 1] =
                    startQuarters[i] + bar.lengthBeats() * bar.metre().quartersPerBeat();
        }
    }

    public double lengthQuarters() {
        return startQuarters[bars.size()];
    }

    /** A beat of the part as it lies on the ruler. */
    public record Mark(Position position, double quarters) {}

    /**
     * Every beat of the part; where a pickup begins between two beats, the earlier of them too, though it lies before the
     * part's beginning.
     */
    public List<Mark> beats() {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            int first = (int) (i == 0 ? Math.floor(bar.firstBeat()) : Math.ceil(bar.firstBeat()));
            for (int beat = first; beat < bar.firstBeat() + bar.lengthBeats(); beat++) {
                Position position = new Position(i, beat);
                marks.add(new Mark(position, quarters(position)));
            }
        }
        return marks;
    }

    /** Where a place lies; negative for a beat just before a pickup that begins between beats. */
    public double quarters(Position position) {
        Bar bar = bars.get(position.barIndex());
        return startQuarters[position.barIndex()]
                + (position.beat() - bar.firstBeat()) * bar.metre().quartersPerBeat();
    }

    /**
     * Every place the beat may lie on: once for each bar of its number that holds it, rising.
     *
     * @throws InputException if there is none
     */
    double[] places(Beat beat) throws InputException {
        double[] places = barsByNumber.getOrDefault(beat.bar(), List.of()).stream()
                .filter(i -> holds(bars.get(i), beat.beat()))
                .mapToDouble(i -> quarters(new Position(i, beat.beat())))
                .distinct()
                .toArray();
        if (places.length == 0) {
            throw new InputException(whyNot(beat));
        }
        return places;
    }

    private static boolean holds(Bar bar, int beat) {
        return beat >= Math.floor(bar.firstBeat()) && beat < bar.firstBeat() + bar.lengthBeats();
    }

    private String whyNot(Beat beat) {
        String name = Plain.text(beat.spoken());
        List<Integer> named = barsByNumber.getOrDefault(beat.bar(), List.of());
        if (named.isEmpty()) {
            return "the beats name " + name + ", but the part has no bar " + Plain.text(beat.bar())
                    + "; number the bars of the beats as they are printed in the part";
        }
        return "the beats name " + name + ", but that bar of the part has no such beat in "
                + bars.get(named.get(0)).metre() + "; correct the beats or the part's metre";
    }
}
