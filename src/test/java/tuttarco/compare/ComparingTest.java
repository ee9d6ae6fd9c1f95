package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.stats.ProportionInterval;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Forty strokes of a beat each, half a second long, ten bars of 4/4 from second 2 on. */
class ComparingTest {
    private static final Passage PASSAGE = Passage.steady(0.5, 0.5, 40);
    private static final List<Stroke> AS_MARKED = PASSAGE.asMarked();

    private static Comparison compare(Reading... readings) {
        return Comparing.compare(List.of(readings), PASSAGE.beats(), PASSAGE.marking(), CompareSettings.DEFAULT);
    }

    private static Comparison compareOne(List<Stroke> strokes) {
        return compare(Bows.reading(Bows.player("a"), strokes));
    }

    private static Reading of(String label, List<Stroke> strokes) {
        return Bows.reading(Bows.player(label), strokes);
    }

    private static List<Stroke> turned(int first, int last) {
        return Bows.turned(AS_MARKED, PASSAGE.beatStartS(first), PASSAGE.beatStartS(last + 1));
    }

    private static List<Stroke> as(StrokeKind kind, List<Stroke> strokes, int first, int last) {
        return Bows.as(kind, strokes, PASSAGE.beatStartS(first), PASSAGE.beatStartS(last + 1));
    }

    private static List<Verdict> verdicts(Comparison comparison, int player) {
        return comparison.beatReadings().get(player).stream()
                .map(BeatReading::verdict)
                .toList();
    }

    private static List<Verdict> leaderVerdicts(Comparison comparison, int player) {
        return comparison.beatReadings().get(player).stream()
                .map(BeatReading::leaderVerdict)
                .toList();
    }

    private static String told(Divergence d) {
        String who = String.join("+", d.players().stream().map(Player::label).toList());
        return who + " " + d.first().spoken() + " to " + d.last().spoken() + " "
                + d.against().word();
    }

    private static List<String> told(Comparison comparison) {
        return comparison.divergences().stream().map(ComparingTest::told).toList();
    }

    /** Turned from beat 17 to beat 24, and the playing stops after beat 20: bar 5 of the passage. */
    @Test
    void nothingGoesOnOverAStop() {
        BeatMap beats = new BeatMap(PASSAGE.beats().beats(), List.of(new Run(0, 19), new Run(20, 39)));
        Reading turned = of("a", turned(16, 23));
        Comparison comparison = Comparing.compare(List.of(turned), beats, PASSAGE.marking(), CompareSettings.DEFAULT);
        assertEquals(
                List.of("a bar 5 beat 1 to bar 5 beat 4 marking", "a bar 6 beat 1 to bar 6 beat 4 marking"),
                told(comparison));
        assertEquals(List.of("a bar 5 beat 1 to bar 6 beat 4 marking"), told(compare(turned)));
        // a stop within bar 5: both of its pieces are counted
        BeatMap within = new BeatMap(PASSAGE.beats().beats(), List.of(new Run(0, 17), new Run(18, 39)));
        comparison = Comparing.compare(List.of(turned), within, PASSAGE.marking(), CompareSettings.DEFAULT);
        assertEquals(
                List.of("5", "5", "6"),
                comparison.bars().subList(4, 7).stream().map(BarAgreement::bar).toList());
        assertEquals(11, comparison.bars().size());
    }

    @Test
    void whoKeepsToTheMarkingIsWithItOnEveryBeat() {
        Comparison comparison = compareOne(AS_MARKED);
        List<BeatReading> beats = comparison.beatReadings().get(0);
        assertEquals(40, beats.size());
        for (int i = 0; i < 40; i++) {
            BowDirection marked = i % 2 == 0 ? BowDirection.DOWN : BowDirection.UP;
            assertEquals(Optional.of(marked), beats.get(i).marked());
            assertEquals(StrokeKind.of(marked), beats.get(i).played());
            assertEquals(Verdict.WITH, beats.get(i).verdict());
            assertEquals(Verdict.REST, beats.get(i).leaderVerdict());
            assertEquals(0.95, beats.get(i).confidence(), 1e-12);
        }
        assertEquals(List.of(), comparison.divergences());
        assertEquals(List.of(), comparison.lags());
    }

