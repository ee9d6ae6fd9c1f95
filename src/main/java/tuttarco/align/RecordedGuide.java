package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import tuttarco.beats.BeatMap;
import tuttarco.beats.Run;

/**
 * What another recording holds where its beats are known, along its seconds: each stretch played without a stop is a piece.
 *
 * @param shapes one shape a step
 * @param startS the middle of the first
 * @param stepS from one shape to the next, seconds
 * @param pieces the stretches played
 * @param barsS when bars begin, rising
 */
record RecordedGuide(List<float[]> shapes, double startS, double stepS, List<Piece> pieces, double[] barsS)
        implements Guide {
    /** Two players' tempi differ by less than twice either way. */
    private static final double[] TEMPI = {1};

    /** Chosen on synthesised sound: at 0.05 whole notes were stretched at will, at 0.3 the tempo was lost now and then. */
    private static final float UNEVEN = 0.15f;

    /** The frames of a recording. */
    static RecordedGuide of(SoundFeatures sound, BeatMap beats) {
        List<Piece> pieces = new ArrayList<>();
        for (Run run : beats.runs()) {
            double fromS = beats.beats().get(run.firstIndex()).timeS();
            pieces.add(new Piece(fromS, Math.max(beats.endS(run), fromS + 2 * PassageFinder.STEP_S)));
        }
        double[] barsS = IntStream.range(0, beats.beats().size())
                .filter(beats::beginsBar)
                .mapToDouble(i -> beats.beats().get(i).timeS())
                .toArray();
        return new RecordedGuide(sound.shapes(), sound.startS(), SoundFeatures.HOP_S, pieces, barsS);
    }

    /** The same with its shapes drawn together to steps as long as those in which passages are found. */
    RecordedGuide coarse() {
        int count = (int) Math.round(PassageFinder.STEP_S / stepS);
        return new RecordedGuide(
                List.of(Fit.coarse(shapes, count)),
                startS + (count - 1) / 2.0 * stepS,
                PassageFinder.STEP_S,
                pieces,
                barsS);
    }

    @Override
    public double[] tempi() {
        return TEMPI.clone();
    }

    @Override
    public float uneven() {
        return UNEVEN;
    }

    @Override
    public int soundAt(double timeS) {
        long frame = Math.round((timeS - startS) / stepS);
        return frame >= 0 && frame < shapes.size() && !silent((int) frame) ? (int) frame + 1 : REST;
    }

    /** Of a recording each shape is one. */
    @Override
    public int stretchAt(double timeS) {
        return (int) Math.max(0, Math.round((timeS - startS) / stepS));
    }

    private boolean silent(int frame) {
        float[] shape = shapes.get(frame);
        return shape[0] == 0 && shape[1] == 0;
    }

    @Override
    public float[][] expected(SemitoneBands bands) {
        float[][] expected = new float[shapes.size() + 1][];
        expected[REST] = new float[SemitoneBands.COUNT];
        for (int i = 0; i < shapes.size(); i++) {
            expected[i + 1] = shapes.get(i).clone();
        }
        return expected;
    }

    @Override
    public double[] shares() {
        double[] shares = new double[shapes.size() + 1];
        double all = 0;
        for (Piece piece : pieces) {
            for (double at = piece.from() + stepS / 2; at < piece.to(); at += stepS) {
                int sound = soundAt(at);
                if (sound != REST) {
                    shares[sound]++;
                    all++;
                }
            }
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= Math.max(all, 1);
        }
        return shares;
    }

    /** Nobody knows where notes begin; but players begin where a piece or a bar does rather than elsewhere. */
    @Override
    public double beginning(double fromS, double toS) {
        if (pieces.stream().anyMatch(piece -> fromS <= piece.from() && piece.from() < toS)) {
            return 0;
        }
        int next = Arrays.binarySearch(barsS, fromS);
        next = next >= 0 ? next : -next - 1;
        return next < barsS.length && barsS[next] < toS ? PartChords.AT_A_BAR_S : PartChords.IN_MID_BAR_S;
    }

    /** Shapes moved by whole bands; beyond their ends lies what lies at them. */
    @Override
    public RecordedGuide transposed(int semitones) {
        List<float[]> moved = new ArrayList<>();
        for (float[] shape : shapes) {
            float[] other = new float[shape.length];
            for (int b = 0; b < other.length; b++) {
                other[b] = shape[Math.max(0, Math.min(shape.length - 1, b - semitones))];
            }
            moved.add(other);
        }
        return new RecordedGuide(moved, startS, stepS, pieces, barsS);
    }
}
