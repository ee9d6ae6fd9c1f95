package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.stats.PhaseOrder;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Edge;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Eight players at four desks, twenty strokes of a second, each a beat long. */
class TogethernessTest {
    private static final Passage PASSAGE = Passage.steady(1, 1, 20);
    private static final double END_S = Passage.START_S + 20;

    private static tuttarco.strokes.Bows read(int i, boolean led, List<Stroke> strokes) {
        Player player = Bows.player("p" + i, i / 2 + 1, i % 2 == 0 ? Place.OUTSIDE : Place.INSIDE, led && i == 0);
        List<Bow> bows = new ArrayList<>();
        for (Stroke s : strokes) {
            bows.add(new Bow(
                    s, new Edge.Change(0.017), new Edge.Change(0.017), new BowUse.Unknown(BowUse.Reason.UNCLEAR)));
        }
        return new tuttarco.strokes.Bows(player, bows);
    }

    private static Togetherness of(boolean led, boolean marked, List<List<Stroke>> section) {
        List<tuttarco.strokes.Bows> bows = IntStream.range(0, section.size())
                .mapToObj(i -> read(i, led, section.get(i)))
                .toList();
        Comparison comparison = Comparing.compare(
                Timing.readings(bows),
                PASSAGE.beats(),
                marked ? PASSAGE.marking() : List.of(),
                CompareSettings.DEFAULT);
        return Togetherness.of(comparison, bows, CompareSettings.DEFAULT);
    }

    /** Players 1, 3, 5 and 7, the inside ones, turned between two times. */
    private static List<List<Stroke>> insideTurned(double fromS, double toS) {
        List<Stroke> straight = PASSAGE.asMarked();
        return IntStream.range(0, 8)
                .mapToObj(i -> i % 2 == 0 ? straight : Bows.turned(straight, fromS, toS))
                .toList();
    }

    private static double value(Togetherness together, Metric metric, String sort, String name) {
        return together.measures().stream()
                .filter(m -> m.metric() == metric && m.scope().sort().equals(sort))
                .filter(m -> m.scope().name().equals(name))
                .findFirst()
                .flatMap(Measure::value)
                .orElseThrow();
    }

    @Test
    void aSectionOfOneMindIsOne() {
        Togetherness together = of(true, true, insideTurned(0, 0));
        for (Metric metric : List.of(
                Metric.WITH_MARKING,
                Metric.WITH_LEADER,
                Metric.WITH_MAJORITY,
                Metric.ALPHA,
                Metric.KAPPA,
                Metric.PHASE_ORDER)) {
            assertEquals(1, value(together, metric, "take", ""), 1e-9, metric.key());
        }
        assertEquals(0, value(together, Metric.CHANGE_SPREAD, "take", ""), 1e-9);
        assertEquals(
                List.of(1.0, 1.0),
                together.contrasts().stream().map(Contrast::p).toList());
    }

    /** Half of the section turned for eight of twenty beats. */
    @Test
    void groupsAndBarsAreCountedByThemselves() {
        Togetherness together = of(true, true, insideTurned(Passage.START_S, Passage.START_S + 8));
        assertEquals(1 - 0.5 * 8 / 20, value(together, Metric.WITH_MARKING, "take", ""), 1e-9);
        assertEquals(12 / 20.0, value(together, Metric.WITH_MARKING, "place", "inside"), 1e-9);
        assertEquals(1, value(together, Metric.WITH_MARKING, "place", "outside"), 1e-9);
        assertEquals(16 / 20.0, value(together, Metric.WITH_MARKING, "desk", "3"), 1e-9);
        assertEquals(0.5, value(together, Metric.WITH_MARKING, "bar", "1"), 1e-9);
        assertEquals(1, value(together, Metric.WITH_MARKING, "bar", "3"), 1e-9);
        assertEquals(1, value(together, Metric.ALPHA, "bar", "3"), 1e-9);
        assertTrue(value(together, Metric.ALPHA, "bar", "1") < 0, "as many against as with is less than chance");
        assertEquals(1, value(together, Metric.ALPHA, "place", "inside"), 1e-9);
        Contrast places = together.contrasts().get(0);
        assertEquals(0.4, Math.abs(places.oneShare() - places.otherShare()), 1e-9);
        assertEquals(2 * 2 / 70.0, places.p(), 0.01, "2 of 70 ways, twice by Holm");
        assertEquals(1, together.contrasts().get(1).p(), 1e-9, "front and back hold as many inside players");
    }

    @Test
    void unseenBeatsDoNotCount() {
        List<List<Stroke>> section = new ArrayList<>(insideTurned(0, 0));
        section.set(3, Bows.as(StrokeKind.UNSEEN, section.get(3), Passage.START_S, Passage.START_S + 10));
        Togetherness together = of(true, true, section);
        Measure alpha = together.ofTake(Metric.ALPHA).orElseThrow();
        assertEquals(20, alpha.count());
        assertEquals(1, alpha.value().orElseThrow(), 1e-9);
        assertEquals(10, together.ofTake(Metric.KAPPA).orElseThrow().count());
    }

