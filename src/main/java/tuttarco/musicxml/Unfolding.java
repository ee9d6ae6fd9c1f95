package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import tuttarco.files.InputException;
import tuttarco.musicxml.Signs.Jump;
import tuttarco.musicxml.Signs.Label;
import tuttarco.musicxml.Signs.Mark;
import tuttarco.musicxml.Signs.Way;
import tuttarco.score.PartBuilder;

/**
 * The order in which measures are played, from their signs.
 *
 * <p>As MusicXML 4.0 has it (the documentation of {@code repeat}, {@code ending} and {@code sound} in its schema): a closing
 * repeat goes back to the opening one, twice through or as often as it says; after a da capo or dal segno the repeats of what
 * was heard are not taken unless they say so; da capo and dal segno count once; to coda and fine count after such a jump;
 * what says at which times through it counts, counts then.
 *
 * <p>By common practice (no source): without an opening sign a repeat begins after the one before it or at the beginning;
 * where repeats are not taken, the last ending is played; a da capo at a repeat sign comes after the repeats; where nothing
 * jumps back, to coda and fine count the second time through; of several coda signs without a word the last is the coda.
 *
 * <p>Jumps leave at the end of their measure and land at the beginning of one. Each is taken once at most, and a section is
 * repeated a bounded number of times, so that playing comes to an end.
 */
final class Unfolding {
    /** The endings over measures that follow each other. */
    private record Volta(int first, int end, int lastTime, boolean repeated) {}

    private record Taken(int measure, Way way) {}

    private final List<Signs> signs;
    private final boolean repeats;
    private final boolean jumpsBack;
    private final List<Optional<Volta>> voltas;
    private final int[] sectionStarts;

    private final List<Integer> order = new ArrayList<>();
    private final Set<Taken> taken = new HashSet<>();
    private final Set<Integer> heardBeforeJump = new HashSet<>();
    private final int[] visits;
    private int section;
    private int time = 1;
    private int timeAtBrackets = 1;
    private boolean afterJump;

    private Unfolding(List<Signs> signs, boolean repeats) {
        this.signs = withToCoda(signs);
        this.repeats = repeats;
        jumpsBack = any(Way.DA_CAPO) || any(Way.DAL_SEGNO);
        voltas = voltas();
        sectionStarts = sectionStarts();
        visits = new int[signs.size()];
    }

    /**
     * The indices of the measures in the order played.
     *
     * @param repeats whether repeat signs are obeyed; jumps are in any case
     * @throws InputException if a jump leads nowhere, or if more is played than a part can hold
     */
    static List<Integer> order(List<Signs> signs, boolean repeats) throws InputException {
        return new Unfolding(signs, repeats).played();
    }

    private List<Integer> played() throws InputException {
        if (repeats) {
            requireNoneInside();
        }
        int next = 0;
        while (next < signs.size()) {
            if (sectionStarts[next] != section) {
                section = sectionStarts[next];
                time = 1;
            }
            next = isPassedOver(next) ? next + 1 : afterPlaying(next);
        }
        return List.copyOf(order);
    }

    /** Two opening signs and then two closing ones leave open where the second goes back to. */
    private void requireNoneInside() throws InputException {
        int opened = 0;
        boolean closedInside = false;
        Optional<Volta> closedUnder = Optional.empty();
        for (int i = 0; i < signs.size(); i++) {
            if (signs.get(i).repeatBegins()) {
                opened++;
                closedInside = false;
            }
            boolean sameEndings = closedUnder.isPresent() && closedUnder.equals(voltas.get(i));
            if (signs.get(i).repeatEnds().isPresent() && !sameEndings) {
                if (closedInside) {
                    throw new InputException(
                            "measure " + (i + 1) + " of the file closes a repeat around another, and how"
                                    + " often what is inside is played is not certain; write the bars out, or read the part"
                                    + " without repeats");
                }
                closedInside = opened > 1;
                opened = 0;
                closedUnder = voltas.get(i);
            }
        }
    }

    private boolean isPassedOver(int measure) {
        if (voltas.get(measure).filter(volta -> volta.first() == measure).isPresent()) {
            timeAtBrackets = time;
        }
        return voltas.get(measure)
                .filter(volta -> !signs.get(measure).endings().contains(timeOf(volta)))
                .isPresent();
    }

    private int timeOf(Volta volta) {
        boolean lastOnly = (volta.repeated() && !repeats) || heardBeforeJump.contains(volta.first());
        return lastOnly ? volta.lastTime() : timeAtBrackets;
    }

    /** Plays the measure; the one to go on with, or one beyond the last. */
    private int afterPlaying(int measure) throws InputException {
        if (order.size() == PartBuilder.MOST_BARS) {
            throw new InputException("with its repeats the part has more than " + PartBuilder.MOST_BARS
                    + " bars; check its repeat signs, or give a shorter one");
        }
        order.add(measure);
        visits[measure]++;
        if (repeatsAfter(measure)) {
            time++;
            return section;
        }
        if (takes(measure, Way.FINE).isPresent()) {
            return signs.size();
        }
        Optional<Jump> toCoda = takes(measure, Way.TO_CODA);
        if (toCoda.isPresent()) {
            return coda(measure, toCoda.get().to());
        }
        Optional<Jump> daCapo = takes(measure, Way.DA_CAPO);
        if (daCapo.isPresent()) {
            return back(0, daCapo.get());
        }
        Optional<Jump> dalSegno = takes(measure, Way.DAL_SEGNO);
        return dalSegno.isPresent() ? back(segno(measure, dalSegno.get().to()), dalSegno.get()) : measure + 1;
    }

