package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.compare.BarAgreement;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Departure;
import tuttarco.compare.Divergence;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Lag;
import tuttarco.compare.Standing;
import tuttarco.compare.Verdict;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.stats.Interval;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * A section made by hand: one stroke a beat, alternating from a down-bow, in bars of four at 120 beats a minute from
 * second 1. In {@link #unified()} eight players play twelve bars; bar 6 rests on its beats 3 and 4; player 6 ("Desk 3
 * inside") is turned in bars 3 and 4, player 3 is unsure in bar 8, player 8 is not seen from bar 9 on.
 */
public final class SectionFixture {
    public static final double BEAT_S = 0.5;
    public static final double START_S = 1;

    /** Travel of a stroke, shoulder widths. */
    public static final double TRAVEL = 0.4;

    public static final double SURE = 0.97;
    private static final double FPS = 25;

    public final List<Player> players;
    public final BeatMap beats;
    public final Comparison comparison;
    public final List<Reading> readings;
    public final List<ArmTrack> tracks;
    public final double endS;

    private final boolean marked;
    private final BiFunction<Integer, Integer, StrokeKind> played;

    private SectionFixture(
            List<Player> players,
            int beatCount,
            boolean marked,
            BiFunction<Integer, Integer, StrokeKind> played,
            List<Divergence> divergences) {
        this(players, beats(beatCount), marked, played, divergences);
    }

    private SectionFixture(
            List<Player> players,
            BeatMap beats,
            boolean marked,
            BiFunction<Integer, Integer, StrokeKind> played,
            List<Divergence> divergences) {
        int beatCount = beats.beats().size();
        this.players = players;
        this.marked = marked;
        this.played = played;
        this.beats = beats;
        this.endS = START_S + beatCount * BEAT_S + 1;
        this.readings =
                IntStream.range(0, players.size()).mapToObj(this::reading).toList();
        this.tracks = IntStream.range(0, players.size()).mapToObj(this::track).toList();
        List<List<BeatReading>> beatReadings = IntStream.range(0, players.size())
                .mapToObj(p -> IntStream.range(0, beatCount)
                        .mapToObj(b -> beatReading(p, b))
                        .toList())
                .toList();
        boolean led = players.get(0).leader();
        this.comparison = new Comparison(
                players,
                beats,
                beatReadings,
                marked ? bars(beatReadings) : List.of(),
                divergences,
                led ? lags() : List.of());
    }

    public static SectionFixture unified() {
        List<Player> players = players(8, true);
        return new SectionFixture(
                players,
                48,
                true,
                SectionFixture::unifiedPlay,
                List.of(turned(players, Against.MARKING), turned(players, Against.LEADER)));
    }

    /** As {@link #unified()}, but after its bar 8 the section goes back to bar 7: bars 9 to 12 are 7 to 10 as played again. */
    public static SectionFixture takenAgain() {
        List<Player> players = players(8, true);
        List<Beat> beats = beats(48).beats().stream()
                .map(b -> Integer.parseInt(b.bar()) <= 8
                        ? b
                        : new Beat(Integer.toString(Integer.parseInt(b.bar()) - 2), b.beat(), b.timeS()))
                .toList();
        return new SectionFixture(
                players,
                new BeatMap(beats, List.of(new Run(0, 31), new Run(32, 47))),
                true,
                SectionFixture::unifiedPlay,
                List.of(turned(players, Against.MARKING)));
    }

    /** As {@link #unified()}, nobody leading. */
    public static SectionFixture withoutLeader() {
        List<Player> players = players(8, false);
        return new SectionFixture(
                players, 48, true, SectionFixture::unifiedPlay, List.of(turned(players, Against.MARKING)));
    }

    /** As {@link #unified()}, nothing marked. */
    public static SectionFixture withoutPart() {
        List<Player> players = players(8, true);
        return new SectionFixture(
                players, 48, false, SectionFixture::unifiedPlay, List.of(turned(players, Against.LEADER)));
    }

    /** Every second player turned from the first beat to the last. */
    public static SectionFixture free() {
        List<Player> players = players(8, true);
        BeatMap map = beats(48);
        Divergence all = divergence(
                map, 0, 47, List.of(players.get(1), players.get(3), players.get(5), players.get(7)), Against.MARKING);
        return new SectionFixture(
                players,
                48,
                true,
                (p, b) -> StrokeKind.of(p % 2 == 0 ? straight(b) : straight(b).opposite()),
                List.of(all));
    }

    /** Four players, all but the first turned in bar 3 of six. */
    public static SectionFixture mostTurned() {
        List<Player> players = players(4, true);
        return new SectionFixture(
                players,
                24,
                true,
                (p, b) -> StrokeKind.of(p > 0 && b / 4 == 2 ? straight(b).opposite() : straight(b)),
                List.of(divergence(beats(24), 8, 11, players.subList(1, 4), Against.MARKING)));
    }

    /** Eight players; player 6 is turned in bars 2, 4, 6, 8 and 10 of twelve. */
    public static SectionFixture oftenTurned() {
        List<Player> players = players(8, true);
        return new SectionFixture(
                players,
                48,
                true,
                (p, b) -> StrokeKind.of(
                        p == 5 && b / 4 % 2 == 1 && b / 4 < 10 ? straight(b).opposite() : straight(b)),
                IntStream.range(0, 5)
                        .map(i -> 4 + 8 * i)
                        .mapToObj(first ->
                                divergence(beats(48), first, first + 3, List.of(players.get(5)), Against.MARKING))
                        .toList());
    }

    public static SectionFixture nothingSeen() {
        return new SectionFixture(players(8, true), 48, true, (p, b) -> StrokeKind.UNSEEN, List.of());
    }

    /** A clean section whose facings were not declared. */
    public static SectionFixture withoutFacing() {
        List<Player> players = players(8, true).stream()
                .map(p -> new Player(
                        p.label(), p.desk(), p.place(), p.instrument(), p.seat(), Optional.empty(), p.leader()))
                .toList();
        return new SectionFixture(players, 48, true, (p, b) -> StrokeKind.of(straight(b)), List.of());
    }

    /** A clean section of any size. */
    public static SectionFixture clean(int players, int beats) {
        return new SectionFixture(players(players, true), beats, true, (p, b) -> StrokeKind.of(straight(b)), List.of());
    }

    /** As {@link #unified()}, the first player called as given. */
    public static SectionFixture named(String label) {
        List<Player> players = new ArrayList<>(players(8, true));
        players.set(0, player(label, 0, true));
        return new SectionFixture(
                List.copyOf(players), 48, true, SectionFixture::unifiedPlay, List.of(turned(players, Against.MARKING)));
    }

    private static Divergence turned(List<Player> players, Against against) {
        return divergence(beats(48), 8, 15, List.of(players.get(5)), against);
    }

    private static Divergence divergence(BeatMap map, int first, int last, List<Player> who, Against against) {
        Departure.Back back = last + 1 < map.beats().size()
                ? new Departure.BackAt(last + 1, Departure.Way.RETAKE)
                : new Departure.NotSeenBack();
        List<Departure> departures =
                who.stream().map(p -> new Departure(p, first, last, 0.93, back)).toList();
        return new Divergence(
                first, last, map.beats().get(first), map.beats().get(last), departures, against, Standing.TURNED, 0.93);
    }

    private static StrokeKind unifiedPlay(int player, int beat) {
        int bar = beat / 4 + 1;
        if (player == 7 && bar >= 9) {
            return StrokeKind.UNSEEN;
        }
        if (rests(beat)) {
            return StrokeKind.STILL;
        }
        if (player == 2 && bar == 8) {
            return StrokeKind.UNSURE;
        }
        boolean turned = player == 5 && (bar == 3 || bar == 4);
        return StrokeKind.of(turned ? straight(beat).opposite() : straight(beat));
    }

    private static BowDirection straight(int beat) {
        return beat % 2 == 0 ? BowDirection.DOWN : BowDirection.UP;
    }

    private static boolean rests(int beat) {
        return beat == 22 || beat == 23;
    }

    private static List<Player> players(int count, boolean led) {
        return IntStream.range(0, count)
                .mapToObj(p -> player("Desk " + (p / 2 + 1) + (p % 2 == 0 ? " outside" : " inside"), p, led && p == 0))
                .toList();
    }

    private static Player player(String label, int index, boolean leader) {
        return new Player(
                label,
                index / 2 + 1,
                index % 2 == 0 ? Place.OUTSIDE : Place.INSIDE,
                Instrument.VIOLIN,
                new SeatBox(20 + 100 * index, 40, 96, 120),
                Optional.of(Facing.CAMERA),
                leader);
    }

    private static BeatMap beats(int count) {
        return new BeatMap(IntStream.range(0, count)
                .mapToObj(b -> new Beat(Integer.toString(b / 4 + 1), b % 4 + 1, START_S + b * BEAT_S))
                .toList());
    }

    private BeatReading beatReading(int p, int b) {
        StrokeKind kind = played.apply(p, b);
        Optional<BowDirection> mark = marked && !rests(b) ? Optional.of(straight(b)) : Optional.empty();
        Player player = players.get(p);
        boolean led = players.get(0).leader();
        Optional<BowDirection> leader = led && p > 0 ? played.apply(0, b).direction() : Optional.empty();
        return new BeatReading(
                player,
                b,
                beats.beats().get(b),
                mark,
                kind,
                sure(kind),
                Stroke.Source.READ,
                verdict(kind, mark),
                verdict(kind, leader));
    }

    private static double sure(StrokeKind kind) {
        return kind == StrokeKind.UNSURE ? 0.5 : SURE;
    }

    private static Verdict verdict(StrokeKind kind, Optional<BowDirection> wanted) {
        if (wanted.isEmpty()) {
            return Verdict.REST;
        }
        return switch (kind) {
            case DOWN, UP -> kind.direction().equals(wanted) ? Verdict.WITH : Verdict.AGAINST;
            case TREMOLO, STILL, UNSURE -> Verdict.UNSURE;
            case UNSEEN -> Verdict.UNSEEN;
            case ABSENT -> Verdict.REST;
        };
    }

    /** Whiskers a tenth to either side: what the interval is does not matter here. */
    private static List<BarAgreement> bars(List<List<BeatReading>> readings) {
        List<BarAgreement> bars = new ArrayList<>();
        for (int first = 0; first < readings.get(0).size(); first += 4) {
            int from = first;
            int to = Math.min(first + 3, readings.get(0).size() - 1);
            int with = count(readings, from, to, Verdict.WITH);
            int judged = with + count(readings, from, to, Verdict.AGAINST);
            double share = judged == 0 ? 0 : (double) with / judged;
            Optional<Interval> interval = judged == 0
                    ? Optional.empty()
                    : Optional.of(new Interval(Math.max(0, share - 0.1), Math.min(1, share + 0.1)));
            bars.add(new BarAgreement(readings.get(0).get(first).beat().bar(), from, to, with, judged, interval));
        }
        return bars;
    }

    private static int count(List<List<BeatReading>> readings, int from, int to, Verdict verdict) {
        return (int) readings.stream()
                .flatMap(l -> l.subList(from, to + 1).stream())
                .filter(r -> r.verdict() == verdict)
                .count();
    }

    /** Each player 5 ms later than the one before; the last one's changes could not be paired. */
    private List<Lag> lags() {
        return IntStream.range(1, players.size())
                .mapToObj(p -> new Lag(
                        players.get(p),
                        changes(0)
                                .limit(p == 7 ? 0 : 40)
                                .mapToObj(timeS -> new Lag.Pair(timeS, 5.0 * p))
                                .toList()))
                .toList();
    }

    /** When a player goes the other way with a beat, seconds. */
    private DoubleStream changes(int p) {
        return IntStream.range(1, beats.beats().size())
                .filter(b -> played.apply(p, b).direction().isPresent())
                .filter(b -> played.apply(p, b - 1).direction().isPresent())
                .filter(b -> played.apply(p, b) != played.apply(p, b - 1))
                .mapToDouble(b -> START_S + b * BEAT_S);
    }

    private Reading reading(int p) {
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke(0, START_S, StrokeKind.STILL, 0.99));
        for (int b = 0; b < beats.beats().size(); b++) {
            StrokeKind kind = played.apply(p, b);
            strokes.add(new Stroke(START_S + b * BEAT_S, START_S + (b + 1) * BEAT_S, kind, sure(kind)));
        }
        strokes.add(new Stroke(endS - 1, endS, StrokeKind.STILL, 0.99));
        return new Reading(players.get(p), strokes);
    }

    /** Half-sine strokes: the travel of one is the integral of its speed, {@link #TRAVEL}. */
    private ArmTrack track(int p) {
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; i < endS * FPS; i++) {
            double timeS = i / FPS;
            int b = (int) Math.floor((timeS - START_S) / BEAT_S + 1e-9);
            boolean inside = b >= 0 && b < beats.beats().size();
            StrokeKind kind = inside ? played.apply(p, b) : StrokeKind.STILL;
            if (kind == StrokeKind.UNSEEN) {
                samples.add(new ArmSample.Lost(timeS, ArmSample.Reason.TOO_DARK));
            } else {
                double phase = (timeS - START_S) / BEAT_S - b;
                double speed = TRAVEL * Math.PI / (2 * BEAT_S) * Math.sin(Math.PI * phase);
                double sign = kind.direction()
                        .map(d -> d == BowDirection.DOWN ? 1.0 : -1.0)
                        .orElse(0.0);
                // strokes alternate, so the bow goes from one place to the other
                double gone = TRAVEL * (1 - Math.cos(Math.PI * phase)) / 2;
                double reach = 0.3 + (sign > 0 ? gone : TRAVEL - gone);
                samples.add(new ArmSample.ByBody(timeS, sign * speed, 0.05, 0.99, reach));
            }
        }
        return new ArmTrack(players.get(p), 0, endS, samples);
    }
}
