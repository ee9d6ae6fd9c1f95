package tuttarco.musicxml;

import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.musicxml.MeasureReader.Measure;
import tuttarco.score.Bar;
import tuttarco.score.Fractions;
import tuttarco.score.PartSpan.Position;

/** A measure's quarter notes as beats of its bar. */
final class BarGrid {
    private final Measure measure;
    private final BigFraction quartersPerBeat;
    private final BigFraction lengthQuarters;
    private final BigFraction firstBeat;

    BarGrid(Measure measure, boolean first) {
        this.measure = measure;
        quartersPerBeat = new BigFraction(4, measure.metre().beatType());
        BigFraction full = quartersPerBeat.multiply(measure.metre().beats());
        lengthQuarters = Fractions.positive(measure.length()) ? measure.length() : full;
        boolean late = (first || measure.head().implicit()) && lengthQuarters.compareTo(full) < 0;
        firstBeat = late ? full.subtract(lengthQuarters).divide(quartersPerBeat).add(1) : BigFraction.ONE;
    }

    Bar bar() {
        return new Bar(
                measure.head().number(),
                measure.metre(),
                firstBeat.doubleValue(),
                lengthQuarters.divide(quartersPerBeat).doubleValue(),
                measure.rehearsal());
    }

    BigFraction lengthQuarters() {
        return lengthQuarters;
    }

    /** The place so many quarter notes into the bar. */
    Position position(int barIndex, BigFraction quarters) {
        return new Position(
                barIndex, quarters.divide(quartersPerBeat).add(firstBeat).doubleValue());
    }
}
