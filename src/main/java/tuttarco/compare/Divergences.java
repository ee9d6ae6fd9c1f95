package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.seats.Player;

/**
 * Stretches of beats against. Within a stretch a single beat that could not be judged, or a rest, is passed over; a beat with
 * the others ends it, unless it stands alone between two stretches: somebody who is turned does not turn back for one beat, but
 * one beat is easily misread. First and last are beats really judged against, and a stretch needs
 * {@link CompareSettings#leastBeats()} of those. Its confidence is the mean of theirs.
 *
 * <p>Players who left at the same time, first and last beats no more than one apart, share one divergence: its first and
 * last beat are the medians of theirs (the wider where two are in the middle), its confidence the mean.
 *
 * <p>All within one run: nothing goes on over a stop.
 */
final class Divergences {
    /** How far apart, beats, two players' first (or last) beats may lie to be one divergence (chosen). */
    private static final int SAME_WITHIN_BEATS = 1;
    /** Longest run of beats that is passed over within a stretch (chosen). */
    private static final int LONGEST_DOUBT_BEATS = 1;

    private Divergences() {}

    /** One player's stretch; indices of the first and last beat, both against. */
    record Stretch(Player player, int first, int last, double confidence) {
        /** This stretch and a later one as one; the confidence is the mean over their beats. */
        Stretch upTo(Stretch later) {
            int own = last - first + 1;
            int others = later.last - later.first + 1;
            double mean = (own * confidence + others * later.confidence) / (own + others);
            return new Stretch(player, first, later.last, mean);
        }

        boolean sameTime(Stretch other) {
            return Math.abs(first - other.first) <= SAME_WITHIN_BEATS
                    && Math.abs(last - other.last) <= SAME_WITHIN_BEATS;
        }
    }

    /** One player's stretches within a run; judgements of all beats of the map. */
    static List<Stretch> of(Player player, List<Judgement> beats, Run within, int leastBeats) {
        List<Stretch> stretches = new ArrayList<>();
        List<Integer> run = new ArrayList<>();
        for (int i = within.firstIndex(); i <= within.lastIndex(); i++) {
            Verdict verdict = beats.get(i).verdict();
            boolean tooFar = !run.isEmpty() && i - run.get(run.size() - 1) > LONGEST_DOUBT_BEATS + 1;
            if (verdict == Verdict.WITH || tooFar) {
                close(player, run, beats, leastBeats, stretches);
                run.clear();
            }
            if (verdict == Verdict.AGAINST) {
                run.add(i);
            }
        }
        close(player, run, beats, leastBeats, stretches);
        return stretches;
    }

    private static void close(
            Player player, List<Integer> run, List<Judgement> beats, int leastBeats, List<Stretch> to) {
        if (run.size() < leastBeats) {
            return;
        }
        double confidence = run.stream()
                .mapToDouble(i -> beats.get(i).confidence().orElseThrow())
                .average()
                .orElseThrow();
        Stretch stretch = new Stretch(player, run.get(0), run.get(run.size() - 1), confidence);
        boolean goesOn =
                !to.isEmpty() && stretch.first() - to.get(to.size() - 1).last() == LONGEST_DOUBT_BEATS + 1;
        to.add(goesOn ? to.remove(to.size() - 1).upTo(stretch) : stretch);
    }

    /** Joins what players did together within a run; {@code stretches} come, and players leave, in section order. */
    static List<Divergence> joined(List<Stretch> stretches, BeatMap beats, Divergence.Against against) {
        List<List<Stretch>> groups = new ArrayList<>();
        stretches.stream()
                .sorted(Comparator.comparingInt(Stretch::first))
                .forEach(s -> groups.stream()
                        .filter(g -> g.get(0).sameTime(s))
                        .findFirst()
                        .ifPresentOrElse(g -> g.add(s), () -> groups.add(new ArrayList<>(List.of(s)))));
        return groups.stream()
                .map(g -> divergence(stretches.stream().filter(g::contains).toList(), beats, against))
                .toList();
    }

    private static Divergence divergence(List<Stretch> group, BeatMap beats, Divergence.Against against) {
        List<Integer> firsts = group.stream().map(Stretch::first).sorted().toList();
        List<Integer> lasts = group.stream().map(Stretch::last).sorted().toList();
        int first = firsts.get((firsts.size() - 1) / 2);
        int last = lasts.get(lasts.size() / 2);
        return new Divergence(
                first,
                last,
                beats.beats().get(first),
                beats.beats().get(last),
                group.stream().map(Stretch::player).toList(),
                against,
                group.stream().mapToDouble(Stretch::confidence).average().orElseThrow());
    }
}
