package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tuttarco.corrections.Correction;
import tuttarco.report.Fixtures;
import tuttarco.strokes.StrokeKind;

/** One choice for all that is looked at; the section is the one {@code SectionFixture} describes. */
class ReviewingTest {
    private final Waiting waiting = new Waiting();
    private final Session session = waiting.session;

    @AfterEach
    void end() {
        waiting.close();
    }

    private Reviewing reviewing() throws InterruptedException {
        return waiting.reviewing(Fixtures.unified());
    }

    @Test
    void whatComesFirstIsSaid() {
        Reviewing reviewing = new Reviewing(session);
        assertEquals("open", reviewing.first().orElseThrow().step());
        session.open(Draft.ofVideo(Path.of("take.mp4")));
        assertEquals("seats", reviewing.first().orElseThrow().step());
        session.open(Draft.of(Fixtures.unified().take()));
        assertEquals("reading", reviewing.first().orElseThrow().step());
        session.analysed(Optional.of(Fixtures.unified()));
        assertEquals(Optional.empty(), reviewing.first());
    }

    @Test
    void theFirstPlayerIsChosenAtFirst() throws InterruptedException {
        Reviewing reviewing = reviewing();
        assertEquals(Optional.of("Desk 1 outside"), reviewing.choice().player());
        assertEquals("Desk 1 outside", reviewing.bow().orElseThrow().player().label());
        assertEquals(ChosenBeats.one(0), reviewing.beats());
    }

    /** One spot is planted: desk 3 inside turned in bars 3 and 4, seconds 5 to 9. */
    @Test
    void aSpotIsToldAsTheReportTellsItAndGoneTo() throws InterruptedException {
        Reviewing reviewing = reviewing();
        List<Judged.ToRehearse> spots = reviewing.judged().orElseThrow().spots();
        assertEquals(1, spots.size());
        assertEquals("Bar 3 beat 1 to bar 4 beat 4  (0:05.0)", spots.get(0).heading());
        assertTrue(spots.get(0).words().endsWith("% sure)."), spots.get(0).words());
        reviewing.chooseSpot(spots.get(0));
        assertEquals(new Choice(Optional.of("Desk 3 inside"), 5), reviewing.choice());
        assertEquals(8, reviewing.beats().first());
        assertEquals(15, reviewing.beats().last());
        assertEquals(new Stretch(5, 9), reviewing.bars().orElseThrow());
        waiting.until(() -> reviewing.bow().isPresent());
        assertEquals("Desk 3 inside", reviewing.bow().orElseThrow().player().label());
        assertEquals(List.of(new Stretch(5, 9)), reviewing.bow().orElseThrow().against());
    }

    /** Planted: three of four players turn in bar 3. */
    @Test
    void aBarInWhichTheMarkingMayBeTheTroubleIsAPlaceToGoTo() {
        List<Judged.ToRehearse> spots = Judged.of(Fixtures.mostTurned()).spots();
        Judged.ToRehearse marking = spots.get(spots.size() - 1);
        assertEquals("Is the marking the trouble?", marking.heading());
        assertTrue(marking.words().startsWith("Bar 3 "), marking.words());
        assertEquals(Optional.empty(), marking.player());
        assertEquals(8, marking.firstIndex());
        assertEquals(11, marking.lastIndex());
    }

    @Test
    void anEmptyListSaysWhatCouldNotBeFound() {
        Judged nothing = Judged.of(Fixtures.nothingSeen());
        assertEquals(List.of(), nothing.spots());
        assertTrue(nothing.noSpots().startsWith("No beat could be compared with the marking."), nothing.noSpots());
        assertTrue(Judged.of(Fixtures.alone())
                .noSpots()
                .contains("One player alone shows nothing of how together a section is."));
    }

    @Test
    void whatWasReadIsToldWithHowSureItIs() {
        String[] lines = ReadingWords.done(Fixtures.nothingSeen()).split("\n", -1);
        assertTrue(lines[0].contains("players over "), lines[0]);
        assertEquals("Of all beats of all players 0 % are read for sure, 0 % are unsure and 100 % not seen.", lines[3]);
    }

    @Test
    void playingMovesThroughTheBeatsAndLeavesWhatIsChosenWhileItIsThere() throws InterruptedException {
        Reviewing reviewing = reviewing();
        reviewing.chooseSpot(reviewing.judged().orElseThrow().spots().get(0));
        reviewing.chooseTime(8.99);
        assertEquals(8, reviewing.beats().first());
        reviewing.chooseTime(9);
        assertEquals(ChosenBeats.one(16), reviewing.beats());
    }

    @Test
    void keysChooseBeatsBarsAndPlayers() throws InterruptedException {
        Reviewing reviewing = reviewing();
        reviewing.moveBars(2, false);
        assertEquals(5, reviewing.choice().timeS());
        reviewing.moveBeats(1, true);
        reviewing.moveBeats(1, true);
        assertEquals(new ChosenBeats(8, 10), reviewing.beats());
        assertEquals(6, reviewing.choice().timeS());
        reviewing.moveBeats(-1, false);
        assertEquals(ChosenBeats.one(9), reviewing.beats());
        reviewing.movePlayers(1);
        assertEquals(Optional.of("Desk 1 inside"), reviewing.choice().player());
        reviewing.chooseBar(9);
        assertEquals(new Stretch(5, 7), reviewing.stretch().orElseThrow());
        assertEquals(5, reviewing.choice().timeS());
    }

    @Test
    void anotherTakeBeginsAnew() throws InterruptedException {
        Reviewing reviewing = reviewing();
        reviewing.moveBars(2, false);
        session.open(Draft.ofVideo(Path.of("other.mp4")));
        assertEquals(Optional.empty(), reviewing.judged());
        assertEquals(Optional.empty(), reviewing.bow());
        assertEquals(Optional.empty(), reviewing.stretch());
        reviewing.moveBeats(1, false);
        assertEquals(Choice.START, reviewing.choice());
    }

    @Test
    void whatIsSetRightIsTheChosenPlayersInTheChosenBeats() throws InterruptedException {
        Reviewing reviewing = reviewing();
        List<Correction> made = new ArrayList<>();
        ByHand byHand = new ByHand(reviewing, made::add);
        reviewing.chooseBeat(Optional.of("Desk 3 inside"), 9, false);
        byHand.set(StrokeKind.DOWN);
        reviewing.moveBeats(1, true);
        byHand.set(StrokeKind.UNSEEN);
        byHand.absent();
        waiting.until(() -> reviewing.bow().isPresent());
        BowLine bow = reviewing.bow().orElseThrow();
        Mark change = bow.nearest(Mark.Kind.CHANGE, 5.51).orElseThrow();
        byHand.move(change, 5.53);
        byHand.move(change, change.timeS());
        byHand.move(bow.nearest(Mark.Kind.BEAT, 5.51).orElseThrow(), 5.4);
        assertEquals(
                List.of(
                        new Correction.StrokeSet("Desk 3 inside", 5.5, 6, StrokeKind.DOWN),
                        new Correction.StrokeSet("Desk 3 inside", 5.5, 6.5, StrokeKind.UNSEEN),
                        new Correction.Absent("Desk 3 inside", 5, 7),
                        new Correction.ChangeMoved("Desk 3 inside", 5.5, 5.53),
                        new Correction.BeatMoved("3", 2, 5.5, 5.4)),
                made);
    }
}
