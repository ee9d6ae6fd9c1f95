package tuttarco.demo;

import tuttarco.bow.BowDirection;

/**
 * One stroke as a player means to play it.
 *
 * @param retaken the bow is set again before the next stroke because the part says so
 */
record Note(double startS, double endS, BowDirection direction, int barIndex, boolean retaken) {
    double lengthS() {
        return endS - startS;
    }

    Note from(double newStartS) {
        return new Note(newStartS, endS, direction, barIndex, retaken);
    }

    Note until(double newEndS) {
        return new Note(startS, newEndS, direction, barIndex, retaken);
    }

    Note going(BowDirection newDirection, boolean nowRetaken) {
        return new Note(startS, endS, newDirection, barIndex, nowRetaken);
    }
}
