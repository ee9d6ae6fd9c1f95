package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.video.Shot.View;

/** One view has stripes across, the other stripes along; what happens when is known in closed form. */
class ShotsTest {
    private static final int SIDE_PX = 64;
    private static final int FRAMES_PER_S = 25;

    @TempDir
    Path folder;

    /** Luma at a place (shares of the picture) and a time. */
    private interface Scene {
        double luma(double x, double y, double timeS);
    }

    private static double across(double x) {
        return 120 + 60 * Math.sin(4 * Math.PI * x);
    }

    private static double along(double y) {
        return across(y);
    }

    private List<Shot> shots(double lengthS, Scene scene) throws Exception {
        return shots(lengthS, FRAMES_PER_S, scene);
    }

    private List<Shot> shots(double lengthS, int framesPerS, Scene scene) throws Exception {
        List<Double> timesS = IntStream.range(0, (int) (lengthS * framesPerS))
                .mapToObj(i -> (double) i / framesPerS)
                .toList();
        return shots(timesS, scene);
    }

    private List<Shot> shots(List<Double> timesS, Scene scene) throws Exception {
        Path file = folder.resolve("clip.mkv");
        TestClips.write(file, timesS, timeS -> picture(scene, timeS));
        List<Shot> shots = new ArrayList<>();
        try (Clip clip = Clip.open(file);
                Shots read = new Shots(clip)) {
            int count = 0;
            for (Optional<Frame> frame = read.next(); frame.isPresent(); frame = read.next()) {
                assertEquals(count, frame.get().index());
                double timeS = timesS.get(count);
                assertEquals(timeS, frame.get().timeS(), 0.0011);
                int luma = frame.get().picture().getRaster().getSample(5, 7, 0);
                assertEquals(luma(scene, 5, 7, timeS), luma, "its own picture, frame " + count);
                if (shots.isEmpty()
                        || !shots.get(shots.size() - 1).equals(frame.get().shot())) {
                    shots.add(frame.get().shot());
                }
                count++;
            }
            assertEquals(timesS.size(), count);
        }
        return shots;
    }

    private static BufferedImage picture(Scene scene, double timeS) {
        BufferedImage image = new BufferedImage(SIDE_PX, SIDE_PX, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < SIDE_PX; y++) {
            for (int x = 0; x < SIDE_PX; x++) {
                image.getRaster().setSample(x, y, 0, luma(scene, x, y, timeS));
            }
        }
        return image;
    }

    /** Mean over the pixel, so that what moves by less than a pixel shows. */
    private static int luma(Scene scene, int x, int y, double timeS) {
        double sum = 0;
        for (int i = 0; i < 16; i++) {
            sum += scene.luma((x + (i + 0.5) / 16) / SIDE_PX, (y + (5 * i % 16 + 0.5) / 16) / SIDE_PX, timeS);
        }
        return (int) Math.round(sum / 16);
    }

