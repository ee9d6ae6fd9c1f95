package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.bow.Instrument;
import tuttarco.cli.TinyTake;
import tuttarco.review.SeatsModel.Pick;
import tuttarco.seats.Player;
import tuttarco.seats.Proposal;
import tuttarco.seats.SeatBox;

/** In a clip of 320 x 160 pixels. */
class SeatsModelTest {
    private static final SeatBox DOUBT = new SeatBox(220, 60, 90, 60);

    @TempDir
    Path folder;

    private final WindowThread window = new WindowThread();
    private final Background background = new Background(window);
    private final Session session = new Session(background, new TakeKeeping());
    private final SeatsModel model = new SeatsModel(session);

    @BeforeEach
    void open() throws Exception {
        Path video = folder.resolve("clip.mkv");
        TinyTake.writeClip(video, 12, 30);
        session.open(Draft.ofVideo(video));
        model.look();
        window.until(() -> model.still().isPresent());
    }

    @AfterEach
    void close() {
        background.close();
    }

    private void propose() {
        BufferedImage picture = new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY);
        List<Player> players = new Seats(List.of(), List.of())
                .added(new SeatBox(0, 60, 90, 60), Instrument.VIOLIN)
                .added(new SeatBox(100, 60, 90, 60), Instrument.VIOLIN)
                .players();
        model.propose(new Proposal(players, List.of(DOUBT), picture, List.of()));
    }

    private List<Player> players() {
        return session.draft().orElseThrow().players();
    }

    @Test
    void theFirstPictureIsShownAndAnotherWhenAskedFor() throws Exception {
        assertEquals(0, model.still().orElseThrow().timeS());
        for (int i = 1; i <= 10; i++) {
            model.look(i / 30.0);
        }
        window.until(() -> model.still().orElseThrow().timeS() == 10 / 30.0);
        assertEquals(320, model.still().orElseThrow().picture().getWidth());
    }

    @Test
    void aDoubtfulSeatIsNoPlayerUntilItIsTaken() {
        propose();
        assertEquals(2, players().size());
        assertTrue(session.message().sentence().contains("1 more may bow or not"));
        model.choose(new Pick.Doubt(0));
        model.takeChosen();
        assertEquals(3, players().size());
        assertEquals(new Pick.Sitting(2), model.pick());
        model.undo();
        assertEquals(2, players().size());
        assertEquals(List.of(DOUBT), model.seats().doubtful());
        model.redo();
        assertEquals(DOUBT, players().get(2).seat());
    }

    @Test
    void whatWasFoundIsUndoneInOneStep() {
        model.add(new SeatBox(10, 10, 70, 70));
        propose();
        model.undo();
        assertEquals(
                List.of(new SeatBox(10, 10, 70, 70)),
                players().stream().map(Player::seat).toList());
    }

    @Test
    void smallStepsAreUndoneAtOnceButNotAcrossAnotherChange() {
        propose();
        model.choose(new Pick.Sitting(0));
        model.nudge(3, 0);
        model.nudge(3, 0);
        model.lead(false);
        model.nudge(5, 0);
        assertEquals(11, players().get(0).seat().xPx());
        model.undo();
        assertEquals(6, players().get(0).seat().xPx());
        model.undo();
        model.undo();
        assertEquals(0, players().get(0).seat().xPx());
    }

    @Test
    void clickedInOrderTheyAreNumberedWithTheLast() {
        propose();
        model.takeAll();
        model.startNumbering();
        model.numberNext(2);
        model.numberNext(2);
        model.numberNext(0);
        assertEquals(Optional.of(List.of(2, 0)), model.numbering());
        assertEquals(DOUBT, players().get(2).seat());
        model.numberNext(1);
        assertEquals(Optional.empty(), model.numbering());
        assertEquals(DOUBT, players().get(0).seat());
        assertTrue(players().get(0).leader());
        model.undo();
        assertEquals(DOUBT, players().get(2).seat());
    }

    @Test
    void ofSeatsOverEachOtherTheNearestIsMeantAndTheChosenStays() {
        model.add(new SeatBox(0, 0, 100, 100));
        model.add(new SeatBox(40, 0, 100, 100));
        model.choose(new Pick.Nobody());
        assertEquals(new Pick.Sitting(0), model.at(60, 50));
        assertEquals(new Pick.Sitting(1), model.at(80, 50));
        model.choose(new Pick.Sitting(0));
        assertEquals(new Pick.Sitting(0), model.at(80, 50));
        assertEquals(new Pick.Nobody(), model.at(10, 150));
    }

    @Test
    void badStatesAreToldOrPrevented() {
        assertTrue(model.troubles().get(0).startsWith("Nobody sits here yet"));
        propose();
        assertEquals(List.of(), model.troubles());
        model.choose(new Pick.Sitting(0));
        model.name("Desk 1 inside");
        assertEquals("Desk 1 outside", players().get(0).label());
        assertEquals(Message.Kind.TROUBLE, session.message().kind());
        model.name(" \t");
        assertEquals("Desk 1 outside", players().get(0).label());
        model.lead(false);
        assertTrue(model.troubles().get(0).startsWith("Nobody leads"));
        model.place(new SeatBox(0, 0, 61, 60));
        assertTrue(model.troubles().get(1).contains("Desk 1 outside"));
        model.place(new SeatBox(0, 0, 62, 60));
        assertEquals(1, model.troubles().size());
    }

    @Test
    void tabGoesThroughPlayersThenDoubtsThenOut() {
        propose();
        for (Pick expected : List.of(new Pick.Sitting(0), new Pick.Sitting(1), new Pick.Doubt(0), new Pick.Nobody())) {
            model.chooseNext(1);
            assertEquals(expected, model.pick());
        }
        model.chooseNext(-1);
        assertEquals(new Pick.Doubt(0), model.pick());
    }

    @Test
    void anotherTakeHasAPastOfItsOwn() {
        propose();
        session.open(Draft.ofVideo(folder.resolve("other.mkv")));
        assertFalse(model.canUndo());
        assertEquals(List.of(), model.seats().players());
        assertEquals(Optional.empty(), model.still());
    }
}
