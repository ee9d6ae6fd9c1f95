package tuttarco.score;

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
    record MarkedStroke(Position start, Position end, BowDirection direction, Source source) implements PartSpan {}

    /** No stroke to go by: a rest, plucked notes, or a tremolo too quick to count its strokes. */
    record Rest(Position start, Position end) implements PartSpan {}

    /** A place in the part. */
    record Position(int barIndex, double beat) implements Comparable<Position> {
        @Override
        public int compareTo(Position other) {
            int byBar = Integer.compare(barIndex, other.barIndex);
            return byBar != 0 ? byBar : Double.compare(beat, other.beat);
        }
    }

    /** Why a stroke has its direction. */
    enum Source {
        /** Written in the part. */
        MARKED,
        /** Not written; strokes alternate from the last mark, or from the strong-beat rule where nothing is marked yet. */
        ALTERNATED
    }
}
