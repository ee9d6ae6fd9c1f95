package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.files.InputException;

class ClipPicturesTest {
    private static final int PICTURES = 200;

    /** Presentation times are kept to a 90000th of a second by the writer, to a millisecond by Matroska. */
    private static final double TICK_S = 0.0011;

    @TempDir
    Path folder;

    private Path clip(List<Double> timesS) throws Exception {
        return NumberedClip.write(folder.resolve("numbered.mp4"), timesS, Optional.empty(), 0);
    }

    private static List<Double> uneven(int pictures) {
        Random random = new Random(5);
        return IntStream.range(0, pictures)
                .mapToObj(i -> i == 0 ? 0.0 : (i + 0.9 * (random.nextDouble() - 0.5)) / 30)
                .toList();
    }

    private static int number(ClipPictures pictures) {
        return NumberedClip.numberIn(drawn(pictures, NumberedClip.WIDTH_PX, NumberedClip.HEIGHT_PX));
    }

    private static BufferedImage drawn(ClipPictures pictures, int widthPx, int heightPx) {
        BufferedImage picture = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        pictures.draw(picture);
        return picture;
    }

    private static List<Double> timesOf(Path file) throws InputException {
        List<Double> times = new ArrayList<>();
        try (Clip clip = Clip.open(file)) {
            for (Optional<Frame> frame = clip.next(); frame.isPresent(); frame = clip.next()) {
                times.add(frame.get().timeS());
            }
        }
        return times;
    }

