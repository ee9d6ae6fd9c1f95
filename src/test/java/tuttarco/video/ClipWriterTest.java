package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.FloatBuffer;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber.SampleMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.files.OutputException;

class ClipWriterTest {
    private static final Optional<SoundFormat> SILENT = Optional.empty();
    private static final Optional<SoundFormat> SOUND = Optional.of(SoundFormat.mono(44_100));

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(doubles = {12, 25, 29.97, 60, 120})
    void evenTimesComeBack(double framesPerS) throws Exception {
        List<Double> times = evenly(40, framesPerS);
        assertTimes(times, read(write(times, framesPerS, SILENT)));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void unevenTimesComeBack(boolean withSound) throws Exception {
        Random random = new Random(3);
        List<Double> times = IntStream.range(0, 60)
                .mapToObj(i -> i == 0 ? 0.0 : (i + 0.9 * (random.nextDouble() - 0.5)) / 30)
                .toList();
        assertTimes(times, read(write(times, 30, withSound ? SOUND : SILENT)));
    }

    @Test
    void thePicturesAreH264AndLookAsGiven() throws Exception {
        Path file = write(evenly(10, 25), 25, SILENT);
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(file.toFile())) {
            grabber.start();
            assertEquals(avcodec.AV_CODEC_ID_H264, grabber.getVideoCodec());
        }
        try (Clip clip = Clip.open(file)) {
            assertEquals(64, clip.facts().widthPx());
            assertEquals(48, clip.facts().heightPx());
            assertFalse(clip.facts().hasSound());
            BufferedImage first = clip.next().orElseThrow().picture();
            assertEquals(shade(0), first.getRaster().getSample(30, 20, 0), 6);
        }
    }

    @Test
    void theSoundComesBackWhereItWas() throws Exception {
        Path file = write(evenly(50, 25), 25, SOUND);
        try (Clip clip = Clip.open(file)) {
            assertTrue(clip.facts().hasSound());
            assertEquals(2.0, clip.facts().durationS().orElseThrow(), 0.05);
        }
        float[] heard = soundOf(file);
        assertEquals(2 * 44_100, heard.length, 2 * 1024, "to two AAC frames of 1024 samples");
        // silent in the first second, a tone of 0.5 in the second: its root mean square is 0.5 / sqrt 2
        assertEquals(0, rms(heard, 0.1, 0.9), 0.01);
        assertEquals(0.5 / Math.sqrt(2), rms(heard, 1.1, 1.9), 0.03);
    }

    @Test
    void anUnevenClipGetsTheSameBitsAsAnEvenOne() throws Exception {
        List<Double> even = evenly(75, 25);
        List<Double> uneven =
                IntStream.range(0, 75).mapToObj(i -> (i + 0.3 * (i % 2)) / 25).toList();
        long evenBytes = Files.size(noise("even.mp4", even, 400_000));
        long unevenBytes = Files.size(noise("uneven.mp4", uneven, 400_000));
        assertEquals(1, (double) unevenBytes / evenBytes, 0.05);
        long doubled = Files.size(noise("doubled.mp4", even, 800_000));
        assertEquals(2, (double) doubled / evenBytes, 0.5, "twice the bits asked for");
    }

    @Test
    void theSamePicturesMakeTheSameFile() throws Exception {
        byte[] once = Files.readAllBytes(write(evenly(20, 25), 25, SOUND));
        assertArrayEquals(once, Files.readAllBytes(write(evenly(20, 25), 25, SOUND)));
    }

    @ParameterizedTest
    @CsvSource({"63,48", "64,47", "0,48", "64,-2"})
    void refusesOddSides(int widthPx, int heightPx) throws Exception {
        Path file = folder.resolve("odd.mp4");
        var e = assertThrows(
                IllegalArgumentException.class,
                () -> ClipWriter.open(file, widthPx, heightPx, 25, 100_000, SILENT)
                        .close());
        assertEquals("a clip has even sides, not " + widthPx + "x" + heightPx + " pixels", e.getMessage());
        assertEquals(List.of(), left());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.04, 0.0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aTimeThatDoesNotRiseIsRefusedAndLeavesNothing(double timeS) throws Exception {
        try (ClipWriter writer = ClipWriter.open(folder.resolve("a.mp4"), 64, 48, 25, 100_000, SILENT)) {
            writer.frame(0, picture(0));
            writer.frame(0.04, picture(1));
            assertThrows(IllegalArgumentException.class, () -> writer.frame(timeS, picture(2)));
        }
        assertEquals(List.of(), left());
    }

    @Test
    void aFailureLeavesWhatWasThereBefore() throws Exception {
        Path file = Files.writeString(folder.resolve("a.mp4"), "before");
        try (ClipWriter writer = ClipWriter.open(file, 64, 48, 25, 100_000, SOUND)) {
            writer.frame(0, picture(0));
            writer.sound(new float[5000]);
            assertThrows(
                    IllegalArgumentException.class,
                    () -> writer.frame(1, new BufferedImage(62, 48, BufferedImage.TYPE_3BYTE_BGR)));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> writer.frame(1, new BufferedImage(64, 48, BufferedImage.TYPE_BYTE_GRAY)));
        }
        assertEquals(List.of("a.mp4"), left());
        assertEquals("before", Files.readString(file));
    }