    @Test
    void aTurnIsADivergenceOfItsBeats() {
        Comparison comparison = compareOne(turned(5, 7));
        assertEquals(List.of("a bar 2 beat 2 to bar 2 beat 4 marking"), told(comparison));
        Divergence divergence = comparison.divergences().get(0);
        assertEquals(5, divergence.firstIndex());
        assertEquals(7, divergence.lastIndex());
        assertTrue(divergence.confidence() > 0.9, divergence.toString());
        assertEquals(StrokeKind.DOWN, comparison.beatReadings().get(0).get(5).played());
    }

    @Test
    void aSingleBeatIsAgainstButNoDivergence() {
        Comparison comparison = compareOne(turned(5, 5));
        assertEquals(Verdict.AGAINST, verdicts(comparison, 0).get(5));
        assertEquals(List.of(), comparison.divergences());
    }

    @Test
    void aSingleBeatInDoubtIsPassedOverAndTwoAreNot() {
        assertEquals(
                List.of("a bar 2 beat 2 to bar 2 beat 4 marking"),
                told(compareOne(as(StrokeKind.UNSURE, turned(5, 7), 6, 6))));
        assertEquals(List.of(), told(compareOne(as(StrokeKind.UNSEEN, turned(5, 8), 6, 7))));
        assertEquals(
                List.of("a bar 2 beat 2 to bar 2 beat 3 marking", "a bar 3 beat 2 to bar 3 beat 4 marking"),
                told(compareOne(as(StrokeKind.UNSEEN, turned(5, 11), 7, 8))));
    }

    @Test
    void doubtAtTheEndsIsNoPartOfADivergence() {
        List<Stroke> strokes = as(StrokeKind.UNSURE, as(StrokeKind.UNSURE, turned(5, 10), 5, 5), 10, 10);
        assertEquals(List.of("a bar 2 beat 3 to bar 3 beat 2 marking"), told(compareOne(strokes)));
    }

    @Test
    void glitchesAtAChangeDontCount() {
        List<Stroke> strokes = AS_MARKED;
        for (int i = 1; i < 40; i++) {
            double changeS = PASSAGE.beatStartS(i);
            strokes = Bows.turned(strokes, changeS - 0.1, changeS + 0.1);
        }
        assertTrue(verdicts(compareOne(strokes), 0).stream().allMatch(Verdict.WITH::equals));
    }

    @Test
    void whatWasNotClearIsSaidAndNotCounted() {
        List<Stroke> strokes = as(StrokeKind.STILL, AS_MARKED, 3, 3);
        strokes = as(StrokeKind.UNSURE, strokes, 5, 5);
        strokes = as(StrokeKind.UNSEEN, strokes, 7, 7);
        Comparison comparison = compareOne(strokes);
        assertEquals(Verdict.UNSURE, verdicts(comparison, 0).get(3));
        assertEquals(StrokeKind.STILL, comparison.beatReadings().get(0).get(3).played());
        assertEquals(Verdict.UNSURE, verdicts(comparison, 0).get(5));
        assertEquals(Verdict.UNSEEN, verdicts(comparison, 0).get(7));
        assertEquals(
                37, comparison.bars().stream().mapToInt(BarAgreement::judged).sum());
        assertEquals(37, comparison.bars().stream().mapToInt(BarAgreement::with).sum());
    }

    @Test
    void beatsOutsideTheClipAreUnseen() {
        Comparison comparison = compareOne(List.of(new Stroke(0, 2, StrokeKind.STILL, 1)));
        assertTrue(verdicts(comparison, 0).stream().allMatch(Verdict.UNSEEN::equals));
        assertEquals(StrokeKind.UNSEEN, comparison.beatReadings().get(0).get(0).played());
        assertEquals(Verdict.UNSEEN, verdicts(compareOne(List.of()), 0).get(0));
    }

    @Test
    void restsAreRestsAndAStrokeThatBeginsWithinABeatIsMarkedThere() {
        Passage passage = new Passage(1, List.of(1.0, 1.0, -1.5, 0.5, 1.0, 1.0));
        Comparison comparison = Comparing.compare(
                List.of(of("a", passage.asMarked())), passage.beats(), passage.marking(), CompareSettings.DEFAULT);
        List<BeatReading> beats = comparison.beatReadings().get(0);
        assertEquals(
                List.of(Verdict.WITH, Verdict.WITH, Verdict.REST, Verdict.WITH, Verdict.WITH, Verdict.WITH),
                verdicts(comparison, 0));
        assertEquals(Optional.empty(), beats.get(2).marked());
        assertEquals(StrokeKind.STILL, beats.get(2).played());
        assertEquals(Optional.of(BowDirection.DOWN), beats.get(3).marked());
        assertEquals(StrokeKind.DOWN, beats.get(3).played());
    }