    /** What was read from a picture is drawn over it, so both must mean the same one by a time. */
    @Test
    void theTimesAreThoseOfTheClipToTheLastDigit() throws Exception {
        Path file = clip(uneven(PICTURES));
        List<Double> expected = timesOf(file);
        assertEquals(PICTURES, expected.size());
        try (ClipPictures pictures = ClipPictures.open(file)) {
            for (int i = 0; i < PICTURES; i++) {
                assertEquals(expected.get(i), pictures.timeS(), 0);
                assertEquals(i, number(pictures));
                assertEquals(i < PICTURES - 1, pictures.next());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void seekingFindsThePictureThatIsSeenThen(boolean steady) throws Exception {
        List<Double> times = steady ? NumberedClip.evenly(PICTURES, 30) : uneven(PICTURES);
        Random random = new Random(1);
        try (ClipPictures pictures = ClipPictures.open(clip(times))) {
            for (int seek = 0; seek < 60; seek++) {
                int expected = random.nextInt(PICTURES);
                double fromS = times.get(expected) + TICK_S;
                double toS = expected == PICTURES - 1 ? fromS + 5 : times.get(expected + 1) - TICK_S;
                pictures.seek(fromS + random.nextDouble() * (toS - fromS));
                assertEquals(expected, number(pictures), "seek " + seek);
                assertEquals(times.get(expected), pictures.timeS(), TICK_S);
            }
            pictures.seek(-3);
            assertEquals(0, number(pictures));
        }
    }

    @Test
    void aPicturesOwnTimeFindsIt() throws Exception {
        Path file = clip(uneven(PICTURES));
        List<Double> times = timesOf(file);
        try (ClipPictures pictures = ClipPictures.open(file)) {
            for (int i = PICTURES - 1; i >= 0; i -= 7) {
                pictures.seek(times.get(i));
                assertEquals(i, number(pictures));
            }
        }
    }

    @Test
    void stepsBackAreOnePictureEachDownToTheFirst() throws Exception {
        try (ClipPictures pictures = ClipPictures.open(clip(uneven(PICTURES)))) {
            pictures.seek(1e6);
            for (int i = PICTURES - 1; i > 0; i--) {
                assertEquals(i, number(pictures));
                assertTrue(pictures.previous(), "before " + i);
            }
            assertEquals(0, number(pictures));
            assertFalse(pictures.previous());
            assertEquals(0, number(pictures));
            assertTrue(pictures.next());
            assertEquals(1, number(pictures));
        }
    }

    /** Pictures that lean on later ones come out of a file in another order than they are seen in. */
    @Test
    void picturesThatLeanOnLaterOnesAreFoundToo() throws Exception {
        String clips = System.getProperty("tuttarco.clips", "");
        assumeTrue(!clips.isBlank(), "this needs -Dtuttarco.clips=DIR");
        for (String name : List.of("violin-room.mp4", "cello-stage.mp4")) {
            Path file = Path.of(clips).resolve(name);
            List<Double> times = timesOf(file);
            List<Integer> hashes = new ArrayList<>();
            try (ClipPictures pictures = ClipPictures.open(file)) {
                for (boolean more = true; more; more = pictures.next()) {
                    assertEquals(times.get(hashes.size()), pictures.timeS(), 0);
                    hashes.add(hash(pictures));
                }
                assertEquals(times.size(), hashes.size(), name);
                Random random = new Random(2);
                for (int seek = 0; seek < 50; seek++) {
                    int expected = random.nextInt(times.size());
                    pictures.seek(times.get(expected) + 0.01);
                    assertEquals(times.get(expected), pictures.timeS(), 0, name + ", picture " + expected);
                    assertEquals(hashes.get(expected), hash(pictures), name + ", picture " + expected);
                }
            }
        }
    }

    private static int hash(ClipPictures pictures) {
        BufferedImage drawn = drawn(pictures, 64, 64);
        return Arrays.hashCode(drawn.getRGB(0, 0, 64, 64, null, 0, 64));
    }

    @ParameterizedTest
    @CsvSource({"80, 48", "320, 192", "101, 61"})
    void itIsDrawnAsLargeAsWanted(int widthPx, int heightPx) throws Exception {
        try (ClipPictures pictures = ClipPictures.open(clip(NumberedClip.evenly(100, 30)))) {
            pictures.seek(85 / 30.0 + 0.001);
            assertEquals(85, NumberedClip.numberIn(drawn(pictures, widthPx, heightPx)));
        }
    }

    @Test
    void coloursComeBack() throws Exception {
        Path file = folder.resolve("colours.mp4");
        BufferedImage painted = new BufferedImage(96, 32, BufferedImage.TYPE_3BYTE_BGR);
        List<Color> colours = List.of(new Color(200, 40, 40), new Color(40, 180, 60), new Color(50, 60, 190));
        for (int x = 0; x < 96; x++) {
            for (int y = 0; y < 32; y++) {
                painted.setRGB(x, y, colours.get(x / 32).getRGB());
            }
        }
        try (ClipWriter writer = ClipWriter.open(file, 96, 32, 30, 2_000_000, Optional.empty())) {
            for (int i = 0; i < 5; i++) {
                writer.frame(i / 30.0, painted);
            }
            writer.finish();
        }
        try (ClipPictures pictures = ClipPictures.open(file)) {
            BufferedImage drawn = drawn(pictures, 96, 32);
            for (int i = 0; i < 3; i++) {
                Color seen = new Color(drawn.getRGB(32 * i + 16, 16));
                assertEquals(colours.get(i).getRed(), seen.getRed(), 8, "red of " + i);
                assertEquals(colours.get(i).getGreen(), seen.getGreen(), 8, "green of " + i);
                assertEquals(colours.get(i).getBlue(), seen.getBlue(), 8, "blue of " + i);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"90, 48, 64, 43, 4", "180, 64, 48, 59, 43", "270, 48, 64, 4, 59"})
    void aTurnedPictureIsDrawnUpright(int clockwiseDeg, int widthPx, int heightPx, int markX, int markY)
            throws Exception {
        BufferedImage marked = TestClips.plain(64, 48, 20);
        for (int y = 0; y < 16; y++) {
            for (int x = 0; x < 16; x++) {
                marked.getRaster().setSample(x, y, 0, 240);
            }
        }
        Path file = folder.resolve("turned.mp4");
        TestClips.write(file, NumberedClip.evenly(3, 30), t -> marked);
        TestClips.turn(file, clockwiseDeg);
        try (ClipPictures pictures = ClipPictures.open(file)) {
            assertEquals(widthPx, pictures.facts().widthPx());
            BufferedImage drawn = drawn(pictures, widthPx, heightPx);
            assertTrue(new Color(drawn.getRGB(markX, markY)).getGreen() > 180);
            assertTrue(new Color(drawn.getRGB(widthPx - 1 - markX, heightPx - 1 - markY)).getGreen() < 80);
        }
    }

    @Test
    void aCutOffTailIsReadAsFarAsItGoesAndSaid() throws Exception {
        Path whole = folder.resolve("whole.mkv");
        TestClips.write(whole, NumberedClip.evenly(90, 30), t -> NumberedClip.picture((int) Math.round(t * 30)));
        byte[] bytes = Files.readAllBytes(whole);
        Path cut = folder.resolve("cut.mkv");
        Files.write(cut, Arrays.copyOf(bytes, bytes.length / 2));
        List<Double> times = timesOf(cut);
        try (ClipPictures pictures = ClipPictures.open(cut)) {
            assertEquals(Optional.empty(), pictures.trouble());
            pictures.seek(2.9);
            assertEquals(times.get(times.size() - 1), pictures.timeS(), 0);
            assertFalse(pictures.next());
            String trouble = pictures.trouble().orElseThrow();
            assertTrue(trouble.startsWith("cut.mkv could be read up to 1."), trouble);
            pictures.seek(0.5);
            assertEquals(0.5, pictures.timeS(), TICK_S);
        }
    }

    /** Pictures one after another, a motion JPEG stream, have no index. */
    @Test
    void aClipWithoutAnIndexIsSoughtInToo() throws Exception {
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        for (int i = 0; i < 60; i++) {
            ImageIO.write(NumberedClip.picture(i), "jpeg", stream);
        }
        Path file = folder.resolve("numbered.mjpeg");
        Files.write(file, stream.toByteArray());
        List<Double> times = timesOf(file);
        assertEquals(60, times.size());
        try (ClipPictures pictures = ClipPictures.open(file)) {
            for (int expected : new int[] {50, 3, 59, 30, 0}) {
                pictures.seek(times.get(expected) + 0.001);
                assertEquals(expected, number(pictures));
            }
        }
    }

    @Test
    void whatHoldsNoPictureIsRefusedInOneSentence() throws Exception {
        Path file = folder.resolve("clip.mp4");
        Files.writeString(file, "not a video at all");
        assertThrows(InputException.class, () -> ClipPictures.open(file));
    }
}