    @Test
    void aClipWithoutFramesOrUnaskedSoundIsRefused() throws Exception {
        try (ClipWriter writer = ClipWriter.open(folder.resolve("a.mp4"), 64, 48, 25, 100_000, SILENT)) {
            assertThrows(IllegalStateException.class, () -> writer.sound(new float[10]));
            assertThrows(IllegalStateException.class, writer::finish);
        }
        assertEquals(List.of(), left());
    }

    @Test
    void saysWhyAClipCannotBeBegun() throws Exception {
        Path file = Files.writeString(folder.resolve("plain"), "kept");
        for (Path target : List.of(folder, file.resolve("a.mp4"))) {
            OutputException e = assertThrows(
                    OutputException.class,
                    () -> ClipWriter.open(target, 64, 48, 25, 100_000, SILENT).close());
            assertTrue(e.getMessage().startsWith("Can't write "), e.getMessage());
        }
        OutputException huge = assertThrows(
                OutputException.class,
                () -> ClipWriter.open(folder.resolve("a.mp4"), 40_000, 40_000, 25, 100_000, SILENT)
                        .close());
        assertTrue(huge.getMessage().startsWith("The clip a.mp4 could not be written"), huge.getMessage());
        assertEquals(List.of("plain"), left());
    }

    private static List<Double> evenly(int frames, double perS) {
        return IntStream.range(0, frames).mapToObj(i -> i / perS).toList();
    }

    private static int shade(int index) {
        return 60 + index * 7 % 120;
    }

    private static BufferedImage picture(int index) {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_3BYTE_BGR);
        Arrays.fill(((DataBufferByte) image.getRaster().getDataBuffer()).getData(), (byte) shade(index));
        return image;
    }

    /** Sound, if any, is silent for a second and then a tone. */
    private Path write(List<Double> timesS, double perS, Optional<SoundFormat> sound) throws Exception {
        Path file = folder.resolve("clip.mp4");
        try (ClipWriter writer = ClipWriter.open(file, 64, 48, perS, 400_000, sound)) {
            for (int i = 0; i < timesS.size(); i++) {
                writer.frame(timesS.get(i), picture(i));
                if (sound.isPresent()) {
                    writer.sound(tone((int) Math.round(i * 44_100 / perS), (int) Math.round((i + 1) * 44_100 / perS)));
                }
            }
            writer.finish();
        }
        assertEquals(List.of("clip.mp4"), left());
        return file;
    }

    private static float[] tone(int first, int end) {
        float[] samples = new float[end - first];
        for (int i = 0; i < samples.length; i++) {
            int at = first + i;
            samples[i] = at < 44_100 ? 0 : (float) (0.5 * Math.sin(2 * Math.PI * 440 * at / 44_100));
        }
        return samples;
    }

    private Path noise(String name, List<Double> timesS, int bitsPerS) throws Exception {
        Path file = folder.resolve(name);
        Random random = new Random(1);
        try (ClipWriter writer = ClipWriter.open(file, 320, 180, 25, bitsPerS, SILENT)) {
            byte[] texture = new byte[320 * 180 * 3 + 75 * 6];
            for (int i = 0; i < texture.length; i++) {
                texture[i] = (byte) (128 + 12 * random.nextGaussian());
            }
            for (int i = 0; i < timesS.size(); i++) {
                BufferedImage image = new BufferedImage(320, 180, BufferedImage.TYPE_3BYTE_BGR);
                byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
                System.arraycopy(texture, i * 6, pixels, 0, pixels.length);
                writer.frame(timesS.get(i), image);
            }
            writer.finish();
        }
        return file;
    }

    private static List<Double> read(Path file) throws Exception {
        List<Double> times = new ArrayList<>();
        try (Clip clip = Clip.open(file)) {
            for (Optional<Frame> frame = clip.next(); frame.isPresent(); frame = clip.next()) {
                times.add(frame.get().timeS());
            }
            assertEquals(Optional.empty(), clip.trouble());
        }
        return times;
    }

    private static void assertTimes(List<Double> written, List<Double> read) {
        assertEquals(written.size(), read.size());
        for (int i = 0; i < read.size(); i++) {
            assertEquals(written.get(i), read.get(i), 0.001, "frame " + i);
        }
    }

    private static float[] soundOf(Path file) throws Exception {
        FloatBuffer all = FloatBuffer.allocate(10 * 44_100);
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(file.toFile())) {
            grabber.setSampleMode(SampleMode.SHORT);
            grabber.start();
            assertEquals(avcodec.AV_CODEC_ID_AAC, grabber.getAudioCodec());
            assertEquals(1, grabber.getAudioChannels());
            assertEquals(44_100, grabber.getSampleRate());
            for (var frame = grabber.grabSamples(); frame != null; frame = grabber.grabSamples()) {
                ShortBuffer samples = (ShortBuffer) frame.samples[0];
                while (samples.hasRemaining()) {
                    all.put(samples.get() / 32_768f);
                }
            }
        }
        float[] heard = new float[all.flip().remaining()];
        all.get(heard);
        return heard;
    }

    private static double rms(float[] samples, double fromS, double toS) {
        int from = (int) (fromS * 44_100);
        int to = (int) (toS * 44_100);
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += samples[i] * samples[i];
        }
        return Math.sqrt(sum / (to - from));
    }

    private List<String> left() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }
}
