package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.bow.Instrument;
import tuttarco.pose.PackedModel;
import tuttarco.seating.SeatFinder;
import tuttarco.seats.Facing;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Player;
import tuttarco.seats.Proposal;
import tuttarco.seats.SeatBox;
import tuttarco.take.Bowing;
import tuttarco.take.TakeFile;

/** Seats found in a rendered clip, against where the players were drawn: the source of truth is our own renderer. */
class RenderedSeatsTest {
    @TempDir
    Path folder;

    @Test
    void whoBowsIsFoundWhereDrawnAndWhoRestsIsNot() throws Exception {
        SeatFinder finder = new SeatFinder(PackedModel.orSkip());
        Cast bows = new Cast(Instrument.VIOLIN, Facing.CAMERA);
        Cast rests = new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Does(Activity.IDLE, 1, 3));
        Scene scene = new Scene(
                "three",
                "three",
                List.of(bows, rests, bows),
                Passage.of("study", "d1 u1 d1 u1 | d1 u1 d1 u1 | d1 u1 d1 u1"),
                120,
                Bowing.UNIFIED,
                Picture.of(640, 320),
                Conditions.EASY,
                Scene.Sound.NONE,
                7);
        Path take = Rendering.write(scene, folder, percent -> {});
        Path video = TakeFile.read(take).video();

        Proposal found = finder.in(video, Instrument.VIOLIN, LeaderSide.LEFT, (timeS, lengthS) -> {})
                .orElseThrow();

        List<Player> drawn = Layout.of(scene).players();
        assertEquals(2, found.players().size(), found.players().toString());
        assertHolds(found.players().get(0).seat(), drawn.get(0).seat());
        assertHolds(found.players().get(1).seat(), drawn.get(2).seat());
        assertEquals(640, found.picture().getWidth());
    }

    /** The drawn seat's upper half has its middle on the chest, which lies well inside the found one. */
    private static void assertHolds(SeatBox found, SeatBox drawn) {
        double xPx = drawn.xPx() + drawn.widthPx() / 2.0;
        double yPx = drawn.yPx() + drawn.heightPx() / 4.0;
        assertTrue(
                Math.abs(xPx - found.xPx() - found.widthPx() / 2.0) < found.widthPx() / 4.0
                        && yPx > found.yPx()
                        && yPx < found.yPx() + found.heightPx(),
                found + " for " + drawn);
    }
}
