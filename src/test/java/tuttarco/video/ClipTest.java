package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.bytedeco.opencv.global.opencv_core;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.files.InputException;

class ClipTest {
    @TempDir
    Path folder;

    private static List<Double> evenly(int frames, double perS) {
        return IntStream.range(0, frames).mapToObj(i -> i / perS).toList();
    }

    private static List<Double> timesOf(Clip clip) {
        List<Double> times = new ArrayList<>();
        for (Optional<Frame> frame = clip.next(); frame.isPresent(); frame = clip.next()) {
            assertEquals(times.size(), frame.get().index());
            times.add(frame.get().timeS());
        }
        return times;
    }

    @Test
    void aVariableFrameRateKeepsItsTimes() throws Exception {
        List<Double> written = List.of(0.0, 0.033, 0.1, 0.12, 0.25, 0.3, 0.5);
        Path file = folder.resolve("uneven.mkv");
        TestClips.write(file, written, t -> TestClips.plain(64, 48, 100));
        try (Clip clip = Clip.open(file)) {
            List<Double> read = timesOf(clip);
            assertEquals(written.size(), read.size());
            for (int i = 0; i < read.size(); i++) {
                assertEquals(written.get(i), read.get(i), 0.0011, "frame " + i);
            }
            assertFalse(clip.facts().hasSound());
            assertEquals(Optional.empty(), clip.trouble());
        }
    }

    @Test
    void oddSizesKeepEveryPixel() throws Exception {
        // pictures one after another are a motion JPEG stream
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        for (int i = 0; i < 3; i++) {
            ImageIO.write(TestClips.plain(33, 17, 50), "jpeg", stream);
        }
        Path file = folder.resolve("odd.mjpeg");
        Files.write(file, stream.toByteArray());
        try (Clip clip = Clip.open(file)) {
            Frame frame = clip.next().orElseThrow();
            assertEquals(33, frame.grey().cols());
            assertEquals(17, frame.grey().rows());
            assertEquals(50, opencv_core.mean(frame.grey()).get(0), 1);
        }
    }

    /** ISO 14496-12, track header box: the display matrix of a phone held upright. */
    @ParameterizedTest
    @CsvSource({"90, 48, 64, 47, 0", "180, 64, 48, 63, 47", "270, 48, 64, 0, 63"})
    void aTurnedPictureIsSetUpright(int clockwiseDeg, int widthPx, int heightPx, int markX, int markY)
            throws Exception {
        BufferedImage marked = TestClips.plain(64, 48, 20);
        for (int y = 0; y < 16; y++) {
            for (int x = 0; x < 16; x++) {
                marked.getRaster().setSample(x, y, 0, 240);
            }
        }
        Path file = folder.resolve("turned.mp4");
        TestClips.write(file, evenly(3, 30), t -> marked);
        TestClips.turn(file, clockwiseDeg);
        try (Clip clip = Clip.open(file)) {
            assertEquals(widthPx, clip.facts().widthPx());
            assertEquals(heightPx, clip.facts().heightPx());
            Frame frame = clip.next().orElseThrow();
            int x = markX == 0 ? 4 : markX - 4;
            int y = markY == 0 ? 4 : markY - 4;
            assertTrue((frame.grey().ptr(y, x).get() & 0xff) > 180, "the bright corner stands where it should");
            assertTrue((frame.grey().ptr(heightPx - 1 - y, widthPx - 1 - x).get() & 0xff) < 80);
        }
    }

    /** Seconds since 1904 in the movie's header (ISO/IEC 14496-12, mvhd; from memory); 2082844800 of them until 1970. */
    @ParameterizedTest
    @CsvSource({"3846857400, 2025-11-24T19:30:00Z", "0,", "2082844800,", "2398377600,"})
    void whenAClipWasMadeIsReadUnlessItsClockWasNotSet(long since1904S, Instant made) throws Exception {
        Path file = folder.resolve("made.mp4");
        TestClips.write(file, evenly(10, 10), t -> TestClips.plain(64, 48, 90));
        byte[] bytes = Files.readAllBytes(file);
        int mvhd = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("mvhd");
        int untilTime = 8;
        ByteBuffer.wrap(bytes).putInt(mvhd + untilTime, (int) since1904S);
        Files.write(file, bytes);
        try (Clip clip = Clip.open(file)) {
            assertEquals(Optional.ofNullable(made), clip.facts().made());
        }
    }

    @Test
    void aCutOffTailIsReadAsFarAsItGoesAndSaid() throws Exception {
        Path whole = folder.resolve("whole.mkv");
        TestClips.write(whole, evenly(90, 30), t -> noise(64, 48, t));
        byte[] bytes = Files.readAllBytes(whole);
        Path cut = folder.resolve("cut.mkv");
        Files.write(cut, Arrays.copyOf(bytes, bytes.length / 2));
        try (Clip clip = Clip.open(cut)) {
            int frames = timesOf(clip).size();
            assertTrue(frames > 20 && frames < 70, frames + " frames");
            String trouble = clip.trouble().orElseThrow();
            assertTrue(trouble.startsWith("cut.mkv could be read up to 1."), trouble);
        }
    }

    private static BufferedImage noise(int widthPx, int heightPx, double timeS) {
        java.util.Random random = new java.util.Random(Double.doubleToLongBits(timeS));
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                image.getRaster().setSample(x, y, 0, random.nextInt(256));
            }
        }
        return image;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not a video at all",
                "ffconcat version 1.0\nfile '/etc/hostname'\n",
                "#EXTM3U\n#EXT-X-TARGETDURATION:1\n#EXTINF:1,\nother.ts\n#EXT-X-ENDLIST\n"
            })
    void whatIsNoVideoIsRefusedInOneSentence(String content) throws Exception {
        Path file = folder.resolve("clip.mp4");
        Files.writeString(file, content);
        InputException e = assertThrows(InputException.class, () -> Clip.open(file));
        assertEquals(
                "clip.mp4 can't be read as a video; it may be damaged, cut off while copying, or another kind of file.",
                e.getMessage());
    }

    @Test
    void aMissingFileIsSaid() {
        InputException e = assertThrows(InputException.class, () -> Clip.open(folder.resolve("none.mp4")));
        assertTrue(e.getMessage().startsWith("There is no readable video at "), e.getMessage());
    }
}
