package tuttarco.beats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the beats lie in the recording, in time order, strictly increasing.
 *
 * <p>The last beat of a run lasts as long as the one before it, at most until the next run begins; between runs nobody
 * plays the part.
 *
 * @param runs the stretches played without a stop, one after the other; together they hold every beat
 */
public record BeatMap(List<Beat> beats, List<Run> runs) {
    public BeatMap {
        beats = List.copyOf(beats);
        runs = List.copyOf(runs);
        int next = 0;
        for (Run run : runs) {
            if (run.firstIndex() != next) {
                throw new IllegalArgumentException("runs follow each other, but one begins at beat " + run.firstIndex()
                        + " where " + next + " is next");
            }
            next = run.lastIndex() + 1;
        }
        if (next != beats.size() || runs.isEmpty()) {
            throw new IllegalArgumentException("runs hold all beats, not " + next + " of " + beats.size());
        }
        for (int i = 1; i < beats.size(); i++) {
            if (!(beats.get(i).timeS() > beats.get(i - 1).timeS())) {
                throw new IllegalArgumentException(
                        "beats follow each other in time, but " + beats.get(i).spoken() + " does not come after "
                                + beats.get(i - 1).spoken());
            }
        }
    }

    /** Beats played without a stop. */
    public BeatMap(List<Beat> beats) {
        this(beats, List.of(new Run(0, beats.size() - 1)));
    }

    /** Stretches of beats with a stop after each, at least two beats in each. */
    public static BeatMap ofStretches(List<List<Beat>> stretches) {
        List<Run> runs = new ArrayList<>();
        int next = 0;
        for (List<Beat> stretch : stretches) {
            runs.add(new Run(next, next + stretch.size() - 1));
            next += stretch.size();
        }
        return new BeatMap(stretches.stream().flatMap(List::stream).toList(), runs);
    }

    /** Whether these are beats of bars; they are strokes of the leader's otherwise. */
    public boolean inBars() {
        return beats.get(0).inBar();
    }

    /** Whether the playing stopped between the first beat and the last. */
    public boolean stops() {
        return runs.size() > 1;
    }

    /** The run that holds beat number {@code index}. */
    public Run runOf(int index) {
        int low = 0;
        int high = runs.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (index <= runs.get(middle).lastIndex()) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return runs.get(low);
    }

    /** The last beat that begins at a time, seconds, or before it; empty before the first one. */
    public Optional<Integer> lastBegun(double timeS) {
        int low = 0;
        int high = beats.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (beats.get(middle).timeS() <= timeS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(low - 1);
    }

    /** The beat that lasts at a time, seconds; empty before the first one, after the last one and where the playing stopped. */
    public Optional<Integer> indexAt(double timeS) {
        return lastBegun(timeS).filter(beat -> timeS < endS(beat));
    }

    /** The beat that is meant by a time, seconds: one that begins at most half its length later, or else the one that lasts. */
    public Optional<Integer> meantBy(double timeS) {
        int next = lastBegun(timeS).map(i -> i + 1).orElse(0);
        boolean soon = next < beats.size()
                && beats.get(next).timeS() - timeS
                        <= (endS(next) - beats.get(next).timeS()) / 2;
        return soon ? Optional.of(next) : indexAt(timeS);
    }

    /** When beat number {@code index} ends, seconds: where the next of its run begins, or as {@link #endS(Run)} says. */
    public double endS(int index) {
        Run run = runOf(index);
        return index < run.lastIndex() ? beats.get(index + 1).timeS() : endS(run);
    }

    /** When a run ends, seconds: its last beat lasts as long as the one before it, or until the next run begins. */
    public double endS(Run run) {
        int last = run.lastIndex();
        double endS = 2 * beats.get(last).timeS() - beats.get(last - 1).timeS();
        return last + 1 < beats.size() ? Math.min(endS, beats.get(last + 1).timeS()) : endS;
    }

    /** Whether a time, seconds, lies in a stop: after the end of one run and before the next. */
    public boolean stopped(double timeS) {
        return runs.stream()
                .anyMatch(run -> run.lastIndex() + 1 < beats.size()
                        && endS(run) <= timeS
                        && timeS < beats.get(run.lastIndex() + 1).timeS());
    }

    /** Whether a run begins with beat number {@code index}. */
    public boolean beginsRun(int index) {
        return runOf(index).firstIndex() == index;
    }

    /**
     * A bar as it was played once.
     *
     * @param number as printed
     * @param firstIndex index of its first beat; {@code lastIndex} of its last, inclusive
     */
    public record PlayedBar(String number, int firstIndex, int lastIndex) {}

    /** The bars in the order played, a bar that goes on after a stop once more; together they hold every beat. */
    public List<PlayedBar> bars() {
        List<PlayedBar> bars = new ArrayList<>();
        int first = 0;
        for (int next = 1; next <= beats.size(); next++) {
            if (next == beats.size() || beginsBar(next)) {
                bars.add(new PlayedBar(beats.get(first).bar(), first, next - 1));
                first = next;
            }
        }
        return List.copyOf(bars);
    }

    /** Whether a bar begins with beat number {@code index}, or goes on with it after a stop. */
    public boolean beginsBar(int index) {
        if (beginsRun(index)) {
            return true;
        }
        Beat beat = beats.get(index);
        Beat before = beats.get(index - 1);
        return !beat.bar().equals(before.bar()) || beat.beat() <= before.beat();
    }
}
