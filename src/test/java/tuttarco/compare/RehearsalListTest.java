package tuttarco.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Departure.BackAt;
import tuttarco.compare.Departure.Way;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Forty strokes of a beat each, half a second long, ten bars of 4/4; beats are counted from 0. */
class RehearsalListTest {
    private static final Passage PASSAGE = Passage.steady(0.5, 0.5, 40);

    private static List<Stroke> turned(int first, int last) {
        return Bows.turned(PASSAGE.asMarked(), PASSAGE.beatStartS(first), PASSAGE.beatStartS(last + 1));
    }

    private static Reading read(int desk, Place place, List<Stroke> strokes) {
        return Bows.reading(Bows.player(desk + " " + place.word(), desk, place, false), strokes);
    }

    private static Comparison compare(Reading... readings) {
        return compare(PASSAGE.beats(), readings);
    }

    private static Comparison compare(BeatMap beats, Reading... readings) {
        return Comparing.compare(List.of(readings), beats, PASSAGE.marking(), CompareSettings.DEFAULT);
    }

    private static List<String> told(Comparison comparison) {
        return RehearsalList.of(comparison).stream()
                .map(s ->
                        String.join("+", s.players().stream().map(Player::label).toList())
                                + " " + s.firstIndex() + "-" + s.lastIndex() + " "
                                + s.against().word() + " back "
                                + s.backIndex().map(i -> Integer.toString(i)).orElse("never"))
                .toList();
    }

    @Test
    void whoLeftTogetherIsOneEntryWhereverTheyFoundBack() {
        assertEquals(
                List.of("3 inside+4 inside 8-19 marking back 20"),
                told(compare(
                        read(3, Place.INSIDE, turned(8, 15)),
                        read(4, Place.INSIDE, turned(8, 19)),
                        read(3, Place.OUTSIDE, PASSAGE.asMarked()))));
    }

    @Test
    void morePlayersAndMoreBeatsComeFirst() {
        assertEquals(
                List.of("3 inside+4 inside 20-25 marking back 26", "1 inside 4-9 marking back 10"),
                told(compare(
                        read(1, Place.INSIDE, turned(4, 9)),
                        read(3, Place.INSIDE, turned(20, 25)),
                        read(4, Place.INSIDE, turned(20, 25)))));
    }

    @Test
    void aPartnerWhoFollowsIsTheSameCauseAndOthersAreNot() {
        Comparison comparison = compare(
                read(2, Place.OUTSIDE, turned(8, 19)),
                read(2, Place.INSIDE, turned(12, 19)),
                read(5, Place.INSIDE, turned(12, 15)));
        assertEquals(
                List.of("2 outside+2 inside 8-19 marking back 20", "5 inside 12-15 marking back 16"), told(comparison));
        List<Spot.Followed> followed = RehearsalList.of(comparison).get(0).followed();
        assertEquals(1, followed.size());
        assertEquals(Place.OUTSIDE, followed.get(0).first().place());
        assertEquals(4, followed.get(0).beatsLater());
    }

    @Test
    void whatTheLeaderDidIsNotToldAgainOfEachWhoStayed() {
        Comparison comparison = compare(
                Bows.reading(Bows.leader(), turned(8, 13)),
                read(2, Place.INSIDE, PASSAGE.asMarked()),
                read(3, Place.INSIDE, PASSAGE.asMarked()));
        assertEquals(2, comparison.divergences().size());
        assertEquals(List.of("leader 8-13 marking back 14"), told(comparison));
    }

    @Test
    void aStopIsTheEndOfACause() {
        BeatMap stopped = new BeatMap(PASSAGE.beats().beats(), List.of(new Run(0, 19), new Run(20, 39)));
        assertEquals(
                List.of("3 inside 14-19 marking back never", "3 inside 20-23 marking back 24"),
                told(compare(stopped, read(3, Place.INSIDE, turned(14, 23)))));
    }

    /** The same strokes as marked from there on, reached in four ways. */
    @Test
    void theWayBackIsTold() {
        assertEquals(Way.DOUBLED_STROKE, way(turned(8, 13)));
        // the bow lifted for the first half of beat 14, then set again the same way as the last stroke
        List<Stroke> lifted =
                Bows.as(StrokeKind.STILL, turned(8, 13), PASSAGE.beatStartS(14), PASSAGE.beatStartS(14) + 0.15);
        assertEquals(Way.RETAKE, way(lifted));
        assertEquals(
                Way.UNKNOWN,
                way(Bows.as(StrokeKind.UNSEEN, turned(8, 13), PASSAGE.beatStartS(14), PASSAGE.beatStartS(15))));
    }

