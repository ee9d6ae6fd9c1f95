package tuttarco.bowtext;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.score.Awkward;
import tuttarco.score.Bar;
import tuttarco.score.BarPieces;
import tuttarco.score.BarPieces.Piece;
import tuttarco.score.Fractions;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.Reason;

/** Writes a part as bow text, to be read by {@link BowTextReader}. */
public final class BowTextWriter {
    private BowTextWriter() {}

    /**
     * The part as bow text, with its marks only.
     *
     * @throws IllegalArgumentException if a bar's number can't stand in bow text, or if a length is finer than 1/10080 of
     *     a quarter note
     */
    public static String text(Part part) {
        return text(part, false, List.of());
    }

    /**
     * The part as bow text to be edited: awkward places are comments before their bars.
     *
     * @param every whether every direction is written, and not only the marks
     * @throws IllegalArgumentException as for {@link #text(Part)}
     */
    public static String textToEdit(Part part, boolean every) {
        return text(part, every, part.awkward());
    }

    private static String text(Part part, boolean every, List<Awkward> remarks) {
        StringBuilder text = new StringBuilder("part " + part.name() + "\n");
        Optional<Metre> metre = Optional.empty();
        List<List<Piece>> bars = BarPieces.of(part);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = part.bars().get(i);
            if (!metre.equals(Optional.of(bar.metre()))) {
                metre = Optional.of(bar.metre());
                text.append("metre ").append(bar.metre()).append('\n');
            }
            int index = i;
            remarks.stream()
                    .filter(remark -> remark.at().barIndex() == index)
                    .forEach(remark ->
                            text.append("# ").append(remark.spoken(part.bars())).append('\n'));
            text.append(head(bar))
                    .append(": ")
                    .append(entries(bar, bars.get(i), every))
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

    private static String entries(Bar bar, List<Piece> pieces, boolean every) {
        List<String> entries = new ArrayList<>();
        for (Piece piece : pieces) {
            String beats = Fractions.spoken(piece.lengthBeats(bar.metre()));
            String length = beats.equals("1") ? "" : beats;
            if (piece.span() instanceof MarkedStroke stroke) {
                entries.add((piece.begins() ? sign(stroke, every) : "~") + length + (piece.ends() ? "" : "~"));
            } else {
                entries.add("-" + length);
            }
        }
        return String.join(" ", entries);
    }

    private static String sign(MarkedStroke stroke, boolean every) {
        if (stroke.reason() instanceof Reason.Hooked) {
            return "=";
        }
        return stroke.marked() || every ? stroke.direction().word().substring(0, 1) : ".";
    }
}
