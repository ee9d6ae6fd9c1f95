package tuttarco.video;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR0;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_move_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BILINEAR;
import static org.bytedeco.ffmpeg.global.swscale.sws_alloc_context;
import static org.bytedeco.ffmpeg.global.swscale.sws_free_context;
import static org.bytedeco.ffmpeg.global.swscale.sws_scale_frame;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;

/**
 * The pictures of a clip in colour and upright, one after another, backwards, or at any time. Those decoded last are held,
 * so that a step back, or to what was decoded ahead, costs nothing. Not for two threads at once.
 */
public final class ClipPictures implements AutoCloseable {
    /** Pictures held: what a player decodes ahead and a few steps back; 3 MB each of 1920x1080 (chosen). */
    private static final int HELD = 12;

    /** So little ahead it is quicker to decode on than to seek, seconds: half of what usually lies between two pictures that stand alone (chosen). */
    private static final double NEAR_S = 1;

    /** How much further back to seek at first where the first picture decoded is too late, seconds (chosen). */
    private static final double FURTHER_BACK_S = 1;

    /** FFmpeg's picture in a Java picture's order of bytes. */
    private static final int PIXELS = AV_PIX_FMT_BGR0;

    private final ClipFacts facts;
    private final Rotation rotation;
    private final DecodedStream stream;
    private final Held[] held = new Held[HELD];
    private final SwsContext scaler = sws_alloc_context();
    private final AVFrame scaled = av_frame_alloc();
    private final Mat turned = new Mat();
    /** Pictures held, oldest first, and which of them it stands at. */
    private int count;

    private int at;
    private boolean ended;

    /** A picture and its time. */
    private static final class Held {
        final AVFrame frame = av_frame_alloc();
        double timeS;
    }

    private ClipPictures(ClipFacts facts, Rotation rotation, DecodedStream stream) {
        this.facts = facts;
        this.rotation = rotation;
        this.stream = stream;
        for (int i = 0; i < HELD; i++) {
            held[i] = new Held();
        }
        scaler.flags(SWS_BILINEAR);
    }

    /**
     * Opens a clip at its first picture.
     *
     * @throws InputException if there is no such file or no picture in it can be read
     */
    public static ClipPictures open(Path file) throws InputException {
        try (Clip clip = Clip.open(file)) {
            ClipPictures pictures =
                    new ClipPictures(clip.facts(), clip.rotation(), new DecodedStream(file, AVMEDIA_TYPE_VIDEO));
            if (!pictures.decode()) {
                pictures.close();
                throw new InputException(
                        InputBytes.name(file) + " holds no picture that can be read; it may be damaged or empty.");
            }
            return pictures;
        }
    }

    public ClipFacts facts() {
        return facts;
    }

    /** Time of the picture it stands at, seconds from the clip's start. */
    public double timeS() {
        return held[at].timeS;
    }

    /** Goes to the next picture; false, and stays, at the end of what can be read. */
    public boolean next() {
        if (at < count - 1 || decode()) {
            at++;
            return true;
        }
        return false;
    }

    /** Goes to the picture before; false, and stays, at the first. */
    public boolean previous() {
        double timeS = timeS();
        seek(Math.nextDown(timeS));
        return timeS() < timeS;
    }

    /** Goes to the picture that is seen at a time: the last that begins no later, or the first of the clip. */
    public void seek(double timeS) {
        if (timeS < held[0].timeS || timeS > newestS() + NEAR_S) {
            restart(timeS);
        }
        while (newestS() <= timeS && decode()) {
            // decodes on
        }
        at = count - 1;
        while (at > 0 && held[at].timeS > timeS) {
            at--;
        }
    }

    /** The picture that is seen at a time, in its own size, to keep; see {@link #seek}. */
    public BufferedImage at(double timeS) {
        seek(timeS);
        BufferedImage picture = new BufferedImage(facts.widthPx(), facts.heightPx(), BufferedImage.TYPE_INT_RGB);
        draw(picture);
        return picture;
    }

    /** Decodes one picture that lies no later than the time, if there is one, and holds no others. */
    private void restart(double timeS) {
        double backS = 0;
        do {
            stream.seek(Math.max(0, timeS - backS));
            clear();
            decode();
            if (timeS - backS <= 0) {
                return;
            }
            backS = Math.max(FURTHER_BACK_S, 2 * backS);
        } while (count == 0 || held[0].timeS > timeS);
    }

    private double newestS() {
        return held[count - 1].timeS;
    }

    private void clear() {
        for (Held picture : held) {
            av_frame_unref(picture.frame);
        }
        count = 0;
        at = 0;
        ended = false;
    }

    /** Decodes the picture after the newest; the oldest is let go of. A picture whose time does not rise is passed over. */
    private boolean decode() {
        while (!ended && stream.next()) {
            double timeS = stream.timeS();
            if (count == 0 || timeS > newestS()) {
                hold(timeS);
                return true;
            }
        }
        ended = true;
        return false;
    }

    private void hold(double timeS) {
        if (count == HELD) {
            Held oldest = held[0];
            System.arraycopy(held, 1, held, 0, HELD - 1);
            held[HELD - 1] = oldest;
            count--;
            at--;
        }
        Held newest = held[count++];
        av_frame_unref(newest.frame);
        av_frame_move_ref(newest.frame, stream.frame());
        newest.timeS = timeS;
    }

    /** Draws the picture it stands at, as large as the other is, {@link BufferedImage#TYPE_INT_RGB}. */
    public void draw(BufferedImage into) {
        int widthPx = rotation.swapsSides() ? into.getHeight() : into.getWidth();
        int heightPx = rotation.swapsSides() ? into.getWidth() : into.getHeight();
        if (scaled.width() != widthPx || scaled.height() != heightPx) {
            av_frame_unref(scaled);
            scaled.width(widthPx).height(heightPx).format(PIXELS);
            check(av_frame_get_buffer(scaled, 0));
        }
        check(sws_scale_frame(scaler, scaled, held[at].frame));
        int[] pixels = ((DataBufferInt) into.getRaster().getDataBuffer()).getData();
        try (Mat stored = new Mat(heightPx, widthPx, opencv_core.CV_8UC4, scaled.data(0), scaled.linesize(0))) {
            Mat upright = rotation.upright(stored, turned);
            IntPointer row = new IntPointer(upright.data());
            for (int y = 0; y < into.getHeight(); y++) {
                row.position(y * upright.step(0) / Integer.BYTES).get(pixels, y * into.getWidth(), into.getWidth());
            }
        }
    }

    private static void check(int result) {
        if (result < 0) {
            throw new IllegalStateException("a picture could not be drawn, FFmpeg's error " + result);
        }
    }

    /** What to tell the user about the clip once its end was reached; see {@link Clip#trouble()}. */
    public Optional<String> trouble() {
        return ended ? Clip.trouble(facts, new Clip.Ending(newestS(), false)) : Optional.empty();
    }

    @Override
    public void close() {
        for (Held picture : held) {
            av_frame_free(picture.frame);
        }
        av_frame_free(scaled);
        sws_free_context(scaler);
        turned.close();
        stream.close();
    }
}
