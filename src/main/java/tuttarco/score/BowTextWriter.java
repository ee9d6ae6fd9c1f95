package tuttarco.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.score.BarPieces.Piece;
import tuttarco.score.PartSpan.MarkedStroke;

/** Writes a part as bow text, to be read by {@link BowTextReader}. */
public final class BowTextWriter {
    private BowTextWriter() {}

    /**
     * The part as bow text.
     *
     * @throws IllegalArgumentException if a bar's number can't stand in bow text, or if a length is finer than 1/10080 of
     *     a quarter note
     */
    public static String text(Part part) {
        StringBuilder text = new StringBuilder("part " + part.name() + "\n");
        Optional<Metre> metre = Optional.empty();
        List<List<Piece>> bars = BarPieces.of(part);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = part.bars().get(i);
            if (!metre.equals(Optional.of(bar.metre()))) {
                metre = Optional.of(bar.metre());
                text.append("metre ").append(bar.metre()).append('\n');
            }
            text.append(head(bar))
                    .append(": ")
                    .append(entries(bar, bars.get(i)))
                    .append('\n');
        }
        return text.toString();
    }

    private static String head(Bar bar) {
        if (!BowTextParser.LABEL.matcher(bar.number()).matches()) {
            throw new IllegalArgumentException("bow text has no way to write the bar number " + bar.number());
        }
        int full = bar.metre().beats();
        if (bar.firstBeat() > 1) {
            return bar.number() + " pickup";
        }
        if (bar.lengthBeats() == full) {
            return bar.number();
        }
        return bar.number() + (bar.lengthBeats() < full ? " short" : " long");
    }

    private static String entries(Bar bar, List<Piece> pieces) {
        List<String> entries = new ArrayList<>();
        for (Piece piece : pieces) {
            String beats = Fractions.spoken(piece.lengthBeats(bar.metre()));
            String length = beats.equals("1") ? "" : beats;
            if (piece.span() instanceof MarkedStroke stroke) {
                entries.add((piece.begins() ? sign(stroke) : "~") + length + (piece.ends() ? "" : "~"));
            } else {
                entries.add("-" + length);
            }
        }
        return String.join(" ", entries);
    }

    private static String sign(MarkedStroke stroke) {
        if (stroke.reason() instanceof Reason.Hooked) {
            return "=";
        }
        return stroke.marked() ? stroke.direction().word().substring(0, 1) : ".";
    }
}
