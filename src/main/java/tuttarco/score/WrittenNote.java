package tuttarco.score;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.BowDirection;

/**
 * One note or rest of a bar as MusicXML writes it.
 *
 * @param start from the bar's beginning, quarter notes
 * @param length quarter notes
 * @param place index of its element among those of its measure
 * @param pitches sounding pitches, MIDI note numbers; none for a rest
 * @param bowed neither a rest nor plucked
 */
record WrittenNote(
        int place, BigFraction start, BigFraction length, List<Integer> pitches, boolean bowed, Joins joins) {
    /** What joins a note to its neighbours in one stroke, and how the bow goes. */
    record Joins(
            boolean tieStops,
            boolean tieStarts,
            List<String> slurStops,
            List<String> slurStarts,
            Optional<BowDirection> mark,
            boolean detached,
            boolean forte) {
        static final Joins NONE = new Joins(false, false, List.of(), List.of(), Optional.empty(), false, false);

        Joins tieStop() {
            return new Joins(true, tieStarts, slurStops, slurStarts, mark, detached, forte);
        }

        Joins tieStart() {
            return new Joins(tieStops, true, slurStops, slurStarts, mark, detached, forte);
        }

        Joins slurStop(String number) {
            return new Joins(tieStops, tieStarts, with(slurStops, List.of(number)), slurStarts, mark, detached, forte);
        }

        Joins slurStart(String number) {
            return new Joins(tieStops, tieStarts, slurStops, with(slurStarts, List.of(number)), mark, detached, forte);
        }

        /** The first mark counts. */
        Joins marked(BowDirection direction) {
            return new Joins(
                    tieStops, tieStarts, slurStops, slurStarts, mark.or(() -> Optional.of(direction)), detached, forte);
        }

        /** With a dot or a dash. */
        Joins separated() {
            return new Joins(tieStops, tieStarts, slurStops, slurStarts, mark, true, forte);
        }

        /** A forte begins here. */
        Joins loud() {
            return new Joins(tieStops, tieStarts, slurStops, slurStarts, mark, detached, true);
        }

        Joins and(Joins chordNote) {
            return new Joins(
                    tieStops || chordNote.tieStops,
                    tieStarts || chordNote.tieStarts,
                    with(slurStops, chordNote.slurStops),
                    with(slurStarts, chordNote.slurStarts),
                    mark.or(chordNote::mark),
                    detached || chordNote.detached,
                    forte || chordNote.forte);
        }

        private static List<String> with(List<String> some, List<String> more) {
            return Stream.concat(some.stream(), more.stream()).distinct().toList();
        }
    }

    BigFraction end() {
        return start.add(length);
    }

    WrittenNote withChord(List<Integer> morePitches, Joins chordNote) {
        List<Integer> all =
                Stream.concat(pitches.stream(), morePitches.stream()).toList();
        return new WrittenNote(place, start, length, all, bowed, joins.and(chordNote));
    }
}