    private boolean repeatsAfter(int measure) {
        return repeats
                && signs.get(measure)
                        .repeatEnds()
                        .filter(end -> end.afterJump() || !heardBeforeJump.contains(measure))
                        .filter(end ->
                                time < voltas.get(measure).map(Volta::lastTime).orElse(end.times()))
                        .isPresent();
    }

    private Optional<Jump> takes(int measure, Way way) {
        return signs.get(measure)
                .jump(way)
                .filter(jump -> counts(jump, measure))
                .filter(jump -> taken.add(new Taken(measure, way)));
    }

    private boolean counts(Jump jump, int measure) {
        if (!jump.times().isEmpty()) {
            return jump.times().contains(visits[measure]);
        }
        return switch (jump.way()) {
            case DA_CAPO, DAL_SEGNO -> true;
            case TO_CODA, FINE -> jumpsBack ? afterJump : visits[measure] == 2;
        };
    }

    private int back(int target, Jump jump) {
        afterJump = true;
        if (!jump.repeatsAgain()) {
            heardBeforeJump.addAll(order);
        }
        time = 1;
        return target;
    }

    private int segno(int from, String name) throws InputException {
        return named(Mark.SEGNO, name)
                .or(() -> IntStream.iterate(from, i -> i >= 0, i -> i - 1)
                        .boxed()
                        .filter(i -> signs.get(i).has(Mark.SEGNO))
                        .findFirst())
                .orElseThrow(() -> nowhere(from, "dal segno", "no segno stands before it"));
    }

    private int coda(int from, String name) throws InputException {
        return named(Mark.CODA, name)
                .or(() -> IntStream.range(from + 1, signs.size())
                        .boxed()
                        .filter(i -> signs.get(i).has(Mark.CODA))
                        .findFirst())
                .orElseThrow(() -> nowhere(from, "to the coda", "no coda sign stands after it"));
    }

    private Optional<Integer> named(Mark mark, String name) {
        Label label = new Label(mark, name);
        return IntStream.range(0, signs.size())
                .boxed()
                .filter(i -> !name.isEmpty() && signs.get(i).labels().contains(label))
                .findFirst();
    }

    private static InputException nowhere(int from, String where, String why) {
        return new InputException("measure " + (from + 1) + " of the file leads " + where + ", but " + why
                + "; correct the signs of the part");
    }

    private boolean any(Way way) {
        return signs.stream().anyMatch(s -> s.jump(way).isPresent());
    }

    private static List<Signs> withToCoda(List<Signs> signs) {
        OptionalInt coda = IntStream.range(0, signs.size())
                .filter(i -> signs.get(i).has(Mark.CODA))
                .reduce((before, later) -> later);
        if (coda.isEmpty() || signs.stream().anyMatch(s -> s.jump(Way.TO_CODA).isPresent())) {
            return signs;
        }
        return IntStream.range(0, signs.size())
                .mapToObj(i -> i < coda.getAsInt() && signs.get(i).has(Mark.CODA)
                        ? signs.get(i).and(toCoda())
                        : signs.get(i))
                .toList();
    }

    private static Signs toCoda() {
        return new Signs(false, Optional.empty(), List.of(), List.of(), List.of(new Jump(Way.TO_CODA, "", List.of())));
    }

    private List<Optional<Volta>> voltas() {
        List<Optional<Volta>> found = new ArrayList<>();
        while (found.size() < signs.size()) {
            int first = found.size();
            if (signs.get(first).endings().isEmpty()) {
                found.add(Optional.empty());
                continue;
            }
            int end = first + 1;
            while (end < signs.size() && goesOn(signs.get(end))) {
                end++;
            }
            Volta volta = volta(first, end);
            IntStream.range(first, end).forEach(i -> found.add(Optional.of(volta)));
        }
        return found;
    }

    /** Whether the measure is under a bracket that goes on or follows, and not under the first of new ones. */
    private static boolean goesOn(Signs measure) {
        return !measure.endings().isEmpty()
                && !(measure.repeatBegins() && measure.endings().contains(1));
    }

    /** A single first ending with its repeat sign is passed over the second time. */
    private Volta volta(int first, int end) {
        List<Signs> under = signs.subList(first, end);
        boolean repeated = under.stream().anyMatch(s -> s.repeatEnds().isPresent());
        int highest = under.stream()
                .flatMap(s -> s.endings().stream())
                .mapToInt(Integer::intValue)
                .max()
                .orElseThrow();
        return new Volta(first, end, repeated ? Math.max(2, highest) : highest, repeated);
    }

    private int[] sectionStarts() {
        int[] starts = new int[signs.size()];
        for (int i = 1; i < starts.length; i++) {
            Optional<Volta> before = voltas.get(i - 1);
            int start = starts[i - 1];
            boolean afterBrackets =
                    before.filter(volta -> start <= volta.first()).isPresent();
            boolean afterRepeat = signs.get(i - 1).repeatEnds().isPresent();
            boolean afterEnd = voltas.get(i).isEmpty() && (afterBrackets || afterRepeat);
            starts[i] = afterEnd || signs.get(i).repeatBegins() ? i : start;
        }
        return starts;
    }
}
