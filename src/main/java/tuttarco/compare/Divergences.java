package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.compare.Departure.Back;
import tuttarco.seats.Player;

/**
 * Stretches in which a player is taken to have been turned, or free ({@link Standings#taken}). First and last are beats really judged against, and a stretch needs {@link
 * CompareSettings#leastBeats()} of those. Somebody who is turned is not thought so over more than one beat in a row that could
 * not be judged, or a rest: there the stretch is cut. Its confidence is the mean probability over the beats judged against; of turned
 * stretches, as that came true in simulated sections.
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

    /**
     * The log odds that somebody said to be turned really is, and how they grow with those of the mean probability: beats that
     * are misread often follow each other, which the chain over them does not know. Logistic regression (J. Platt 1999,
     * Probabilistic outputs for support vector machines) on 2286 spots in simulated sections, read with the errors of rendered
     * scenes, in which one of four players was turned once in half a minute.
     */
    private static final double TURNED_LOG_ODDS = -2.55;

    private static final double TURNED_GROWTH = 1.63;

    private Divergences() {}

    /** Whether a player could be judged on enough beats of the take to say anything. */
    static boolean enough(List<Judgement> beats) {
        return beats.stream().filter(b -> b.confidence().isPresent()).count() >= Comparison.LEAST_JUDGED_BEATS;
    }

    /** How a stretch of somebody's ended after a beat. */
    interface Ending {
        Back after(int lastIndex);
    }

    /** One player's stretches of one standing within a run; judgements of all beats of the map. */
    static List<Departure> of(
            Player player,
            List<Judgement> beats,
            Standings standings,
            Standing standing,
            CompareSettings settings,
            Ending ending) {
        Run run = standings.run();
        List<Departure> departures = new ArrayList<>();
        List<Integer> against = new ArrayList<>();
        int doubts = 0;
        for (int i = run.firstIndex(); i <= run.lastIndex() + 1; i++) {
            boolean there = i <= run.lastIndex() && standings.taken(standing, i, settings.leastCertainty());
            boolean judged = there && beats.get(i).confidence().isPresent();
            doubts = judged ? 0 : doubts + 1;
            boolean tooLong = standing == Standing.TURNED && doubts > LONGEST_DOUBT_BEATS;
            if (!there || tooLong) {
                if (against.size() >= settings.leastBeats()) {
                    departures.add(departure(player, against, standings, standing, ending));
                }
                against.clear();
            }
            if (there && beats.get(i).verdict() == Verdict.AGAINST) {
                against.add(i);
            }
        }
        return departures;
    }

    private static Departure departure(
            Player player, List<Integer> against, Standings standings, Standing standing, Ending ending) {
        double confidence = against.stream()
                .mapToDouble(i -> standings.chance(standing, i))
                .average()
                .orElseThrow();
        int last = against.get(against.size() - 1);
        double sure = standing == Standing.TURNED ? cameTrue(confidence) : Math.min(1, confidence);
        return new Departure(player, against.get(0), last, sure, ending.after(last));
    }

    private static double cameTrue(double probability) {
        double right = Math.exp(TURNED_LOG_ODDS) * Math.pow(probability, TURNED_GROWTH);
        return right / (right + Math.pow(Math.max(0, 1 - probability), TURNED_GROWTH));
    }

    /** Joins what players did together within a run; departures come, and players leave, in section order. */
    static List<Divergence> joined(
            List<Departure> departures, BeatMap beats, Divergence.Against against, Standing standing) {
        List<List<Departure>> groups = new ArrayList<>();
        departures.stream()
                .sorted(Comparator.comparingInt(Departure::firstIndex))
                .forEach(d -> groups.stream()
                        .filter(g -> sameTime(g.get(0), d))
                        .findFirst()
                        .ifPresentOrElse(g -> g.add(d), () -> groups.add(new ArrayList<>(List.of(d)))));
        return groups.stream()
                .map(g -> divergence(departures.stream().filter(g::contains).toList(), beats, against, standing))
                .toList();
    }

    private static boolean sameTime(Departure a, Departure b) {
        return Math.abs(a.firstIndex() - b.firstIndex()) <= SAME_WITHIN_BEATS
                && Math.abs(a.lastIndex() - b.lastIndex()) <= SAME_WITHIN_BEATS;
    }

    private static Divergence divergence(
            List<Departure> group, BeatMap beats, Divergence.Against against, Standing standing) {
        List<Integer> firsts =
                group.stream().map(Departure::firstIndex).sorted().toList();
        List<Integer> lasts = group.stream().map(Departure::lastIndex).sorted().toList();
        int first = firsts.get((firsts.size() - 1) / 2);
        int last = lasts.get(lasts.size() / 2);
        return new Divergence(
                first,
                last,
                beats.beats().get(first),
                beats.beats().get(last),
                group,
                against,
                standing,
                group.stream().mapToDouble(Departure::confidence).average().orElseThrow());
    }
}
