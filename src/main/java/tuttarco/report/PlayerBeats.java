package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import tuttarco.beats.BeatMap;
import tuttarco.chart.BarRun;
import tuttarco.chart.Words;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** One player's beats beside the marking, or beside the leader where nothing is marked. */
record PlayerBeats(Comparison comparison, Against reference, Player player) {
    /** Bars that are named at most. */
    private static final int MOST_NAMED = 4;

    /** Whether nobody is to be compared with but the player. */
    boolean leads() {
        return reference == Against.LEADER && player.leader();
    }

    BeatMap map() {
        return comparison.beats();
    }

    /** {@code beat}, or {@code stroke} of the leader's. */
    String unit() {
        return Words.unit(map());
    }

    List<BeatReading> readings() {
        return readings(player);
    }

    List<BeatReading> readings(Player of) {
        return comparison.beatReadings().get(comparison.players().indexOf(of));
    }

    Verdict verdict(BeatReading reading) {
        return reference == Against.MARKING ? reading.verdict() : reading.leaderVerdict();
    }

    long count(Predicate<BeatReading> which) {
        return readings().stream().filter(which).count();
    }

    long judged() {
        return count(this::judged);
    }

    boolean judged(BeatReading reading) {
        Verdict verdict = verdict(reading);
        return verdict == Verdict.WITH || verdict == Verdict.AGAINST;
    }

    /** Whether there was something to bow: whatever is marked, or where nothing is, all beats. */
    boolean meant(BeatReading reading) {
        return reading.played() != StrokeKind.ABSENT
                && (reference == Against.MARKING ? reading.marked().isPresent() : leads() || !rests(reading));
    }

    private boolean rests(BeatReading reading) {
        return verdict(reading) == Verdict.REST;
    }

    boolean bowed(BeatReading reading) {
        return reading.played().direction().isPresent() || reading.played() == StrokeKind.TREMOLO;
    }

    boolean unseen(BeatReading reading) {
        return meant(reading) && (leads() ? reading.played() == StrokeKind.UNSEEN : verdict(reading) == Verdict.UNSEEN);
    }

    boolean unsure(BeatReading reading) {
        return meant(reading) && (leads() ? reading.played() == StrokeKind.UNSURE : verdict(reading) == Verdict.UNSURE);
    }

    static boolean byHand(BeatReading reading) {
        return reading.source() == Stroke.Source.BY_HAND;
    }

    /** Stretches of neighbouring bars that are all so, in the order played; none goes on over a stop. */
    List<BarRun> stretches(Predicate<List<BeatReading>> so) {
        List<BarRun> stretches = new ArrayList<>();
        boolean goesOn = false;
        for (BarRun bar : BarRun.of(map())) {
            boolean is = so.test(readings().subList(bar.firstIndex(), bar.lastIndex() + 1));
            if (is && goesOn && !map().beginsRun(bar.firstIndex())) {
                BarRun before = stretches.remove(stretches.size() - 1);
                stretches.add(new BarRun(before.bar(), before.firstIndex(), bar.lastIndex()));
            } else if (is) {
                stretches.add(bar);
            }
            goesOn = is;
        }
        return stretches;
    }

    /** {@code bar 3}, {@code bars 1–2, 5 and 9–12}, {@code bars 1, 3, 5, 7 and elsewhere}. */
    String named(List<BarRun> stretches) {
        List<String> names =
                stretches.stream().limit(MOST_NAMED).map(this::name).collect(Collectors.toCollection(ArrayList::new));
        if (stretches.size() > MOST_NAMED) {
            names.add("elsewhere");
        }
        boolean one = names.size() == 1
                && lastBar(stretches.get(0)).equals(stretches.get(0).bar());
        return (map().inBars() ? "bar" : "stroke") + (one ? " " : "s ") + joined(names);
    }

    private String name(BarRun stretch) {
        String first = stretch.bar();
        String last = lastBar(stretch);
        String when = map().stops()
                ? " (" + Words.clock(map().beats().get(stretch.firstIndex()).timeS()) + ")"
                : "";
        return (first.equals(last) ? first : first + "–" + last) + when;
    }

    private String lastBar(BarRun stretch) {
        return map().inBars()
                ? map().beats().get(stretch.lastIndex()).bar()
                : Integer.toString(stretch.lastIndex() + 1);
    }

    private static String joined(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
