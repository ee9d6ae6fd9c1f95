package tuttarco.align;

import java.util.Arrays;

/** Finds the times of a passage closely: the same warping within a band around the coarse ones, frame by frame. */
final class PassageTimer {
    /** How far the coarse times may be off, seconds (chosen: some steps of the coarse search). */
    private static final double BAND_S = 1;

    /** Times are taken to run evenly over this long before they are found closely, seconds (chosen; not yet measured). */
    static final double SMOOTH_S = 3;

    /** Steps by frames and by places of the guide: on evenly, and at up to three times or a third of the tempo. */
    private static final int[][] WAYS = {{1, 1}, {1, 2}, {2, 1}, {1, 3}, {3, 1}};

    private static final byte BEGUN = -1;

    /**
     * What it costs, as a fit, that the recording begins while a passage is played, wherever that is: as much as beginning
     * at a bar, so that a part's own beginning is preferred.
     */
    private static final float MID_NOTE = (float) (PartChords.AT_A_BAR_S * Fit.WELL / SoundFeatures.HOP_S);

    /** Frames a step goes back at most. */
    private static final int FURTHEST = 3;

    private final Guide guide;
    private final SoundFeatures sound;
    private final Fit fit;

    PassageTimer(Guide guide, SoundFeatures sound) {
        this.guide = guide;
        this.sound = sound;
        this.fit = new Fit(guide, sound.bands());
    }

    /** The passage with close times, as far as they fit well; it may grow at its ends by up to the band. */
    Passage timed(Passage found) {
        Passage coarse = found.smooth(SMOOTH_S);
        double hopS = SoundFeatures.HOP_S;
        Guide.Piece piece = pieceOf(found);
        double from = Math.max(piece.from(), coarse.placeAt(coarse.startS() - BAND_S));
        double to = Math.min(piece.to(), coarse.placeAt(coarse.endS() + BAND_S));
        double firstS = coarse.timeS(from);
        int steps = Math.max(2, (int) Math.round((coarse.timeS(to) - firstS) / hopS));
        int[] sounds = new int[steps];
        float[] beginnings = new float[steps];
        for (int s = 0; s < steps; s++) {
            double at = coarse.placeAt(firstS + s * hopS);
            double next = coarse.placeAt(firstS + (s + 1) * hopS);
            sounds[s] = guide.soundAt((at + next) / 2);
            beginnings[s] = (float) (guide.beginning(at, next) * Fit.WELL / hopS);
        }
        int half = (int) Math.ceil(BAND_S / hopS);
        int firstFrame = (int) Math.round((firstS - sound.startS()) / hopS);
        int lowest = Math.max(0, firstFrame - half);
        int frames = Math.min(sound.shapes().size(), firstFrame + steps + half) - lowest;
        int width = 2 * half + 1;
        // column c of frame f's row is step f + lowest - firstFrame - half + c
        float[][] totals = new float[frames][width];
        byte[][] ways = new byte[frames][width];
        float[][] fits = new float[frames][];
        float bestTotal = Float.NEGATIVE_INFINITY;
        int bestFrame = 0;
        int bestColumn = 0;
        for (int f = 0; f < frames; f++) {
            int offset = f + lowest - firstFrame - half;
            fits[f] = fits(sound.shapes().get(lowest + f), sounds, offset, width + FURTHEST - 1);
            for (int c = 0; c < width; c++) {
                int step = offset + c;
                if (step < 0 || step >= steps) {
                    totals[f][c] = Float.NEGATIVE_INFINITY;
                    continue;
                }
                float most = lowest + f == 0 ? Math.max(-beginnings[step], -MID_NOTE) : -beginnings[step];
                ways[f][c] = BEGUN;
                for (byte way = 0; way < WAYS.length; way++) {
                    int frame = f - WAYS[way][0];
                    int column = c + WAYS[way][0] - WAYS[way][1];
                    if (frame < 0 || column < 0 || column >= width) {
                        continue;
                    }
                    float total = totals[frame][column] - (way == 0 ? 0 : guide.uneven());
                    for (int g = frame + 1; g < f; g++) {
                        total += fits[g][c + f - g];
                    }
                    if (total > most) {
                        most = total;
                        ways[f][c] = way;
                    }
                }
                totals[f][c] = most + fits[f][c];
                if (totals[f][c] >= bestTotal) {
                    bestTotal = totals[f][c];
                    bestFrame = f;
                    bestColumn = c;
                }
            }
        }
        double[] places = new double[frames];
        double[] timesS = new double[frames];
        double[] worths = new double[frames];
        int at = frames;
        int f = bestFrame;
        int c = bestColumn;
        while (true) {
            int step = f + lowest - firstFrame - half + c;
            at--;
            places[at] = coarse.placeAt(firstS + (step + 0.5) * hopS);
            timesS[at] = sound.timeS(lowest + f);
            byte way = ways[f][c];
            int before = way == BEGUN ? f - 1 : f - WAYS[way][0];
            for (int g = before + 1; g <= f; g++) {
                worths[at] += fits[g][c + f - g] - Fit.FAINT;
            }
            if (way == BEGUN) {
                break;
            }
            f = before;
            c += WAYS[way][0] - WAYS[way][1];
        }
        return trimmed(
                Arrays.copyOfRange(places, at, frames),
                Arrays.copyOfRange(timesS, at, frames),
                Arrays.copyOfRange(worths, at, frames),
                coarse.gain());
    }

    /** The passage without what fits badly at its ends; a note is played whole or not at all. */
    private Passage trimmed(double[] places, double[] timesS, double[] worths, double gain) {
        int[] stretches = Arrays.stream(places).mapToInt(guide::stretchAt).toArray();
        double[] byStretch = new double[stretches[stretches.length - 1] - stretches[0] + 1];
        for (int i = 0; i < stretches.length; i++) {
            byStretch[stretches[i] - stretches[0]] += worths[i];
        }
        BestStretch well = BestStretch.of(byStretch);
        int from = 0;
        int to = 0;
        for (int stretch : stretches) {
            from += stretch - stretches[0] < well.from() ? 1 : 0;
            to += stretch - stretches[0] < well.to() ? 1 : 0;
        }
        return new Passage(Arrays.copyOfRange(places, from, to), Arrays.copyOfRange(timesS, from, to), gain);
    }

    private Guide.Piece pieceOf(Passage found) {
        double middle = (found.places()[0] + found.places()[found.places().length - 1]) / 2;
        return guide.pieces().stream()
                .filter(piece -> piece.from() <= middle && middle <= piece.to())
                .findFirst()
                .orElseThrow();
    }

    /** How well a shape fits the sounds of so many steps from one on, as far as there are such steps. */
    private float[] fits(float[] shape, int[] sounds, int fromStep, int count) {
        float[] fits = new float[count];
        for (int c = Math.max(0, -fromStep); c < count && fromStep + c < sounds.length; c++) {
            boolean same = c > 0 && fromStep + c > 0 && sounds[fromStep + c] == sounds[fromStep + c - 1];
            fits[c] = same ? fits[c - 1] : fit.of(shape, sounds[fromStep + c]);
        }
        return fits;
    }
}
