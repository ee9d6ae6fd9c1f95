package tuttarco.score;

import java.util.List;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan.Position;

/** A place of the part where the bowing contradicts itself or sits badly: for the leader to decide, never mended here. */
public sealed interface Awkward {
    Position at();

    /** What is awkward and what may be done, in one sentence without its place. */
    String sentence(List<Bar> bars);

    /** The place as people say it: {@code bar 17 beat 3}, {@code bar 4 beat 2 1/2}. */
    static String place(Position at, List<Bar> bars) {
        return "bar " + bars.get(at.barIndex()).number() + " beat " + at.spokenBeat();
    }

    /** {@code Bar 17 beat 3: two down-bows are marked in a row ...}. */
    default String spoken(List<Bar> bars) {
        String place = place(at(), bars);
        return "B" + place.substring(1) + ": " + sentence(bars);
    }

    /**
     * Alternating from the mark or setting before, the bow arrives the other way than marked.
     *
     * @param from where the bow was last marked or set anew
     */
    record RunsAgainst(Position at, Position from, BowDirection marked) implements Awkward {
        @Override
        public String sentence(List<Bar> bars) {
            return article(marked) + " is marked, but counted on from " + place(from, bars) + " the stroke is "
                    + article(marked.opposite()) + "; hook, slur or retake somewhere between, or change a mark.";
        }
    }

    /** Two strokes marked alike with no rest between them. */
    record EqualMarks(Position at, BowDirection marked) implements Awkward {
        @Override
        public String sentence(List<Bar> bars) {
            return "two " + marked.word() + "-bows are marked in a row without a rest; the bow must be lifted and set"
                    + " again, or the two hooked.";
        }
    }

    /** A mark on a note that goes on in the stroke of the note before. */
    record MarkInSlur(Position at, BowDirection marked) implements Awkward {
        @Override
        public String sentence(List<Bar> bars) {
            return article(marked)
                    + " is marked inside a slur or tie, where the bow goes on; end the slur before it, or"
                    + " take the mark away.";
        }
    }

    /** A long down-bow ends at the tip, where the forte of the up-beat after it has to begin. */
    record LongIntoForte(Position at) implements Awkward {
        @Override
        public String sentence(List<Bar> bars) {
            return "a long down-bow leads into this forte up-beat, which begins at the tip; divide or save the bow before"
                    + " it, or retake.";
        }
    }

    private static String article(BowDirection direction) {
        return (direction == BowDirection.DOWN ? "a " : "an ") + direction.word() + "-bow";
    }
}
