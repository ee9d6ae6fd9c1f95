package tuttarco.musicxml;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartChoice.Line;

/**
 * One note or rest of a bar as MusicXML writes it.
 *
 * @param start from the bar's beginning, quarter notes
 * @param length quarter notes
 * @param place index of its element among those of its measure
 * @param pitches sounding pitches, MIDI note numbers; none for a rest
 * @param plucked played pizzicato
 * @param strokes how many strokes it takes: one, more for a measured tremolo, none for a rest, a plucked note and a tremolo
 *     too quick to count
 */
record WrittenNote(
        int place,
        BigFraction start,
        BigFraction length,
        List<Integer> pitches,
        boolean plucked,
        int strokes,
        Joins joins) {
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

        /** What the next note has if this is a grace note slurred to it: the slurs begun and not ended, and the mark. */
        Joins intoNext(Joins next) {
            List<String> within =
                    slurStarts.stream().filter(next.slurStops::contains).toList();
            return new Joins(
                    next.tieStops,
                    next.tieStarts,
                    without(next.slurStops, within),
                    with(without(slurStarts, within), next.slurStarts),
                    slurStarts.isEmpty() ? next.mark : next.mark.or(this::mark),
                    next.detached,
                    next.forte);
        }

        private Joins tiedAs(Joins other) {
            return new Joins(other.tieStops, other.tieStarts, slurStops, slurStarts, mark, detached, forte);
        }

        Joins slurred(List<String> stops, List<String> starts) {
            return new Joins(tieStops, tieStarts, stops, starts, mark, detached, forte);
        }

        Joins markOnly() {
            return new Joins(false, false, List.of(), List.of(), mark, detached, forte);
        }

        Joins withoutTieStop() {
            return new Joins(false, tieStarts, slurStops, slurStarts, mark, detached, forte);
        }

        private static List<String> without(List<String> some, List<String> others) {
            return some.stream().filter(text -> !others.contains(text)).toList();
        }

        private static List<String> with(List<String> some, List<String> more) {
            return Stream.concat(some.stream(), more.stream()).distinct().toList();
        }
    }

    BigFraction end() {
        return start.add(length);
    }

    /** This with another note of its chord; of a divided chord only the note of the line and its ties are left. */
    WrittenNote withChord(WrittenNote other, Optional<Line> line) {
        Joins together = joins.and(other.joins);
        if (line.isEmpty() || pitches.isEmpty() || other.pitches.isEmpty()) {
            return with(Stream.concat(pitches.stream(), other.pitches.stream()).toList(), together);
        }
        boolean otherIsHigher = other.pitches.get(0) > pitches.get(0);
        WrittenNote played = otherIsHigher == (line.get() == Line.UPPER) ? other : this;
        return with(played.pitches, together.tiedAs(played.joins));
    }

    WrittenNote with(Joins otherJoins) {
        return with(pitches, otherJoins);
    }

    private WrittenNote with(List<Integer> otherPitches, Joins otherJoins) {
        return new WrittenNote(place, start, length, otherPitches, plucked, strokes, otherJoins);
    }
}
