package tuttarco.season;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which bars several takes have in common, by printed numbers. */
final class CommonBars {
    /** A bar alone is no passage (chosen). */
    private static final int LEAST_BARS = 2;

    private static final Pattern NUMBERED = Pattern.compile("(\\d+)(.*)");

    /** By number, then by what is written behind it: 12, 12a, 13; what has no number comes last. */
    private static final Comparator<String> IN_PART =
            Comparator.comparing(CommonBars::number).thenComparing(Comparator.naturalOrder());

    private CommonBars() {}

    private static BigInteger number(String bar) {
        Matcher numbered = NUMBERED.matcher(bar);
        return numbered.matches() ? new BigInteger(numbered.group(1)) : BigInteger.ONE.shiftLeft(Integer.SIZE * 32);
    }

    /**
     * Takes in which each bar was played, bars in the order of the part.
     *
     * @param bars of each take; nothing of takes that don't count
     */
    private static TreeMap<String, List<Integer>> takes(List<? extends Iterable<String>> bars) {
        TreeMap<String, List<Integer>> takes = new TreeMap<>(IN_PART);
        for (int t = 0; t < bars.size(); t++) {
            for (String bar : bars.get(t)) {
                takes.computeIfAbsent(bar, b -> new ArrayList<>()).add(t);
            }
        }
        return takes;
    }

    /** Stretches of at least two adjoining bars that were played in the same two takes or more. */
    static List<Passage> passages(List<? extends Iterable<String>> bars) {
        List<Passage> passages = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<Integer> same = List.of();
        for (Map.Entry<String, List<Integer>> bar : takes(bars).entrySet()) {
            if (!bar.getValue().equals(same)) {
                close(passages, open, same);
                same = bar.getValue();
            }
            open.add(bar.getKey());
        }
        close(passages, open, same);
        return passages;
    }

    private static void close(List<Passage> passages, List<String> open, List<Integer> takes) {
        if (open.size() >= LEAST_BARS && takes.size() > 1) {
            passages.add(new Passage(open, takes));
        }
        open.clear();
    }

    /**
     * The bars and takes that can best be set against each other: those with the most pairs of takes times bars. There are
     * no bars in it where no two takes have one in common.
     */
    static Passage ground(List<? extends Iterable<String>> bars) {
        TreeMap<String, List<Integer>> takes = takes(bars);
        Map<List<Integer>, List<String>> held = new LinkedHashMap<>();
        takes.values().forEach(t -> held.putIfAbsent(t, new ArrayList<>()));
        takes.forEach((bar, in) -> held.forEach((t, all) -> {
            if (in.containsAll(t)) {
                all.add(bar);
            }
        }));
        return held.entrySet().stream()
                .filter(e -> e.getKey().size() > 1)
                .map(e -> new Passage(e.getValue(), e.getKey()))
                .max(Comparator.comparingLong(CommonBars::comparisons))
                .orElse(new Passage(List.of(), List.of()));
    }

    private static long comparisons(Passage common) {
        long takes = common.takes().size();
        return takes * (takes - 1) / 2 * common.bars().size();
    }
}
