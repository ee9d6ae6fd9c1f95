package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Finds the passages of a part in a recording, coarsely: which bars were played when. Subsequence dynamic time warping with
 * steps that hold the tempo within half and twice a tempo to try (M. Müller, Fundamentals of Music Processing, 2nd ed.
 * 2021, sections 3.2 and 7.3), over all tempi to try at once. Between passages the players do something else: that costs
 * nothing, but every new passage does.
 */
final class PassageFinder {
    /** Frames drawn into one: 0.19 s, shorter than most notes and the square of it faster. */
    private static final int COARSE = 8;

    static final double STEP_S = COARSE * SoundFeatures.HOP_S;

    /** Tempi to try, quarter notes a minute; each reaches from half of it to twice (common practice: 35 to 350). */
    private static final double[] TEMPI = {50, 85, 145, 240};

    /** What beginning a passage costs, seconds of fitting well (chosen; not yet measured). */
    private static final double BEGINNING_S = 1.5;

    private static final byte BEGUN = 0;
    private static final byte ON = 1;
    private static final byte FASTER = 2;
    private static final byte SLOWER = 3;

    private final PartChords part;
    private final int[] chordOfColumn;
    private final double[] quartersOfColumn;
    /** Whether a column is the first of a tempo. */
    private final boolean[] opens;
    /** What beginning a passage costs, by column. */
    private final float[] beginnings;

    PassageFinder(PartChords part) {
        this.part = part;
        List<Double> quarters = new ArrayList<>();
        List<Float> costs = new ArrayList<>();
        List<Integer> firsts = new ArrayList<>();
        for (double tempo : TEMPI) {
            firsts.add(quarters.size());
            double stepQuarters = STEP_S * tempo / 60;
            for (double at = stepQuarters / 2; at < part.lengthQuarters(); at += stepQuarters) {
                quarters.add(at);
                costs.add((float) ((BEGINNING_S + part.beginning(at - stepQuarters / 2, at + stepQuarters / 2))
                        * Fit.WELL
                        / STEP_S));
            }
        }
        quartersOfColumn = quarters.stream().mapToDouble(q -> q).toArray();
        beginnings = new float[quartersOfColumn.length];
        for (int j = 0; j < beginnings.length; j++) {
            beginnings[j] = costs.get(j);
        }
        chordOfColumn = Arrays.stream(quartersOfColumn)
                .mapToInt(q -> part.chordOf()[part.stretchAt(q)])
                .toArray();
        opens = new boolean[quartersOfColumn.length];
        firsts.forEach(first -> opens[first] = true);
    }

    /** The passages played, in time order; none if nothing fits. */
    List<Passage> passages(SoundFeatures sound) throws InterruptedException {
        float[][] shapes = Fit.coarse(sound.shapes(), COARSE);
        byte[][] ways = new byte[shapes.length][wayBytes()];
        int[] left = new int[shapes.length];
        search(shapes, sound.bands(), i -> ways[i], left);
        return traced(sound, shapes, ways, left);
    }

    /** What the part gains by fitting, up to each moment of a recording. */
    GainSoFar gainSoFar(SoundFeatures sound) throws InterruptedException {
        float[][] shapes = Fit.coarse(sound.shapes(), COARSE);
        byte[] forgotten = new byte[wayBytes()];
        return new GainSoFar(
                search(shapes, sound.bands(), i -> forgotten, new int[shapes.length]), sound.startS(), STEP_S);
    }

    /** Bytes of a row of ways, four of which share one. */
    private int wayBytes() {
        return (chordOfColumn.length + 3) / 4;
    }

    /**
     * Goes through a recording, and tells the best gain up to each frame.
     *
     * @param ways the row to note a frame's ways in
     * @param left takes the column in which a passage is best left at a frame, or -1
     */
    private float[] search(float[][] shapes, SemitoneBands bands, IntFunction<byte[]> ways, int[] left)
            throws InterruptedException {
        Fit fit = new Fit(part, bands);
        int columns = chordOfColumn.length;
        float[] gains = new float[shapes.length];
        float[] beforeLast = new float[columns];
        float[] last = new float[columns];
        float[] now = new float[columns];
        Arrays.fill(beforeLast, Float.NEGATIVE_INFINITY);
        Arrays.fill(last, Float.NEGATIVE_INFINITY);
        float[] fits = new float[part.chords().size()];
        float[] lastFits = new float[fits.length];
        float elsewhere = 0;
        for (int i = 0; i < shapes.length; i++) {
            if (Thread.interrupted()) {
                throw new InterruptedException("stopped while looking for the part in the recording");
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
                float slower = beforeLast[j - 1] + lastFits[chordOfColumn[j]] - Fit.UNEVEN;
                if (slower > most) {
                    most = slower;
                    way = SLOWER;
                }
                if (!opens[j - 1] && last[j - 2] - Fit.UNEVEN > most) {
                    most = last[j - 2] - Fit.UNEVEN;
                    way = FASTER;
                }
            }
            now[j] = most + fits[chordOfColumn[j]];
            ways[j >> 2] |= (byte) (way << 2 * (j & 3));
            if (now[j] > now[best]) {
                best = j;
            }
        }
        return best;
    }

    private List<Passage> traced(SoundFeatures sound, float[][] shapes, byte[][] ways, int[] left) {
        Fit fit = new Fit(part, sound.bands());
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
                double gain = way == SLOWER || way == FASTER ? -Fit.UNEVEN : 0;
                for (int back = 0; back < frames; back++) {
                    gain += fit.of(shapes[i - back], chordOfColumn[j]);
                }
                double timeS = sound.startS() + ((i + 0.5) * COARSE - 0.5) * SoundFeatures.HOP_S;
                points.add(new Point(quartersOfColumn[j], timeS, gain, frames));
                i -= frames;
                j -= way == FASTER ? 2 : 1;
            } while (way != BEGUN);
            Collections.reverse(points);
            List<Point> sure = trimmed(points);
            if (sure.size() >= 2) {
                passages.add(new Passage(
                        sure.stream().mapToDouble(Point::quarters).toArray(),
                        sure.stream().mapToDouble(Point::timeS).toArray(),
                        sure.stream().mapToDouble(Point::gain).sum() - BEGINNING_S * Fit.WELL / STEP_S));
            }
        }
        Collections.reverse(passages);
        return passages;
    }

    /** A place of the part at a time, and what is gained by coming there over so many frames. */
    private record Point(double quarters, double timeS, double gain, int frames) {}

    /** The stretch of a passage that fits well; before and after it lies what is no part of it. */
    private static List<Point> trimmed(List<Point> points) {
        BestStretch well = BestStretch.of(points.stream()
                .mapToDouble(p -> p.gain() - Fit.FAINT * p.frames())
                .toArray());
        return points.subList(well.from(), well.to());
    }
}
