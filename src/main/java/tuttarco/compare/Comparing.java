package tuttarco.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.beats.TimedSpan;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;

/**
 * Compares a section's readings with the marking and with its leader, beat by beat ({@link Judgement}), and joins
 * contiguous disagreement ({@link Divergences}).
 *
 * <p>A player's constant delay is taken off before judging ({@link Delay}), so that who plays late is not called turned.
 * Against the marking and against the leader are separate questions: when the leader leaves the marking, he or she is
 * against the marking and the section that stays is against the leader; when a player leaves both, both are said.
 * Divergences come in the order of their first beats. What is done in a stop between two runs is nobody's business.
 */
public final class Comparing {
    private final BeatMap beats;
    private final CompareSettings settings;
    private final Optional<Reference> marking;
    private final Optional<Reading> leader;
    private final Optional<Reference> leading;
    /** Whose strokes say what part of a beat was due to be bowed. */
    private final Optional<Reference> due;

    private Comparing(List<Reading> readings, BeatMap beats, List<TimedSpan> markedSpans, CompareSettings settings) {
        this.beats = beats;
        this.settings = settings;
        this.marking =
                markedSpans.isEmpty() ? Optional.empty() : Optional.of(Reference.ofMarking(markedSpans, settings));
        this.leader = readings.stream().filter(r -> r.player().leader()).findFirst();
        this.leading = leader.map(l -> Reference.of(beats.inBars() ? l.strokes() : bowed(l), settings));
        this.due = beats.inBars() ? marking : leading;
    }

    /** Where there is no beat but the leader's bow, what lies between two bows is nobody's time. */
    private static List<Stroke> bowed(Reading reading) {
        return reading.strokes().stream()
                .filter(s -> s.kind().direction().isPresent())
                .toList();
    }

    /**
     * What the section did on each stroke of its leader's, who is one of the readings: the comparison where neither bars nor
     * beats are known. The leader's down and up strokes are counted from 1.
     *
     * @return nothing where there is no leader, or fewer than two strokes of the leader's were read
     */
    public static Optional<Comparison> withLeader(List<Reading> readings, CompareSettings settings) {
        List<Stroke> strokes = readings.stream()
                .filter(r -> r.player().leader())
                .flatMap(r -> bowed(r).stream())
                .toList();
        if (strokes.size() < 2) {
            return Optional.empty();
        }
        List<Beat> beats = IntStream.range(0, strokes.size())
                .mapToObj(i -> Beat.ofLeader(i + 1, strokes.get(i).startS()))
                .toList();
        return Optional.of(compare(readings, new BeatMap(beats), List.of(), settings));
    }

    /**
     * What the section did on each beat of the map, where it left the marking or the leader, and how late each player was.
     *
     * @param readings one a player, in any order
     * @param markedSpans one marking for the whole section: the part's strokes and rests in time order; empty where there is no marking
     */
    public static Comparison compare(
            List<Reading> readings, BeatMap beats, List<TimedSpan> markedSpans, CompareSettings settings) {
        List<Reading> section = readings.stream()
                .sorted(Comparator.comparing(Reading::player, SectionOrder.COMPARATOR))
                .toList();
        return new Comparing(section, beats, markedSpans, settings).comparison(section);
    }

    private Comparison comparison(List<Reading> section) {
        List<Compared> compared = section.stream().map(this::compared).toList();
        List<List<BeatReading>> beatReadings =
                compared.stream().map(this::beatReadings).toList();
        return new Comparison(
                section.stream().map(Reading::player).toList(),
                beats,
                beatReadings,
                marking.isEmpty() ? List.of() : BarAgreements.of(beats, beatReadings, settings.level()),
                divergences(compared),
                lags(section));
    }

    /** One player: the strokes with the delay to what was due taken off, and what was done on each beat. */
    private record Compared(
            Player player,
            List<Stroke> inTime,
            List<Played> played,
            List<Judgement> toMarking,
            List<Judgement> toLeader) {}

    private Compared compared(Reading reading) {
        Optional<Reference> other = reading.player().leader() ? Optional.empty() : leading;
        List<Stroke> inTime = inTime(reading, due);
        List<Judgement> toMarking = judged(inTime, marking);
        List<Judgement> toLeader = judged(inTime(reading, other), other);
        List<Played> played = IntStream.range(0, beats.beats().size())
                .mapToObj(i -> played(inTime, i))
                .toList();
        return new Compared(
                reading.player(),
                inTime,
                played,
                toMarking,
                marking.isEmpty() ? toLeader : whereMarked(toMarking, toLeader));
    }

