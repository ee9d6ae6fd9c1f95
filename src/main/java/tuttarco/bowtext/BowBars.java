package tuttarco.bowtext;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextLine.Word;
import tuttarco.bowtext.BowTextLine.Wrong;
import tuttarco.bowtext.BowToken.What;
import tuttarco.files.InputException;
import tuttarco.score.Bar;
import tuttarco.score.Fractions;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartBuilder;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.WrittenSpan.Given;

/** Lays the entries of bow text on the beats of their bars and holds strokes over bar lines. */
final class BowBars {
    /** How a bar's length stands to its metre. */
    enum Extent {
        FULL,
        PICKUP,
        SHORT,
        LONG;

        static Optional<Extent> ofWord(String word) {
            return Arrays.stream(values())
                    .filter(extent -> extent != FULL
                            && extent.name().toLowerCase(Locale.ROOT).equals(word))
                    .findFirst();
        }

        String unfit(Metre metre) {
            return switch (this) {
                case FULL ->
                    "don't fill " + metre + "; correct the lengths, or write 'pickup', 'short' or 'long' before the"
                            + " colon";
                case PICKUP, SHORT ->
                    "is not shorter than " + metre + "; correct the lengths or take the word before the"
                            + " colon away";
                case LONG ->
                    "is not longer than " + metre + "; correct the lengths or take the word before the colon away";
            };
        }

        boolean fits(int comparedWithMetre) {
            return switch (this) {
                case FULL -> comparedWithMetre == 0;
                case PICKUP, SHORT -> comparedWithMetre < 0;
                case LONG -> comparedWithMetre > 0;
            };
        }
    }

    /** What is written after the colon of a bar. */
    record Content(Extent extent, List<BowToken> entries) {
        Content {
            entries = List.copyOf(entries);
        }
    }

    /** A stroke that is not over yet. */
    private record Held(Position start, Given given) {}

    /** Longest bar, beats; guards against absurd files. */
    private static final int LONGEST_BEATS = 1024;

    private final PartBuilder builder;
    private final boolean over;
    private boolean empty = true;
    private Optional<Held> held = Optional.empty();

    /** {@code over} says whether the bars are written over a part, which may have strokes before them. */
    BowBars(Instrument instrument, boolean over) {
        builder = new PartBuilder(instrument);
        this.over = over;
    }

    void add(String label, Metre metre, Content content, Word where) throws Wrong {
        BigFraction length = length(label, metre, content, where);
        BigFraction firstBeat = content.extent() == Extent.PICKUP
                ? new BigFraction(metre.beats() + 1).subtract(length)
                : BigFraction.ONE;
        requireHolds(label, content.entries(), where);
        try {
            int index = builder.bar(new Bar(label, metre, firstBeat.doubleValue(), length.doubleValue()));
            layOut(content.entries(), index, firstBeat);
        } catch (InputException e) {
            throw where.wrong(e.getMessage());
        }
        empty = false;
    }

    Part part(String name) throws InputException {
        if (empty) {
            throw new InputException("no bar is written here; write bars like '17: d u d u'");
        }
        if (held.isPresent()) {
            throw new InputException("the last stroke is held over the end of the part; take its ~ away");
        }
        return builder.build(name);
    }

    private static BigFraction length(String label, Metre metre, Content content, Word where) throws Wrong {
        BigFraction length = BigFraction.ZERO;
        for (BowToken entry : content.entries()) {
            length = length.add(entry.total());
            if (length.doubleValue() > LONGEST_BEATS || !Fractions.sane(length)) {
                throw where.wrong("bar " + label + " holds a length that no bar has; check the lengths of its strokes");
            }
        }
        if (!content.extent().fits(length.compareTo(new BigFraction(metre.beats())))) {
            throw where.wrong("bar " + label + " holds " + Fractions.spoken(length) + " beats, which "
                    + content.extent().unfit(metre));
        }
        return length;
    }

    private void requireHolds(String label, List<BowToken> entries, Word where) throws Wrong {
        boolean heldInto = entries.get(0).what() == What.HELD;
        if (held.isPresent() && !heldInto) {
            throw where.wrong("a stroke is held over into bar " + label
                    + ", which doesn't begin with ~ and a length; begin it like '~2'");
        }
        if (held.isEmpty() && heldInto) {
            throw where.wrong("bar " + label + " begins with ~, but no stroke is held over into it; end the bar before"
                    + " with one like 'd2~'");
        }
        int last = entries.size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean holdsInto = i > 0 && entries.get(i).what() == What.HELD;
            boolean holdsOver = i < last && entries.get(i).heldOver();
            if (holdsInto || holdsOver) {
                throw where.wrong("a ~ stands in the middle of bar " + label
                        + "; it holds a stroke over a bar line, so write it only at the bar's end and beginning");
            }
        }
    }

    private void layOut(List<BowToken> entries, int index, BigFraction firstBeat) throws InputException {
        BigFraction at = firstBeat;
        for (BowToken entry : entries) {
            for (int i = 0; i < entry.count(); i++) {
                Position start = new Position(index, at.doubleValue());
                at = at.add(entry.length());
                layOut(entry, start, new Position(index, at.doubleValue()));
            }
        }
    }

    private void layOut(BowToken entry, Position start, Position end) throws InputException {
        if (entry.what() == What.REST) {
            builder.rest(start, end);
            return;
        }
        if (entry.given() == Given.HOOKED && !over && !builder.hasStroke()) {
            throw new InputException("the first stroke can't be hooked to one before; write d, u or . for it");
        }
        Held stroke = held.orElseGet(() -> new Held(start, entry.given()));
        if (entry.heldOver()) {
            held = Optional.of(stroke);
        } else {
            builder.stroke(stroke.start(), end, stroke.given());
            held = Optional.empty();
        }
    }
}
