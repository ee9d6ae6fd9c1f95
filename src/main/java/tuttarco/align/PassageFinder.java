package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Finds the passages of a guide in a recording, coarsely: which places were played when. Subsequence dynamic time warping with
 * steps that hold the tempo within half and twice a tempo to try (M. Müller, Fundamentals of Music Processing, 2nd ed.
 * 2021, sections 3.2 and 7.3), over all tempi to try at once. Between passages the players do something else: that costs
 * nothing, but every new passage does.
 */
final class PassageFinder {
    /** Frames drawn into one: 0.19 s, shorter than most notes and the square of it faster. */
    private static final int COARSE = 8;

    static final double STEP_S = COARSE * SoundFeatures.HOP_S;

    /** What beginning a passage costs, seconds of fitting well (chosen; not yet measured). */
    private static final double BEGINNING_S = 1.5;

    private static final byte BEGUN = 0;
    private static final byte ON = 1;
    private static final byte FASTER = 2;
    private static final byte SLOWER = 3;

    private final Guide guide;
    private final int[] soundOfColumn;
    private final double[] placeOfColumn;
    /** Whether a column is the first of a piece at a tempo. */
    private final boolean[] opens;
    /** What beginning a passage costs, by column. */
    private final float[] beginnings;

    PassageFinder(Guide guide) {
        this.guide = guide;
        List<Double> places = new ArrayList<>();
        List<Float> costs = new ArrayList<>();
        List<Integer> firsts = new ArrayList<>();
        for (double tempo : guide.tempi()) {
            double step = STEP_S * tempo;
            for (Guide.Piece piece : guide.pieces()) {
                firsts.add(places.size());
                for (double at = piece.from() + step / 2; at < piece.to(); at += step) {
                    places.add(at);
                    costs.add((float)
                            ((BEGINNING_S + guide.beginning(at - step / 2, at + step / 2)) * Fit.WELL / STEP_S));
                }
            }
        }
        placeOfColumn = places.stream().mapToDouble(p -> p).toArray();
        beginnings = new float[placeOfColumn.length];
        for (int j = 0; j < beginnings.length; j++) {
            beginnings[j] = costs.get(j);
        }
        soundOfColumn = Arrays.stream(placeOfColumn).mapToInt(guide::soundAt).toArray();
        opens = new boolean[placeOfColumn.length];
        firsts.stream().filter(first -> first < opens.length).forEach(first -> opens[first] = true);
    }

    /** The passages played, in time order; none if nothing fits. */
    List<Passage> passages(SoundFeatures sound) throws InterruptedException {
        float[][] shapes = Fit.coarse(sound.shapes(), COARSE);
        byte[][] ways = new byte[shapes.length][wayBytes()];
        int[] left = new int[shapes.length];
        search(shapes, sound.bands(), i -> ways[i], left);
        return traced(sound, shapes, ways, left);
    }

    /** What the guide gains by fitting, up to each moment of a recording. */
    GainSoFar gainSoFar(SoundFeatures sound) throws InterruptedException {
        float[][] shapes = Fit.coarse(sound.shapes(), COARSE);
        byte[] forgotten = new byte[wayBytes()];
        return new GainSoFar(
                search(shapes, sound.bands(), i -> forgotten, new int[shapes.length]), sound.startS(), STEP_S);
    }

    /** Bytes of a row of ways, four of which share one. */
    private int wayBytes() {
        return (soundOfColumn.length + 3) / 4;
    }