    /** Where the part rests, a bow that is set anew is nobody's business: not the leader's either. */
    private static List<Judgement> whereMarked(List<Judgement> toMarking, List<Judgement> toLeader) {
        return IntStream.range(0, toLeader.size())
                .mapToObj(i -> toMarking.get(i).verdict() == Verdict.REST ? toMarking.get(i) : toLeader.get(i))
                .toList();
    }

    private List<Stroke> inTime(Reading reading, Optional<Reference> reference) {
        return reference
                .map(r -> Delay.ofS(reading.strokes(), r.strokes(), settings.longestDelayS()))
                .map(delayS -> Spans.shifted(reading.strokes(), -delayS))
                .orElse(reading.strokes());
    }

    private List<Judgement> judged(List<Stroke> inTime, Optional<Reference> reference) {
        return IntStream.range(0, beats.beats().size())
                .mapToObj(i -> reference
                        .map(r -> Judgement.of(r, inTime, startS(i), beats.endS(i), settings))
                        .orElse(Judgement.of(Verdict.REST)))
                .toList();
    }

    /** What was done for most of the time that was due to be bowed. */
    private Played played(List<Stroke> inTime, int index) {
        double startS = startS(index);
        double endS = beats.endS(index);
        return due.flatMap(d -> Played.firstIn(d.strokes(), startS, endS))
                .map(m -> Played.most(inTime, Math.max(startS, m.startS()), Math.min(endS, m.endS())))
                .orElseGet(() -> Played.most(inTime, startS, endS));
    }

    private List<BeatReading> beatReadings(Compared player) {
        return IntStream.range(0, beats.beats().size())
                .mapToObj(i -> beatReading(player, i))
                .toList();
    }

    private BeatReading beatReading(Compared player, int index) {
        double startS = startS(index);
        double endS = beats.endS(index);
        Optional<Stroke> marked = marking.flatMap(m -> Played.firstIn(m.strokes(), startS, endS));
        Played played = player.played().get(index);
        Judgement judgement = player.toMarking().get(index);
        return new BeatReading(
                player.player(),
                index,
                beats.beats().get(index),
                marked.flatMap(m -> m.kind().direction()),
                played.kind(),
                judgement.confidence().orElse(played.confidence()),
                played.source(),
                judgement.verdict(),
                player.toLeader().get(index).verdict());
    }

    private List<Divergence> divergences(List<Compared> compared) {
        return Stream.of(
                        divergences(compared, marking, Compared::toMarking, Against.MARKING),
                        divergences(compared, leading, Compared::toLeader, Against.LEADER))
                .flatMap(List::stream)
                .sorted(Comparator.comparingInt(Divergence::firstIndex)
                        .thenComparing(Divergence::against)
                        .thenComparingInt(Divergence::lastIndex))
                .toList();
    }

    private List<Divergence> divergences(
            List<Compared> compared,
            Optional<Reference> reference,
            Function<Compared, List<Judgement>> judgements,
            Against against) {
        if (reference.isEmpty()) {
            return List.of();
        }
        List<Divergence> divergences = new ArrayList<>();
        for (Run run : beats.runs()) {
            List<Standings> standings = compared.stream()
                    .map(c -> Standings.of(judgements.apply(c), c.played(), run))
                    .toList();
            for (Standing standing : List.of(Standing.TURNED, Standing.FREE)) {
                List<Departure> departures = IntStream.range(0, compared.size())
                        .mapToObj(i -> departures(
                                compared.get(i),
                                reference.get(),
                                judgements.apply(compared.get(i)),
                                standings.get(i),
                                standing))
                        .flatMap(List::stream)
                        .toList();
                divergences.addAll(Divergences.joined(departures, beats, against, standing));
            }
        }
        return divergences;
    }

    private List<Departure> departures(
            Compared player, Reference reference, List<Judgement> judgements, Standings standings, Standing standing) {
        if (!Divergences.enough(judgements)) {
            return List.of();
        }
        FindingBack back = new FindingBack(beats, reference, player.inTime());
        return Divergences.of(
                player.player(),
                judgements,
                standings,
                standing,
                settings,
                last -> back.after(last, judgements, standings));
    }

    private List<Lag> lags(List<Reading> section) {
        return leader.stream()
                .flatMap(l ->
                        section.stream().filter(r -> !r.player().leader()).map(r -> Lags.of(r, l, beats, settings)))
                .toList();
    }

    private double startS(int index) {
        return beats.beats().get(index).timeS();
    }
}
