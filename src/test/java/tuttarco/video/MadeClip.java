package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FFmpegFrameRecorder;

/** A clip that was made of another, decoded again; and clips to make it of that say where and with what they were filmed. */
public final class MadeClip {
    private static final Map<String, String> TOLD = Map.of(
            "location", "+52.5170+013.3889/",
            "comment", "Camera 7",
            "creation_time", "2026-11-26T12:00:00Z");

    private MadeClip() {}

    /** Copies an MP4 file, as it is packed, to one that also says where, when and with what it was filmed. */
    public static Path telling(Path clip, Path file) throws Exception {
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(clip.toFile())) {
            grabber.start();
            try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(
                    file.toFile(), grabber.getImageWidth(), grabber.getImageHeight(), grabber.getAudioChannels())) {
                recorder.setFormat("mp4");
                recorder.setMetadata(TOLD);
                recorder.start(grabber.getFormatContext());
                for (AVPacket packet = grabber.grabPacket(); packet != null; packet = grabber.grabPacket()) {
                    recorder.recordPacket(packet);
                }
                recorder.stop();
            }
        }
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(file.toFile())) {
            grabber.start();
            assertEquals("+52.5170+013.3889/", grabber.getMetadata("location"));
            assertEquals("Camera 7", grabber.getMetadata("comment"));
        }
        return file;
    }

    /** The clip is H.264 and says nothing of what it was made of. */
    public static void assertTellsNothing(Path made) throws Exception {
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(made.toFile())) {
            grabber.start();
            assertEquals("h264", grabber.getVideoCodecName());
            assertEquals(
                    Set.of("major_brand", "minor_version", "compatible_brands"),
                    grabber.getMetadata().keySet());
        }
        String bytes = new String(Files.readAllBytes(made), StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains("+52.5") || bytes.contains("Camera 7") || bytes.contains("2026-"));
    }

    /** When its pictures are seen, seconds. */
    public static List<Double> timesS(Path clip) throws Exception {
        List<Double> timesS = new ArrayList<>();
        try (ClipPictures pictures = ClipPictures.open(clip)) {
            do {
                timesS.add(pictures.timeS());
            } while (pictures.next());
        }
        return timesS;
    }

    /** The picture that stands there now. */
    public static BufferedImage picture(ClipPictures pictures) {
        BufferedImage picture =
                new BufferedImage(pictures.facts().widthPx(), pictures.facts().heightPx(), BufferedImage.TYPE_INT_RGB);
        pictures.draw(picture);
        return picture;
    }

    /** When the first thing is heard, seconds. */
    public static double firstLoudS(Path clip, double untilS) throws Exception {
        try (ClipPictures pictures = ClipPictures.open(clip);
                ClipSound sound = ClipSound.open(pictures.facts()).orElseThrow()) {
            float[] block = new float[(int) (untilS * ClipSound.SAMPLES_PER_S) * ClipSound.CHANNELS];
            sound.read(block, 0, block.length / ClipSound.CHANNELS);
            for (int i = 0; i < block.length; i++) {
                if (Math.abs(block[i]) > 0.2) {
                    return (double) (i / ClipSound.CHANNELS) / ClipSound.SAMPLES_PER_S;
                }
            }
        }
        throw new AssertionError("nothing is heard");
    }
}
