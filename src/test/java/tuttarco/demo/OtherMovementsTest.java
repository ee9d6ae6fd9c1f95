package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.demo.SceneCatalogue.Expected;
import tuttarco.demo.SceneCatalogue.Listed;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** What arms do other than bowing. */
class OtherMovementsTest {
    /** Grey levels beyond which noise (standard deviation 2) does not reach. */
    private static final int BEYOND_NOISE = 40;

    static Stream<Listed> withoutBowing() {
        return SceneCatalogue.all().stream().filter(s -> s.expected() == Expected.NO_STROKES);
    }

    @Test
    void thereAreScenesWithoutBowing() {
        assertEquals(
                List.of(
                        "pizzicato",
                        "page-turns",
                        "idle",
                        "applause",
                        "pizzicato-low",
                        "applause-taps",
                        "pizzicato-turned",
                        "page-turns-left",
                        "idle-turned",
                        "applause-turned"),
                withoutBowing().map(Listed::name).toList());
    }

    @ParameterizedTest
    @MethodSource("withoutBowing")
    void theirTruthHasNoStroke(Listed listed) {
        Layout layout = Layout.of(listed.scene());
        Sight sight = new Sight(listed.scene(), layout);
        assertEquals(4, layout.performers().size());
        for (Performer performer : layout.performers()) {
            List<Stroke> strokes = Truth.of(performer, sight);
            assertTrue(strokes.stream().anyMatch(s -> s.kind() == StrokeKind.STILL), performer.label());
            assertTrue(
                    strokes.stream().allMatch(s -> s.kind() == StrokeKind.STILL || s.kind() == StrokeKind.UNSEEN),
                    performer.label() + ": " + strokes);
        }
    }

    /** They would be worth nothing if nobody moved: at least two hands go farther than a body sways. */
    @ParameterizedTest
    @MethodSource("withoutBowing")
    void theirArmsMove(Listed listed) {
        long moving = Layout.of(listed.scene()).performers().stream()
                .filter(p -> reachM(p) > 0.05)
                .count();
        assertTrue(moving >= 2, "moving hands: " + moving);
        FramePainter painter = new FramePainter(listed.scene(), Layout.of(listed.scene()));
        BufferedImage before = painter.frame(3.9);
        assertTrue(changedPx(before, painter.frame(4.12)) > 100);
    }

    @Test
    void aTremoloChangesTenTimesASecondAndMoreAndClaimsNoDirection() {
        Scene scene = SceneFixture.listed("tremolo").scene();
        Layout layout = Layout.of(scene);
        Performer performer = layout.performers().get(0);
        List<Stroke> tremolo = Truth.of(performer, new Sight(scene, layout)).stream()
                .filter(s -> s.kind() == StrokeKind.TREMOLO)
                .toList();
        double barS = 4 * 60 / scene.tempoBpm();
        assertEquals(2, tremolo.size());
        assertEquals(barS, tremolo.get(0).lengthS(), 0.06);
        assertEquals(barS, tremolo.get(1).lengthS(), 0.06);
        assertTrue(tremolo.stream().allMatch(s -> s.kind().direction().isEmpty()));
        long strokes = performer.motion().travels().stream()
                .filter(t -> t.kind() == StrokeKind.TREMOLO)
                .count();
        assertTrue(strokes / (2 * barS) >= 10, strokes + " strokes in two bars");
    }

    /** Largest distance of a bow hand from where it is at the start. */
    private static double reachM(Performer performer) {
        double farthest = 0;
        Vec start = performer.figure(0).grip();
        for (double timeS = 0; timeS < 12; timeS += 0.1) {
            farthest = Math.max(
                    farthest, performer.figure(timeS).grip().minus(start).length());
        }
        return farthest;
    }

    private static int changedPx(BufferedImage before, BufferedImage after) {
        byte[] a = ((DataBufferByte) before.getRaster().getDataBuffer()).getData();
        byte[] b = ((DataBufferByte) after.getRaster().getDataBuffer()).getData();
        int changed = 0;
        for (int i = 0; i < a.length; i += 3) {
            changed += Math.abs((a[i] & 0xFF) - (b[i] & 0xFF)) > BEYOND_NOISE ? 1 : 0;
        }
        return changed;
    }
}
