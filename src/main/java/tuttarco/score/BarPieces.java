package tuttarco.score;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.score.PartSpan.Position;

/** A part's strokes and rests cut at the bar lines, for writing them down. */
public final class BarPieces {
    /** Grid of written lengths, a quarter note's share: holds halvings down to a 128th, thirds, fifths, sevenths, ninths. */
    public static final int DIVISIONS = 10_080;

    /** How far from the grid a length may lie through rounding, in divisions. */
    private static final double ROUNDING = 1e-4;

    /**
     * What of a span lies in one bar.
     *
     * @param divisions length on the grid
     * @param begins whether the span begins here; {@code ends} whether it ends here
     */
    public record Piece(PartSpan span, int divisions, boolean begins, boolean ends) {
        public BigFraction lengthBeats(Metre metre) {
            return new BigFraction(divisions, DIVISIONS).multiply(new BigFraction(metre.beatType(), 4));
        }
    }

    private BarPieces() {}

    /** One list of pieces for each bar, without gaps between them. */
    public static List<List<Piece>> of(Part part) {
        List<List<Piece>> bars = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < part.bars().size(); i++) {
            List<Piece> pieces = new ArrayList<>();
            Bar bar = part.bars().get(i);
            double endBeat = bar.firstBeat() + bar.lengthBeats();
            while (next < part.spans().size() && reachesInto(part.spans().get(next), i, bar)) {
                PartSpan span = part.spans().get(next);
                boolean begins = span.start().barIndex() == i;
                boolean ends = endsBy(span.end(), i, part.bars());
                double from = begins ? span.start().beat() : bar.firstBeat();
                double to = span.end().barIndex() == i ? span.end().beat() : endBeat;
                pieces.add(new Piece(span, divisions(from, to, bar), begins, ends));
                if (!ends) {
                    break;
                }
                next++;
            }
            bars.add(List.copyOf(pieces));
        }
        return bars;
    }

    private static boolean reachesInto(PartSpan span, int barIndex, Bar bar) {
        Position start = span.start();
        return start.barIndex() < barIndex
                || (start.barIndex() == barIndex && start.beat() < bar.firstBeat() + bar.lengthBeats());
    }

    private static boolean endsBy(Position end, int barIndex, List<Bar> bars) {
        boolean onNextBarLine = end.barIndex() == barIndex + 1
                && barIndex + 1 < bars.size()
                && end.beat() <= bars.get(barIndex + 1).firstBeat();
        return end.barIndex() <= barIndex || onNextBarLine;
    }

    private static int divisions(double fromBeat, double toBeat, Bar bar) {
        double exact = (toBeat - fromBeat) * bar.metre().quartersPerBeat() * DIVISIONS;
        long rounded = Math.round(exact);
        if (!(Math.abs(exact - rounded) <= ROUNDING) || rounded < 1) {
            throw new IllegalArgumentException(
                    "bar " + bar.number() + " holds a length that no notation has: " + (toBeat - fromBeat) + " beats");
        }
        return Math.toIntExact(rounded);
    }
}
