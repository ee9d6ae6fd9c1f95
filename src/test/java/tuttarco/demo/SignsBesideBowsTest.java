package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.chart.BowSide;
import tuttarco.chart.PlayerSign;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.Hand;

/** How much of the bows the players' signs hide, by where our own renderer draws the bows; nothing is rendered for it. */
class SignsBesideBowsTest {
    private static final double EVERY_S = 0.2;

    /** Places looked at along a bow. */
    private static final int PLACES = 20;

    /** Required: of all bows so much of the length is hidden at most. */
    private static final double MOST_HIDDEN = 0.01;

    static Stream<Scene> scenes() {
        Scene section = SceneFixture.listed("section-unified").scene();
        return Stream.of(
                section,
                section.with(section.picture().flipped()),
                SceneFixture.listed("section-sixty").scene(),
                SceneFixture.listed("section-bow").scene(),
                SceneFixture.listed("left-handed").scene(),
                SceneFixture.listed("violin-away-right").scene(),
                SceneFixture.listed("plain-cello").scene());
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void hardlyAnyOfABowIsHidden(Scene scene) {
        Layout layout = Layout.of(scene);
        List<Rectangle2D> cells = new ArrayList<>();
        for (int i = 0; i < layout.players().size(); i++) {
            cells.add(cell(layout.players().get(i), layout.performers().get(i), scene.picture()));
        }
        int hidden = 0;
        int all = 0;
        for (double timeS = EVERY_S / 2; timeS < scene.durationS(); timeS += EVERY_S) {
            for (Performer performer : layout.performers()) {
                for (Point2D place : bow(performer, layout.camera(), scene.picture(), timeS)) {
                    all++;
                    hidden += cells.stream().anyMatch(cell -> cell.contains(place)) ? 1 : 0;
                }
            }
        }
        assertTrue(all > 1000);
        assertTrue(hidden <= MOST_HIDDEN * all, hidden + " of " + all);
    }

    /** As it is drawn on the picture at its own size. */
    private static Rectangle2D cell(Player player, Performer performer, Picture picture) {
        SeatBox seat = player.seat();
        Hand hand = performer.cast().leftHanded() == picture.mirrored() ? Hand.RIGHT : Hand.LEFT;
        return PlayerSign.cell(
                new Rectangle2D.Double(seat.xPx(), seat.yPx(), seat.widthPx(), seat.heightPx()),
                BowSide.of(Optional.of(hand), player.facing()));
    }

    private static List<Point2D> bow(Performer performer, Camera camera, Picture picture, double timeS) {
        Figure figure = performer.figure(timeS);
        Axes axes = performer.axes(timeS);
        List<Point2D> places = new ArrayList<>();
        for (int i = 0; i <= PLACES; i++) {
            Camera.Spot spot = camera.see(axes.room(figure.frog().towards(figure.tip(), (double) i / PLACES)));
            double x = picture.mirrored() ? picture.widthPx() - spot.xPx() : spot.xPx();
            places.add(new Point2D.Double(x, spot.yPx()));
        }
        return places;
    }
}