    /** Players late by a tenth of a second each: changes a known way apart, phases too. */
    @Test
    void timesLieApartAsPlanted() {
        List<List<Stroke>> section = IntStream.range(0, 5)
                .mapToObj(i -> Bows.late(PASSAGE.asMarked(), 0.05 * i))
                .toList();
        Togetherness together = of(true, true, section);
        assertEquals(100, value(together, Metric.CHANGE_SPREAD, "take", ""), 1e-6);
        List<Double> phases =
                IntStream.range(0, 5).mapToObj(i -> -Math.PI * 0.05 * i).toList();
        assertEquals(PhaseOrder.of(phases), value(together, Metric.PHASE_ORDER, "bar", "3"), 1e-6);
    }

    /** The same strokes, those changes later that lie between two times. */
    private static List<Stroke> later(double byS, double fromS, double toS) {
        return PASSAGE.asMarked().stream()
                .map(s -> new Stroke(
                        s.startS() + (fromS <= s.startS() && s.startS() < toS ? byS : 0),
                        s.endS() + (fromS <= s.endS() && s.endS() < toS ? byS : 0),
                        s.kind(),
                        s.confidence()))
                .toList();
    }

    /** In bar 2 the five of them change 50 ms after each other, in bar 4 20 ms, elsewhere together. */
    @Test
    void changesAreScatteredWhereTheyLieWidestApart() {
        double barS = 4;
        List<List<Stroke>> section = IntStream.range(0, 5)
                .mapToObj(i -> {
                    List<Stroke> second =
                            later(0.05 * i, Passage.START_S + barS - 0.1, Passage.START_S + 2 * barS - 0.1);
                    List<Stroke> fourth =
                            later(0.02 * i, Passage.START_S + 3 * barS - 0.1, Passage.START_S + 4 * barS - 0.1);
                    List<Stroke> both = new ArrayList<>(second.subList(0, 11));
                    both.addAll(fourth.subList(11, fourth.size()));
                    return both;
                })
                .toList();
        for (boolean led : List.of(true, false)) {
            ChangeScatter scatter = of(led, true, section).scatter();
            assertEquals(led, scatter.toLeader());
            assertEquals(100, scatter.togetherMs(), 1e-9, "the tolerance of the comparison");
            assertEquals(
                    List.of("1", "2", "4"),
                    scatter.bars().stream().map(b -> b.bar().name()).toList());
            ChangeScatter.InBar second = scatter.bars().get(1);
            assertEquals(100, second.spreadMs(), 1e-6);
            assertEquals(4, second.changes().size());
            ChangeScatter.Change change = second.changes().get(1);
            assertEquals(BowDirection.UP, change.to());
            assertEquals(Passage.START_S + barS + 1 + (led ? 0 : 0.1), change.timeS(), 1e-6);
            for (int i = 0; i < 5; i++) {
                double lagMs = change.lagsMs().get(scatter.players().get(i));
                assertEquals(led ? 50 * i : 50 * i - 100, lagMs, 1e-6);
            }
            assertEquals(40, scatter.bars().get(2).spreadMs(), 1e-6);
        }
        assertEquals(List.of(), of(true, true, section.subList(0, 3)).scatter().bars(), "of three no middle half");
    }

    @Test
    void everyMeasureKnowsItsBar() {
        Togetherness together = of(true, true, insideTurned(0, 0));
        List<String> bars = together.measures().stream()
                .filter(m -> m.metric() == Metric.ALPHA && m.scope() instanceof Scope.InBar)
                .map(m -> m.scope().name())
                .toList();
        assertEquals(List.of("1", "2", "3", "4", "5"), bars);
    }

    @Test
    void nothingIsMadeOfNothing() {
        List<Stroke> unseen = List.of(new Stroke(0, END_S, StrokeKind.UNSEEN, 1));
        Togetherness together = of(true, true, List.of(unseen, unseen, unseen));
        assertTrue(together.measures().size() > 20);
        assertTrue(together.measures().stream().allMatch(m -> m.value().isEmpty()));
        assertEquals(List.of(), together.contrasts());
        Togetherness alone = of(true, true, List.of(PASSAGE.asMarked()));
        assertEquals(Optional.empty(), alone.ofTake(Metric.ALPHA));
        assertEquals(Optional.empty(), alone.ofTake(Metric.WITH_MAJORITY));
        Togetherness neither = of(false, false, insideTurned(0, 0));
        assertEquals(Optional.empty(), neither.ofTake(Metric.WITH_LEADER));
        assertEquals(
                1, neither.ofTake(Metric.WITH_MAJORITY).flatMap(Measure::value).orElseThrow(), 1e-9);
    }
}