    @Test
    void confidenceIsTheShareOfJudgedTimeExpectedToBearTheVerdictOut() {
        Passage passage = new Passage(2, List.of(1.0, 1.0, 1.0, 1.0));
        List<Stroke> strokes = List.of(
                new Stroke(0, 2.5, StrokeKind.DOWN, 0.9),
                new Stroke(2.5, 3, StrokeKind.UP, 0.6),
                new Stroke(3, 4, StrokeKind.UP, 0.8),
                new Stroke(4, 5, StrokeKind.UP, 0.8),
                new Stroke(5, 6, StrokeKind.DOWN, 0.7));
        Comparison comparison = Comparing.compare(
                List.of(of("a", strokes)),
                passage.beats(),
                passage.marking(),
                new CompareSettings(0.1, 0.25, 0.5, 0.08, 2, 0.5, 0, 0.4, 0.95));
        List<BeatReading> beats = comparison.beatReadings().get(0);
        // judged: 2.1 to 2.5 right with 0.9, 2.5 to 2.9 wrong with 0.6, 3.1 to 3.9 right with 0.8
        assertEquals(Verdict.WITH, beats.get(0).verdict());
        assertEquals(
                (0.4 * 0.9 + 0.4 * (1 - 0.6) + 0.8 * 0.8) / 1.6, beats.get(0).confidence(), 1e-9);
        // judged: 4.1 to 4.9 wrong with 0.8, 5.1 to 5.9 wrong with 0.7
        assertEquals(Verdict.AGAINST, beats.get(1).verdict());
        assertEquals(0.75, beats.get(1).confidence(), 1e-9);
    }

    /** Leader and player bow alike and are misread as often as their confidence says. */
    @Test
    void verdictsAreRightAsOftenAsTheirConfidenceSays() {
        Random random = new Random(7);
        Passage passage = Passage.steady(0.5, 0.5, 20_000);
        Reference leader = Reference.of(misread(passage.asMarked(), random), CompareSettings.DEFAULT);
        List<Stroke> player = misread(passage.asMarked(), random);
        int right = 0;
        int judged = 0;
        double expected = 0;
        for (int i = 0; i < 20_000; i++) {
            double startS = passage.beatStartS(i);
            Judgement judgement = Judgement.of(leader, player, startS, startS + 0.5, CompareSettings.DEFAULT);
            judged++;
            expected += judgement.confidence().orElseThrow();
            right += judgement.verdict() == Verdict.WITH ? 1 : 0;
        }
        assertEquals(20_000, judged);
        assertEquals(expected / judged, (double) right / judged, 0.01);
    }

    /** Each stroke with a confidence from 0.6 to 1, the direction wrong with the rest of the probability. */
    private static List<Stroke> misread(List<Stroke> strokes, Random random) {
        return strokes.stream()
                .map(s -> {
                    double confidence = 0.6 + 0.4 * random.nextDouble();
                    boolean wrong = random.nextDouble() > confidence;
                    StrokeKind kind = s.kind()
                            .direction()
                            .map(d -> StrokeKind.of(wrong ? d.opposite() : d))
                            .orElse(s.kind());
                    return new Stroke(s.startS(), s.endS(), kind, confidence);
                })
                .toList();
    }

    @Test
    void playersWhoLeaveTogetherShareADivergence() {
        Comparison comparison = compare(
                of("a", turned(8, 13)), of("b", turned(9, 13)), of("c", turned(8, 14)), of("d", turned(20, 23)));
        assertEquals(
                List.of("a+b+c bar 3 beat 1 to bar 4 beat 2 marking", "d bar 6 beat 1 to bar 6 beat 4 marking"),
                told(comparison));
    }

    @Test
    void differentSpansStayApart() {
        Comparison comparison = compare(of("a", turned(8, 13)), of("b", turned(8, 15)));
        assertEquals(
                List.of("a bar 3 beat 1 to bar 4 beat 2 marking", "b bar 3 beat 1 to bar 4 beat 4 marking"),
                told(comparison));
    }