    private static void assertShots(List<View> views, List<Double> startsS, double withinS, List<Shot> shots) {
        assertEquals(views, shots.stream().map(Shot::view).toList());
        for (int i = 0; i < startsS.size(); i++) {
            assertEquals(startsS.get(i), shots.get(i).startS(), withinS, shots.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 25, 60})
    void aCutToAnotherViewAndBackIsFoundAtItsFrame(int framesPerS) throws Exception {
        assertShots(
                List.of(View.FIRST, View.OTHER, View.FIRST),
                List.of(0.0, 1.0, 2.0),
                0.0011,
                shots(3, framesPerS, (x, y, t) -> t > 0.99 && t < 1.99 ? along(y) : across(x)));
    }

    @Test
    void aCutJustBeforeTheEndIsFound() throws Exception {
        assertShots(
                List.of(View.FIRST, View.OTHER),
                List.of(0.0, 1.92),
                0.0011,
                shots(2, (x, y, t) -> t > 1.91 ? along(y) : across(x)));
    }

    /** Frames of which less than a twentieth is mixed, or which come before it is clear, count as unmixed. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.5})
    void aDissolveIsFoundWithItsEnds(double lengthS) throws Exception {
        assertShots(
                List.of(View.FIRST, View.DISSOLVE, View.OTHER),
                List.of(0.0, 1.0, 1 + lengthS),
                0.25 * lengthS,
                shots(4, (x, y, t) -> {
                    double share = Math.max(0, Math.min(1, (t - 1) / lengthS));
                    return (1 - share) * across(x) + share * along(y);
                }));
    }

    /** A square of two by two cells. */
    private static double square(double x, double y, double left) {
        return across(x) + (x >= left && x < left + 0.125 && y >= 0.5 && y < 0.625 ? 70 : 0);
    }

    @Test
    void aThingThatIsElsewhereAllAtOnceIsACutWithinTheView() throws Exception {
        assertShots(
                List.of(View.FIRST, View.FIRST),
                List.of(0.0, 1.0),
                0.0011,
                shots(2, (x, y, t) -> square(x, y, t < 0.99 ? 0.1 : 0.7)));
    }

    private void assertOneShot(Scene scene) throws Exception {
        assertEquals(List.of(Shot.FIRST), shots(3, scene));
    }

    @Test
    void whatMovesIsNoCut() throws Exception {
        assertOneShot((x, y, t) -> across(x));
        assertOneShot((x, y, t) -> square(x, y, 0.2 + 0.25 * t));
        assertOneShot((x, y, t) -> square(x, y, 0.45 + 0.4 * Math.sin(8 * t)));
    }

    /** A wall of bricks without a pattern, each in its own shade. */
    private static double wall(double x, double y) {
        long brick = 31 * (long) Math.floor(9 * x) + 17 * (long) Math.floor(7 * y);
        return 60 + Math.floorMod((brick * 2654435761L) >> 7, 140);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.02, 0.04, 0.08, 0.3, 1})
    void aCameraThatPansOrZoomsIsNoCut(double picturesPerS) throws Exception {
        assertOneShot((x, y, t) -> wall(x + picturesPerS * t, y));
        assertOneShot((x, y, t) -> wall(x, y + picturesPerS * t));
        assertOneShot((x, y, t) ->
                wall(0.5 + (x - 0.5) * Math.exp(-picturesPerS * t), 0.5 + (y - 0.5) * Math.exp(-picturesPerS * t)));
    }

    @Test
    void lightThatFlickersOrDimsIsNoCut() throws Exception {
        assertOneShot((x, y, t) -> (0.6 + 0.3 * Math.sin(20 * t)) * across(x));
        assertOneShot((x, y, t) -> (1 - 0.25 * t) * across(x));
        assertOneShot((x, y, t) -> t < 1.5 ? across(x) : 0.3 * across(x));
    }

    /** Light from a side for two frames. */
    @Test
    void aFlashIsNoCut() throws Exception {
        assertOneShot((x, y, t) -> t > 1.19 && t < 1.27 ? Math.min(255, 0.5 * across(x) + 160 * y) : across(x));
    }

    /** The quick square takes three steps at once where frames are missing. */
    @Test
    void missingFramesAreNoCut() throws Exception {
        List<Double> timesS = IntStream.range(0, 75)
                .filter(i -> i % 20 < 18)
                .mapToObj(i -> i / 25.0)
                .toList();
        assertEquals(List.of(Shot.FIRST), shots(timesS, (x, y, t) -> square(x, y, 0.2 + 0.2 * t)));
    }

    @Test
    void aClipThatStartsInBlackStartsWithWhatIsSeenFirst() throws Exception {
        List<Shot> shots = shots(4, (x, y, t) -> t < 0.99 ? 16 : t < 2.49 ? across(x) : along(y));
        assertEquals(View.OTHER, shots.get(shots.size() - 1).view());
        assertEquals(2.52, shots.get(shots.size() - 1).startS(), 0.04);
        assertTrue(
                shots.stream().filter(s -> s.startS() < 2.4).allMatch(s -> s.view() == View.FIRST), shots.toString());
    }

    @Test
    void aClipOfOneFrameIsOneShot() throws Exception {
        assertEquals(List.of(Shot.FIRST), shots(0.05, (x, y, t) -> across(x)));
    }
}