    @Test
    void aChangeMoreThanMarkedIsTold() {
        Passage slow = new Passage(0.5, Collections.nCopies(20, 1.0));
        List<Stroke> strokes = Bows.turned(slow.asMarked(), slow.beatStartS(8), slow.beatStartS(15));
        Comparison comparison = Comparing.compare(
                List.of(read(3, Place.INSIDE, strokes)), slow.beats(), slow.marking(), CompareSettings.DEFAULT);
        assertEquals(Way.EXTRA_CHANGE, way(comparison));
    }

    @Test
    void aRestIsTheWayBackWhereThereIsOne() {
        List<Double> lengths = new ArrayList<>(Collections.nCopies(40, 0.5));
        lengths.set(14, -0.5);
        Passage rests = new Passage(0.5, lengths);
        List<Stroke> strokes = Bows.turned(rests.asMarked(), rests.beatStartS(8), rests.beatStartS(14));
        Comparison comparison = Comparing.compare(
                List.of(read(3, Place.INSIDE, strokes)), rests.beats(), rests.marking(), CompareSettings.DEFAULT);
        assertEquals(Way.REST, way(comparison));
    }

    private static Way way(List<Stroke> strokes) {
        return way(compare(read(3, Place.INSIDE, strokes)));
    }

    private static Way way(Comparison comparison) {
        List<Spot> spots = RehearsalList.of(comparison);
        assertEquals(1, spots.size());
        BackAt back = (BackAt) spots.get(0).departures().get(0).back();
        return back.way();
    }

    @Test
    void aBarManyLeaveInTheSameWayIsACandidate() {
        Comparison comparison = compare(
                read(1, Place.OUTSIDE, turned(8, 11)),
                read(1, Place.INSIDE, turned(8, 11)),
                read(2, Place.OUTSIDE, turned(8, 11)),
                read(2, Place.INSIDE, turned(20, 23)),
                read(3, Place.OUTSIDE, PASSAGE.asMarked()));
        List<BowingCandidate> candidates = BowingCandidate.in(comparison);
        assertEquals(1, candidates.size());
        BowingCandidate bar = candidates.get(0);
        assertEquals("3", bar.bar());
        assertEquals(3, bar.players().size());
        assertEquals(5, bar.judged());
        Optional<BowDirection> down = Optional.of(BowDirection.DOWN);
        Optional<BowDirection> up = Optional.of(BowDirection.UP);
        assertEquals(List.of(down, up, down, up), bar.marked());
        assertEquals(List.of(up, down, up, down), bar.instead());
    }

    @Test
    void twoPlayersOrHalfOfTheSectionAreNoCandidate() {
        Reading a = read(1, Place.OUTSIDE, turned(8, 11));
        Reading b = read(1, Place.INSIDE, turned(8, 11));
        assertEquals(List.of(), BowingCandidate.in(compare(a, b)));
        Reading c = read(2, Place.INSIDE, turned(8, 11));
        List<Reading> half = new ArrayList<>(List.of(a, b, c));
        for (int desk = 3; desk <= 5; desk++) {
            half.add(read(desk, Place.INSIDE, PASSAGE.asMarked()));
        }
        assertEquals(List.of(), BowingCandidate.in(compare(half.toArray(Reading[]::new))));
    }

    /** Three beats seen, all against; nothing seen; nobody with a marking: no spot and no candidate. */
    @Test
    void nothingIsClaimedFromTooLittle() {
        List<Stroke> three = Bows.as(StrokeKind.UNSEEN, turned(0, 39), 0, PASSAGE.beatStartS(8));
        three = Bows.as(StrokeKind.UNSEEN, three, PASSAGE.beatStartS(11), 60);
        Comparison few = compare(read(1, Place.INSIDE, three));
        assertEquals(
                3,
                few.beatReadings().get(0).stream()
                        .filter(r -> r.verdict() == Verdict.AGAINST)
                        .count());
        List<Stroke> nothing = Bows.as(StrokeKind.UNSEEN, turned(0, 39), 0, 60);
        Comparison unmarked = Comparing.compare(
                List.of(read(1, Place.INSIDE, turned(8, 15))), PASSAGE.beats(), List.of(), CompareSettings.DEFAULT);
        for (Comparison comparison : List.of(few, compare(read(1, Place.INSIDE, nothing)), unmarked)) {
            assertTrue(comparison.divergences().isEmpty());
            assertTrue(RehearsalList.of(comparison).isEmpty());
            assertTrue(BowingCandidate.in(comparison).isEmpty());
        }
    }
}