    @Test
    void theLeaderWhoLeavesTheMarkingIsAgainstItAndTheSectionAgainstTheLeader() {
        Comparison comparison =
                compare(of("a", AS_MARKED), Bows.reading(Bows.leader(), turned(8, 11)), of("b", AS_MARKED));
        assertEquals(
                List.of("leader bar 3 beat 1 to bar 3 beat 4 marking", "a+b bar 3 beat 1 to bar 3 beat 4 leader"),
                told(comparison));
        assertTrue(leaderVerdicts(comparison, 0).stream().allMatch(Verdict.REST::equals));
        assertEquals(Verdict.AGAINST, leaderVerdicts(comparison, 1).get(8));
        assertEquals(Verdict.WITH, leaderVerdicts(comparison, 1).get(12));
    }

    @Test
    void whoFollowsTheLeaderAwayFromTheMarkingIsWithTheLeader() {
        Comparison comparison = compare(of("a", turned(8, 11)), Bows.reading(Bows.leader(), turned(8, 11)));
        assertEquals(List.of("leader+a bar 3 beat 1 to bar 3 beat 4 marking"), told(comparison));
    }

    @Test
    void whatTheLeaderDidNotShowIsNotComparedWith() {
        List<Stroke> leader = as(StrokeKind.STILL, AS_MARKED, 4, 7);
        leader = as(StrokeKind.UNSURE, leader, 12, 15);
        leader = as(StrokeKind.UNSEEN, leader, 20, 23);
        Comparison comparison = compare(Bows.reading(Bows.leader(), leader), of("a", turned(4, 39)));
        List<Verdict> verdicts = leaderVerdicts(comparison, 1);
        assertEquals(Verdict.REST, verdicts.get(5));
        assertEquals(Verdict.UNSURE, verdicts.get(13));
        assertEquals(Verdict.UNSEEN, verdicts.get(21));
        assertEquals(Verdict.AGAINST, verdicts.get(30));
    }

    /** A bow that is set anew in a rest is neither with the leader's nor against it. */
    @Test
    void whereThePartRestsNobodyIsComparedWithTheLeader() {
        double restS = PASSAGE.beatStartS(8);
        List<TimedSpan> marking = PASSAGE.marking().stream()
                .filter(s -> s.endS() <= restS + 1e-9 || s.startS() >= PASSAGE.beatStartS(9) - 1e-9)
                .toList();
        assertEquals(PASSAGE.marking().size() - 1, marking.size());
        Comparison comparison = Comparing.compare(
                List.of(Bows.reading(Bows.leader(), AS_MARKED), of("a", turned(8, 8))),
                PASSAGE.beats(),
                marking,
                CompareSettings.DEFAULT);
        assertEquals(Verdict.REST, leaderVerdicts(comparison, 1).get(8));
        assertEquals(Verdict.WITH, leaderVerdicts(comparison, 1).get(7));
        assertEquals(Verdict.WITH, leaderVerdicts(comparison, 1).get(9));
    }

    @Test
    void withoutAMarkingOnlyTheLeaderIsComparedWith() {
        Comparison comparison = Comparing.compare(
                List.of(Bows.reading(Bows.leader(), AS_MARKED), of("a", turned(8, 11))),
                PASSAGE.beats(),
                List.of(),
                CompareSettings.DEFAULT);
        assertEquals(List.of(), comparison.bars());
        assertTrue(verdicts(comparison, 1).stream().allMatch(Verdict.REST::equals));
        assertEquals(List.of("a bar 3 beat 1 to bar 3 beat 4 leader"), told(comparison));
        assertEquals(Against.LEADER, comparison.divergences().get(0).against());
        assertEquals(1, comparison.lags().size());
        assertEquals(0, comparison.lags().get(0).medianMs().orElseThrow(), 1e-9);
    }

    @Test
    void barsCountPlayersAndBeats() {
        Comparison comparison = compare(of("a", AS_MARKED), of("b", turned(4, 6)), of("c", AS_MARKED));
        assertEquals(10, comparison.bars().size());
        BarAgreement second = comparison.bars().get(1);
        assertEquals(new BarAgreement("2", 4, 7, 9, 12, Optional.of(ProportionInterval.wilson(9, 12, 0.95))), second);
        assertEquals(12, comparison.bars().get(0).with());
    }

