package tuttarco.bowtext;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Bar;
import tuttarco.score.BarPieces;
import tuttarco.score.BarPieces.Piece;
import tuttarco.score.Hints;
import tuttarco.score.Part;
import tuttarco.score.PartBuilder;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.Practice;
import tuttarco.score.Typed;
import tuttarco.score.WrittenSpan;
import tuttarco.score.WrittenSpan.Given;

/**
 * Writes the bowing of some bars over a part: strokes, rests and marks of these bars are those written over, wherever the bar
 * is played; all others and the notes stay. The whole is then completed anew.
 */
public final class BowOver {
    /** A stroke that is not over yet. */
    private record Held(Position start, Given given) {}

    private final Part part;
    private final PartBuilder builder;
    private final Map<String, Integer> over = new HashMap<>();
    private final Set<Position> begins = new HashSet<>();
    private Optional<Held> held = Optional.empty();

    private BowOver(Part part, Part written, Practice practice) {
        this.part = part;
        this.builder = new PartBuilder(practice);
        for (int i = 0; i < written.bars().size(); i++) {
            over.put(written.bars().get(i).number(), i);
        }
    }

    /**
     * The part with the bars of a bow text written over it, and completed anew.
     *
     * @param bowText bow text of some of the part's bars; the others are left out
     * @param fileName what the bow text is called in messages
     * @throws InputException if it can't be read, if a bar of it has another length than the part's, or if a stroke reaches
     *     over the bar lines of those written over
     */
    public static Part over(Part part, byte[] bowText, String fileName, Practice practice) throws InputException {
        Part written = BowTextReader.readOver(bowText, fileName, Instrument.VIOLIN, part);
        try {
            return over(part, written, practice);
        } catch (InputException e) {
            throw new InputException(Plain.text(fileName) + ": " + e.getMessage(), e);
        }
    }

    /** The part with bars written over it as they are typed; see {@link #over(Part, byte[], String, Practice)}. */
    public static Typed typed(Part part, String bowText, Practice practice) {
        Typed typed = BowTextReader.typedOver(bowText, Instrument.VIOLIN, part);
        if (!(typed instanceof Typed.Read read)) {
            return typed;
        }
        try {
            return new Typed.Read(over(part, read.part(), practice));
        } catch (InputException e) {
            return new Typed.Wrong(Optional.empty(), e.getMessage());
        }
    }

    static Part over(Part part, Part written, Practice practice) throws InputException {
        return new BowOver(part, written, practice).written(BarPieces.of(part), BarPieces.of(written), written.bars());
    }

    private Part written(List<List<Piece>> pieces, List<List<Piece>> overPieces, List<Bar> overBars)
            throws InputException {
        for (int i = 0; i < part.bars().size(); i++) {
            Bar bar = part.bars().get(i);
            builder.bar(bar);
            Integer written = over.get(bar.number());
            if (written == null) {
                layOut(i, bar, pieces.get(i));
            } else {
                requireAlike(bar, overBars.get(written));
                layOut(i, bar, overPieces.get(written));
            }
        }
        requireOver(part.bars().get(part.bars().size() - 1), false);
        part.notes().forEach(builder::note);
        addHints();
        return builder.build(part.name());
    }

    private static void requireAlike(Bar bar, Bar written) throws InputException {
        if (!bar.equals(written)) {
            throw new InputException("bar " + bar.number() + " is written over with another metre or length than it has"
                    + " in the part; correct that");
        }
    }

    private void layOut(int index, Bar bar, List<Piece> pieces) throws InputException {
        BigFraction at = new BigFraction(bar.firstBeat());
        for (Piece piece : pieces) {
            Position start = new Position(index, at.doubleValue());
            at = at.add(piece.lengthBeats(bar.metre()));
            Position end = new Position(index, at.doubleValue());
            if (piece.span() instanceof PartSpan.Rest) {
                requireOver(bar, false);
                builder.rest(start, end);
            } else {
                requireOver(bar, !piece.begins());
                Held stroke = held.orElseGet(
                        () -> new Held(start, WrittenSpan.of(piece.span()).given()));
                begins.add(stroke.start());
                held = piece.ends() ? Optional.empty() : Optional.of(stroke);
                if (piece.ends()) {
                    builder.stroke(stroke.start(), end, stroke.given());
                }
            }
        }
    }

    private void requireOver(Bar bar, boolean goesOn) throws InputException {
        if (held.isPresent() != goesOn) {
            throw new InputException("a stroke reaches over the bar line at bar " + bar.number()
                    + " where a bar is written over; write over the bars on both its sides");
        }
    }

    /** What the part says inside its strokes holds on, save in the bars written over where it no longer fits. */
    private void addHints() {
        part.hints().fortes().forEach(builder::forte);
        for (Hints.Joined joined : part.hints().joined()) {
            if (!begins.contains(joined.at())) {
                builder.join(joined.at(), joined.by());
            }
        }
        for (Hints.InnerMark mark : part.hints().innerMarks()) {
            if (!over.containsKey(part.bars().get(mark.at().barIndex()).number())) {
                builder.innerMark(mark.at(), mark.direction());
            }
        }
    }
}
