package tuttarco.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.bow.BowDirection;
import tuttarco.chart.BarRun;
import tuttarco.chart.Spots;
import tuttarco.chart.Words;
import tuttarco.compare.BowingCandidate;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.compare.Standing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;

/** Spots in the words of a rehearsal. */
public final class SpotWords {
    private static final double MOST_SURE = 0.99;

    private final Comparison comparison;
    private final BeatMap beats;
    private final List<BarRun> bars;

    public SpotWords(Comparison comparison) {
        this.comparison = comparison;
        this.beats = comparison.beats();
        this.bars = BarRun.of(beats);
    }

    /** The spots in the order to rehearse them. */
    List<ReportModel.Spot> inOrder() {
        return RehearsalList.of(comparison).stream().map(this::told).toList();
    }

    /** One player's stretches in the order played. */
    List<ReportModel.Spot> of(Player player, Against reference) {
        return Spots.of(player, comparison.divergences(), reference).stream()
                .map(d -> new Spot(
                        d.against(),
                        d.standing(),
                        d.departures().stream()
                                .filter(o -> o.player().equals(player))
                                .toList()))
                .map(this::told)
                .toList();
    }

    /** A spot as the report tells it. */
    public ReportModel.Spot told(Spot spot) {
        Beat first = beats.beats().get(spot.firstIndex());
        List<String> what = new ArrayList<>();
        what.add(did(spot));
        spot.followed().forEach(f -> what.add(followed(f)));
        what.add(back(spot));
        return new ReportModel.Spot(
                Words.stretch(first, beats.beats().get(spot.lastIndex())),
                Words.clock(first.timeS()),
                who(spot.players()),
                String.join("; ", what),
                sure(spot.confidence()),
                new ReportModel.Span(bar(spot.firstIndex()), spot.firstIndex(), spot.lastIndex()));
    }

    /** The bar that holds a beat, counted from 0 in the order played. */
    private int bar(int beat) {
        return (int) bars.stream().filter(b -> b.lastIndex() < beat).count();
    }

    /** No reading is ever quite sure. */
    static String sure(double confidence) {
        return (confidence > MOST_SURE ? "over " + Words.percent(MOST_SURE) : Words.percent(confidence)) + " sure";
    }

    private static String did(Spot spot) {
        boolean marking = spot.against() == Against.MARKING;
        return spot.standing() == Standing.FREE
                ? "bowed without regard to the " + (marking ? "marking" : "leader")
                : marking ? "turned" : "went against the leader";
    }

    /** All of one place, if there are several, or whole desks are named together; anybody else one by one. */
    private List<String> who(List<Player> players) {
        if (players.size() < 2) {
            return players.stream().map(Player::label).toList();
        }
        if (players.size() == comparison.players().size()) {
            return List.of("the whole section");
        }
        String desks = players.stream()
                .map(p -> Integer.toString(p.desk()))
                .distinct()
                .collect(Collectors.collectingAndThen(Collectors.toList(), SpotWords::joined));
        for (Place place : Place.values()) {
            if (players.stream().allMatch(p -> p.place() == place)) {
                return List.of(place.word() + " players of desks " + desks);
            }
        }
        return players.stream().map(Player::label).toList();
    }

    private static String joined(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private String followed(Spot.Followed followed) {
        return "at desk " + followed.first().desk() + " the "
                + followed.first().place().word()
                + " player first, the " + followed.second().place().word() + " player "
                + Words.count(followed.beatsLater(), Words.unit(beats)) + " later";
    }

    String back(Spot spot) {
        Beat last = beats.beats().get(spot.lastIndex());
        Run run = beats.runOf(spot.lastIndex());
        boolean atEnd = run.lastIndex() == beats.beats().size() - 1;
        return spot.backIndex()
                .map(i -> backAt(beats.beats().get(i), last) + ways(spot.waysBack()))
                .orElse("not " + (spot.players().size() > 1 ? "all " : "") + "seen back before the "
                        + (atEnd ? "end" : "stop"));
    }

    private static String backAt(Beat back, Beat last) {
        if (!back.inBar()) {
            return "back on stroke " + back.beat();
        }
        return back.bar().equals(last.bar()) ? "back on beat " + back.beat() : "back by bar " + back.bar();
    }

    /** How they found back, as far as it could be told: {@code , at a rest}, or {@code , 2 at a rest and 1 by a retake}. */
    private static String ways(List<Departure.Way> ways) {
        Map<Departure.Way, Long> counts = ways.stream()
                .filter(w -> w != Departure.Way.UNKNOWN)
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
        if (counts.isEmpty()) {
            return "";
        }
        if (counts.size() == 1 && counts.containsValue((long) ways.size())) {
            return ", " + way(ways.get(0));
        }
        return ", "
                + joined(counts.entrySet().stream()
                        .map(c -> c.getValue() + " " + way(c.getKey()))
                        .toList());
    }

    private static String way(Departure.Way way) {
        return switch (way) {
            case REST -> "at a rest";
            case RETAKE -> "by a retake";
            case DOUBLED_STROKE -> "by a doubled stroke";
            case EXTRA_CHANGE -> "by an extra change within a marked stroke";
            case UNKNOWN -> "in a way that could not be told";
        };
    }

    /** The first spot's place, for the summary. */
    Optional<String> first() {
        return inOrder().stream().findFirst().map(s -> s.where() + " (" + s.clock() + ")");
    }

    /** Bars in which the marking may be the trouble. */
    List<String> candidates() {
        return BowingCandidate.in(comparison).stream().map(this::candidate).toList();
    }

    /** A bar in which the marking may be the trouble: what was marked, and what was played instead. */
    public String candidate(BowingCandidate bar) {
        return "Bar " + bar.bar() + " ("
                + Words.clock(beats.beats().get(bar.firstIndex()).timeS()) + "): "
                + bar.players().size() + " of " + bar.judged()
                + " players judged left the marking in the same way. By beat, marked: " + directions(bar.marked())
                + "; played: " + directions(bar.instead()) + ".";
    }

    private static String directions(List<Optional<BowDirection>> directions) {
        return directions.stream()
                .map(d -> d.map(BowDirection::word).orElse("–"))
                .collect(Collectors.joining(" "));
    }
}
