package tuttarco.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.nio.FloatBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameFilter;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameFilter;
import org.junit.jupiter.api.Test;

/** The meter beside FFmpeg's filter ebur128, fed the same samples. */
class LoudnessByFfmpegTest {
    /** Sound that is like music in this: it swells, falls silent, and has all frequencies up to a third of the rate. */
    private static float[] swelling(int samplesPerS, double lengthS, long seed) {
        Random random = new Random(seed);
        float[] samples = new float[(int) (lengthS * samplesPerS)];
        double smooth = 0;
        for (int i = 0; i < samples.length; i++) {
            double timeS = (double) i / samplesPerS;
            smooth += 0.3 * (random.nextGaussian() - smooth);
            double swell = Math.max(0, Math.sin(2 * Math.PI * timeS / 7)) + 0.02;
            double tone = Math.sin(2 * Math.PI * 196 * timeS) + 0.5 * Math.sin(2 * Math.PI * 1176 * timeS);
            samples[i] = (float) (swell * (0.1 * tone + 0.1 * smooth));
        }
        return samples;
    }

    private record Heard(double momentaryLufs, double shortTermLufs, double integratedLufs) {}

    /** What the filter says at the end of each 100 ms. */
    private static List<Heard> byFfmpeg(float[] samples, int samplesPerS) throws FrameFilter.Exception {
        List<Heard> heard = new ArrayList<>();
        avutil.av_log_set_level(avutil.AV_LOG_ERROR);
        try (FFmpegFrameFilter filter = new FFmpegFrameFilter("ebur128=metadata=1", 1)) {
            filter.setSampleRate(samplesPerS);
            filter.setSampleFormat(avutil.AV_SAMPLE_FMT_FLT);
            filter.start();
            for (int from = 0; from < samples.length; from += samplesPerS / 10) {
                float[] block = Arrays.copyOfRange(samples, from, Math.min(samples.length, from + samplesPerS / 10));
                filter.pushSamples(0, 1, samplesPerS, avutil.AV_SAMPLE_FMT_FLT, FloatBuffer.wrap(block));
                for (Frame frame = filter.pullSamples(); frame != null; frame = filter.pullSamples()) {
                    AVFrame said = (AVFrame) frame.opaque;
                    if (avutil.av_dict_get(said.metadata(), "lavfi.r128.I", null, 0) != null) {
                        heard.add(new Heard(said(said, "M"), said(said, "S"), said(said, "I")));
                    }
                }
            }
        }
        return heard;
    }

    private static double said(AVFrame frame, String key) {
        AVDictionaryEntry entry = avutil.av_dict_get(frame.metadata(), "lavfi.r128." + key, null, 0);
        return Double.parseDouble(entry.value().getString());
    }

    private static List<Heard> byFfmpegIfItRuns(float[] samples, int samplesPerS) {
        try {
            return byFfmpeg(samples, samplesPerS);
        } catch (FrameFilter.Exception | LinkageError e) {
            return abort("FFmpeg's filter ebur128 does not run here: " + e.getMessage());
        }
    }

    @Test
    void readsWhatFfmpegReads() {
        for (int rate : List.of(48_000, 22_050)) {
            float[] samples = swelling(rate, 20, 5);
            List<Heard> theirs = byFfmpegIfItRuns(samples, rate);
            List<Heard> ours = ours(samples, rate);
            assertTrue(theirs.size() >= 190, "FFmpeg said something " + theirs.size() + " times");
            // the filter speaks of 400 ms and 3 s from the start, as though silence had been before; the meter waits
            for (int i = 40; i < theirs.size(); i++) {
                assertEquals(theirs.get(i).shortTermLufs(), ours.get(i).shortTermLufs(), 0.1);
                assertEquals(theirs.get(i).integratedLufs(), ours.get(i).integratedLufs(), 0.1);
                assertEquals(theirs.get(i).momentaryLufs(), ours.get(i).momentaryLufs(), 0.1);
            }
        }
    }

    private static List<Heard> ours(float[] samples, int samplesPerS) {
        LoudnessMeter meter = new LoudnessMeter(samplesPerS);
        List<Heard> heard = new ArrayList<>();
        for (int from = 0; from + samplesPerS / 10 <= samples.length; from += samplesPerS / 10) {
            meter.add(Arrays.copyOfRange(samples, from, from + samplesPerS / 10), samplesPerS / 10);
            heard.add(new Heard(
                    orNone(meter.momentaryLufs()), orNone(meter.shortTermLufs()), orNone(meter.integratedLufs())));
        }
        return heard;
    }

    private static double orNone(OptionalDouble lufs) {
        return lufs.orElse(Double.NEGATIVE_INFINITY);
    }
}