    /**
     * Goes through a recording, and tells the best gain up to each frame.
     *
     * @param ways the row to note a frame's ways in
     * @param left takes the column in which a passage is best left at a frame, or -1
     */
    private float[] search(float[][] shapes, SemitoneBands bands, IntFunction<byte[]> ways, int[] left)
            throws InterruptedException {
        Fit fit = new Fit(guide, bands);
        int columns = soundOfColumn.length;
        float[] gains = new float[shapes.length];
        float[] beforeLast = new float[columns];
        float[] last = new float[columns];
        float[] now = new float[columns];
        Arrays.fill(beforeLast, Float.NEGATIVE_INFINITY);
        Arrays.fill(last, Float.NEGATIVE_INFINITY);
        float[] fits = new float[fit.sounds()];
        float[] lastFits = new float[fits.length];
        float elsewhere = 0;
        for (int i = 0; i < shapes.length; i++) {
            if (Thread.interrupted()) {
                throw new InterruptedException("stopped while looking for what was played in the recording");
            }
            fit.of(shapes[i], fits);
            int best = row(elsewhere, fits, lastFits, beforeLast, last, now, ways.apply(i));
            left[i] = -1;
            if (now[best] > elsewhere) {
                elsewhere = now[best];
                left[i] = best;
            }
            gains[i] = elsewhere;
            float[] free = beforeLast;
            beforeLast = last;
            last = now;
            now = free;
            float[] freeFits = lastFits;
            lastFits = fits;
            fits = freeFits;
        }
        return gains;
    }

    /** Fills one frame's row, and returns the best column. */
    private int row(
            float elsewhere,
            float[] fits,
            float[] lastFits,
            float[] beforeLast,
            float[] last,
            float[] now,
            byte[] ways) {
        int best = 0;
        Arrays.fill(ways, (byte) 0);
        for (int j = 0; j < now.length; j++) {
            float most = elsewhere - beginnings[j];
            byte way = BEGUN;
            if (!opens[j]) {
                if (last[j - 1] > most) {
                    most = last[j - 1];
                    way = ON;
                }
                float slower = beforeLast[j - 1] + lastFits[soundOfColumn[j]] - guide.uneven();
                if (slower > most) {
                    most = slower;
                    way = SLOWER;
                }
                if (!opens[j - 1] && last[j - 2] - guide.uneven() > most) {
                    most = last[j - 2] - guide.uneven();
                    way = FASTER;
                }
            }
            now[j] = most + fits[soundOfColumn[j]];
            ways[j >> 2] |= (byte) (way << 2 * (j & 3));
            if (now[j] > now[best]) {
                best = j;
            }
        }
        return best;
    }

    private List<Passage> traced(SoundFeatures sound, float[][] shapes, byte[][] ways, int[] left) {
        Fit fit = new Fit(guide, sound.bands());
        List<Passage> passages = new ArrayList<>();
        int i = left.length - 1;
        while (i >= 0) {
            if (left[i] < 0) {
                i--;
                continue;
            }
            List<Point> points = new ArrayList<>();
            int j = left[i];
            byte way;
            do {
                way = (byte) (ways[i][j >> 2] >> 2 * (j & 3) & 3);
                int frames = way == SLOWER ? 2 : 1;
                double gain = way == SLOWER || way == FASTER ? -guide.uneven() : 0;
                for (int back = 0; back < frames; back++) {
                    gain += fit.of(shapes[i - back], soundOfColumn[j]);
                }
                double timeS = sound.startS() + ((i + 0.5) * COARSE - 0.5) * SoundFeatures.HOP_S;
                points.add(new Point(placeOfColumn[j], timeS, gain, frames));
                i -= frames;
                j -= way == FASTER ? 2 : 1;
            } while (way != BEGUN);
            Collections.reverse(points);
            List<Point> sure = trimmed(points);
            if (sure.size() >= 2) {
                passages.add(new Passage(
                        sure.stream().mapToDouble(Point::place).toArray(),
                        sure.stream().mapToDouble(Point::timeS).toArray(),
                        sure.stream().mapToDouble(Point::gain).sum() - BEGINNING_S * Fit.WELL / STEP_S));
            }
        }
        Collections.reverse(passages);
        return passages;
    }

    /** A place of the guide at a time, and what is gained by coming there over so many frames. */
    private record Point(double place, double timeS, double gain, int frames) {}

    /** The stretch of a passage that fits well; before and after it lies what is no part of it. */
    private static List<Point> trimmed(List<Point> points) {
        BestStretch well = BestStretch.of(points.stream()
                .mapToDouble(p -> p.gain() - Fit.FAINT * p.frames())
                .toArray());
        return points.subList(well.from(), well.to());
    }
}