    @Test
    void theSectionIsListedFromTheLeaderDeskByDesk() {
        List<Player> shuffled = List.of(
                Bows.player("2i", 2, Place.INSIDE, false),
                Bows.player("1o", 1, Place.OUTSIDE, false),
                Bows.player("2o", 2, Place.OUTSIDE, false),
                Bows.player("lead", 1, Place.INSIDE, true));
        Comparison comparison =
                compare(shuffled.stream().map(p -> Bows.reading(p, AS_MARKED)).toArray(Reading[]::new));
        List<String> labels = comparison.players().stream().map(Player::label).toList();
        assertEquals(List.of("lead", "1o", "2o", "2i"), labels);
        List<String> lagLabels =
                comparison.lags().stream().map(l -> l.player().label()).toList();
        assertEquals(List.of("1o", "2o", "2i"), lagLabels);
        assertEquals("2o", comparison.beatReadings().get(2).get(0).player().label());
    }

    @Test
    void settingsRefuseNonsense() {
        List<Runnable> bad = Stream.<Runnable>of(
                        () -> new CompareSettings(Double.NaN, 0.25, 0.5, 0.08, 2, 0.5, 0.2, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.5, 0.5, 0.08, 2, 0.5, 0.2, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0, 0.08, 2, 0.5, 0.2, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0.5, -1, 2, 0.5, 0.2, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0.5, 0.08, 0, 0.5, 0.2, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0.5, 0.08, 2, 0.5, 3, 0.4, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0.5, 0.08, 2, 0.5, 0.2, Double.NaN, 0.95),
                        () -> new CompareSettings(0.1, 0.25, 0.5, 0.08, 2, 0.5, 0.2, 0.4, 1))
                .toList();
        assertEquals(8, bad.size());
        bad.forEach(b -> assertThrows(IllegalArgumentException.class, b::run));
    }

    /**
     * Without bars and beats the leader's forty strokes, of half a second from second 2 on, are what is counted. The leader
     * is not seen for strokes 21 to 24, so that what were strokes 25 to 40 are 21 to 36; the other is turned in what were
     * strokes 31 to 34.
     */
    @Test
    void strokesOfTheLeaderAreCountedWhereNoBeatsAreKnown() {
        Reading leader = Bows.reading(Bows.leader(), as(StrokeKind.UNSEEN, AS_MARKED, 20, 23));
        Reading other = of("b", Bows.late(turned(30, 33), 0.15));
        Comparison comparison = Comparing.withLeader(List.of(other, leader), CompareSettings.DEFAULT)
                .orElseThrow();
        assertEquals(36, comparison.beats().beats().size());
        assertEquals(
                "the leader's stroke 21", comparison.beats().beats().get(20).spoken());
        assertEquals(PASSAGE.beatStartS(24), comparison.beats().beats().get(20).timeS(), 1e-9);
        List<Verdict> verdicts = leaderVerdicts(comparison, 1);
        for (int i = 0; i < 36; i++) {
            assertEquals(i >= 26 && i <= 29 ? Verdict.AGAINST : Verdict.WITH, verdicts.get(i), "stroke " + (i + 1));
        }
        assertEquals(1, comparison.divergences().size());
        assertEquals(27, comparison.divergences().get(0).first().beat());
        assertEquals(30, comparison.divergences().get(0).last().beat());
        assertEquals(StrokeKind.DOWN, comparison.beatReadings().get(1).get(0).played(), "the delay is taken off");
        assertTrue(verdicts(comparison, 1).stream().allMatch(v -> v == Verdict.REST), "nothing is marked");
        assertTrue(comparison.bars().isEmpty());
    }

    @Test
    void withoutALeaderWhoBowsNothingIsCounted() {
        Reading still = Bows.reading(Bows.leader(), as(StrokeKind.STILL, AS_MARKED, 1, 39));
        assertEquals(Optional.empty(), Comparing.withLeader(List.of(still), CompareSettings.DEFAULT), "one stroke");
        assertEquals(
                Optional.empty(), Comparing.withLeader(List.of(of("b", AS_MARKED)), CompareSettings.DEFAULT), "none");
    }
}
