package tuttarco.score;

import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.BowDirection;

/**
 * One stroke or one rest of the part, in the order played. Spans follow each other without gaps.
 *
 * <p>Positions are a bar's index in {@link Part#bars()} and a beat within it (1 is the first beat; fractions are between
 * beats). A span may reach over bar lines; its end is exclusive, and the end of a bar may be given as that bar's last
 * position ({@code firstBeat + lengthBeats}) or as the first of the next.
 */
public sealed interface PartSpan {
    Position start();

    Position end();

    /** One bow stroke, of one or several notes. */
    record MarkedStroke(Position start, Position end, BowDirection direction, Reason reason) implements PartSpan {
        /** Whether the part writes the direction at the stroke. */
        public boolean marked() {
            return reason instanceof Reason.Marked;
        }
    }

    /** No stroke to go by: a rest, plucked notes, or a tremolo too quick to count its strokes. */
    record Rest(Position start, Position end) implements PartSpan {}

    /** A place in the part. */
    record Position(int barIndex, double beat) implements Comparable<Position> {
        /** How far from a fraction a place may lie through rounding, beats. */
        private static final double ROUNDING_BEATS = 1e-6;

        @Override
        public int compareTo(Position other) {
            int byBar = Integer.compare(barIndex, other.barIndex);
            return byBar != 0 ? byBar : Double.compare(beat, other.beat);
        }

        /** The beat as people say it: {@code 3}, {@code 2 1/2}. */
        public String spokenBeat() {
            long whole = (long) Math.floor(beat + ROUNDING_BEATS);
            return Math.abs(beat - whole) <= ROUNDING_BEATS
                    ? Long.toString(whole)
                    : whole + " " + Fractions.spoken(new BigFraction(beat - whole, ROUNDING_BEATS, 100));
        }
    }
}
