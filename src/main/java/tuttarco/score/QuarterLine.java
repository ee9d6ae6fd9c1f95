package tuttarco.score;

import java.util.List;
import tuttarco.score.PartSpan.Position;

/** Places of a part on one line of quarter notes, in the order played. */
final class QuarterLine {
    private final List<Bar> bars;
    private final double[] startQuarters;

    QuarterLine(List<Bar> bars) {
        this.bars = bars;
        startQuarters = new double[bars.size()];
        for (int i = 1; i < bars.size(); i++) {
            startQuarters[i] = startQuarters[i - 1] + lengthQuarters(bars.get(i - 1));
        }
    }

    double at(Position place) {
        Bar bar = bars.get(place.barIndex());
        return startQuarters[place.barIndex()]
                + (place.beat() - bar.firstBeat()) * bar.metre().quartersPerBeat();
    }

    double lengthQuarters(Position start, Position end) {
        return at(end) - at(start);
    }

    private static double lengthQuarters(Bar bar) {
        return bar.lengthBeats() * bar.metre().quartersPerBeat();
    }
}
