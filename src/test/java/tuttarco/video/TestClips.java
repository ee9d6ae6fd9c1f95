package tuttarco.video;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleFunction;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Java2DFrameConverter;

/** Small clips for tests, written losslessly: what goes in comes out. */
public final class TestClips {
    private TestClips() {}

    /** Writes one frame a presentation time; times in seconds, rising, the first at zero. */
    public static void write(Path file, List<Double> timesS, DoubleFunction<BufferedImage> picture) throws Exception {
        BufferedImage first = picture.apply(timesS.get(0));
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        try (FFmpegFrameRecorder recorder =
                        new FFmpegFrameRecorder(file.toFile(), first.getWidth(), first.getHeight(), 0);
                Java2DFrameConverter converter = new Java2DFrameConverter()) {
            boolean mp4 = file.toString().endsWith(".mp4");
            recorder.setFormat(mp4 ? "mp4" : "matroska");
            recorder.setVideoCodec(mp4 ? avcodec.AV_CODEC_ID_MPEG4 : avcodec.AV_CODEC_ID_FFV1);
            recorder.setPixelFormat(mp4 ? avutil.AV_PIX_FMT_YUV420P : avutil.AV_PIX_FMT_GRAY8);
            recorder.setVideoQuality(1);
            recorder.setFrameRate(1000);
            recorder.start();
            for (double timeS : timesS) {
                recorder.setTimestamp(Math.round(timeS * 1e6));
                recorder.record(converter.convert(picture.apply(timeS)));
            }
        }
    }

    /** A grey picture of one shade. */
    public static BufferedImage plain(int widthPx, int heightPx, int shade) {
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                image.getRaster().setSample(x, y, 0, shade);
            }
        }
        return image;
    }

    /** Has an MP4 file say that its picture is to be turned (ISO 14496-12, track header box). */
    public static void turn(Path file, int clockwiseDeg) throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        int tkhd = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("tkhd");
        int one = 0x10000;
        int[] matrix = switch (clockwiseDeg) {
            case 90 -> new int[] {0, one, 0, -one, 0, 0, 0, 0, 0x40000000};
            case 180 -> new int[] {-one, 0, 0, 0, -one, 0, 0, 0, 0x40000000};
            default -> new int[] {0, -one, 0, one, 0, 0, 0, 0, 0x40000000};
        };
        ByteBuffer box = ByteBuffer.wrap(bytes);
        int versionAndFlags = 4;
        int untilMatrix = versionAndFlags + 20 + 8 + 8;
        for (int i = 0; i < matrix.length; i++) {
            box.putInt(tkhd + 4 + untilMatrix + 4 * i, matrix[i]);
        }
        Files.write(file, bytes);
    }
}
