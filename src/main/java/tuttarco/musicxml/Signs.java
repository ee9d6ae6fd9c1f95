package tuttarco.musicxml;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The signs of one measure that say which measure is played after it.
 *
 * @param repeatBegins a repeat sign that opens stands before it
 * @param repeatEnds the repeat sign that closes after it
 * @param endings the times through for which it is played; none for a measure under no bracket
 * @param labels where jumps can land: before it
 * @param jumps where playing can go on elsewhere or end: after it
 */
record Signs(
        boolean repeatBegins,
        Optional<RepeatEnd> repeatEnds,
        List<Integer> endings,
        List<Label> labels,
        List<Jump> jumps) {
    static final Signs NONE = new Signs(false, Optional.empty(), List.of(), List.of(), List.of());

    /**
     * A closing repeat sign.
     *
     * @param times how often the section is played
     * @param afterJump whether it is repeated again after a da capo or dal segno
     */
    record RepeatEnd(int times, boolean afterJump) {}

    enum Mark {
        SEGNO,
        CODA
    }

    /** A segno or coda; the name tells several of them apart and may be empty. */
    record Label(Mark mark, String name) {}

    enum Way {
        DA_CAPO,
        DAL_SEGNO,
        TO_CODA,
        FINE
    }

    /**
     * A jump, or the end.
     *
     * @param to the name of the label jumped to; may be empty
     * @param times the times through at which it counts; none where the usual ones are meant
     * @param repeatsAgain whether after it the repeats of what was heard are taken again
     */
    record Jump(Way way, String to, List<Integer> times, boolean repeatsAgain) {
        /** A jump after which no repeat is taken again. */
        Jump(Way way, String to, List<Integer> times) {
            this(way, to, times, false);
        }
    }

    Signs {
        endings = List.copyOf(endings);
        labels = List.copyOf(labels);
        jumps = List.copyOf(jumps);
    }

    Optional<Jump> jump(Way way) {
        return jumps.stream().filter(jump -> jump.way() == way).findFirst();
    }

    boolean has(Mark mark) {
        return labels.stream().anyMatch(label -> label.mark() == mark);
    }

    /** These signs, and those that another part of the same score has at the same measure. */
    Signs and(Signs other) {
        return new Signs(
                repeatBegins || other.repeatBegins,
                repeatEnds.or(other::repeatEnds),
                merged(endings, other.endings),
                merged(labels, other.labels),
                merged(jumps, other.jumps));
    }

    private static <T> List<T> merged(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }
}
