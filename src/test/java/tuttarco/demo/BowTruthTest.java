package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.Stroke;

class BowTruthTest {
    private static Scene scene(String name) {
        return SceneCatalogue.all().stream()
                .map(SceneCatalogue.Listed::scene)
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** What the truth says of the bow is what the figure's bow hand does. */
    @Test
    void placesAndLengthsAreThoseOfTheDrawnBow() {
        Performer performer = Layout.of(scene("plain-violin")).performers().get(0);
        List<BowTruth> bows = BowTruth.of(performer);
        assertEquals(15, bows.size());
        for (BowTruth bow : bows) {
            assertEquals(bow.direction() == BowDirection.DOWN, bow.to() > bow.from());
            Vec start = Stance.playing(performer.instrument(), bow.from(), 0, 0, Vec.NONE, 0)
                    .grip();
            Vec end = Stance.playing(performer.instrument(), bow.to(), 0, 0, Vec.NONE, 0)
                    .grip();
            double shouldersM = 2 * Posture.HALF_SHOULDERS_M;
            assertEquals(end.minus(start).length() / shouldersM, bow.lengthShoulderWidths(), 1e-9);
        }
    }

    @Test
    void strokesAreThoseOfTheTruthWhereNobodyHidesThem() {
        Scene scene = scene("rests-retakes");
        Layout layout = Layout.of(scene);
        List<Stroke> strokes = Truth.of(layout.performers().get(0), new Sight(scene, layout)).stream()
                .filter(s -> s.kind().direction().isPresent())
                .toList();
        List<BowTruth> bows = BowTruth.of(layout.performers().get(0));
        assertTrue(strokes.size() > 5);
        assertEquals(strokes.size(), bows.size());
        for (int i = 0; i < strokes.size(); i++) {
            assertEquals(strokes.get(i).startS(), bows.get(i).startS(), 1e-9);
            assertEquals(strokes.get(i).endS(), bows.get(i).endS(), 1e-9);
            assertEquals(
                    strokes.get(i).kind().direction().orElseThrow(), bows.get(i).direction());
        }
    }
}
