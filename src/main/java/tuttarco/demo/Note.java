package tuttarco.demo;

import tuttarco.bow.BowDirection;
import tuttarco.strokes.StrokeKind;

/**
 * One stroke as a player means to play it.
 *
 * @param retaken the bow is set again before the next stroke because the part says so
 * @param tremolo one of many short strokes to and fro, too fast to be told apart
 */
record Note(double startS, double endS, BowDirection direction, int barIndex, boolean retaken, boolean tremolo) {
    double lengthS() {
        return endS - startS;
    }

    StrokeKind kind() {
        return tremolo ? StrokeKind.TREMOLO : StrokeKind.of(direction);
    }

    Note from(double newStartS) {
        return new Note(newStartS, endS, direction, barIndex, retaken, tremolo);
    }

    Note until(double newEndS) {
        return new Note(startS, newEndS, direction, barIndex, retaken, tremolo);
    }

    Note going(BowDirection newDirection, boolean nowRetaken) {
        return new Note(startS, endS, newDirection, barIndex, nowRetaken, tremolo);
    }
}
