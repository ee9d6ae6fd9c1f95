package tuttarco.strokes;

import java.util.List;
import tuttarco.tracks.ArmSample;

/**
 * What an arm does in one go.
 *
 * @param stroke a stroke or rest as it was read, or a tremolo: motion too quick for one stroke to be told from the next
 * @param way how far the hand goes along the bow, shoulder widths; positive towards the tip
 * @param curve energy of the motion across the bow over that along it
 * @param peak greatest speed along the bow, shoulder widths per second
 */
record Swing(Stroke stroke, double way, double curve, double peak) {
    /** A hand that goes less far, shoulder widths, does nothing. */
    private static final double LEAST_WAY = 0.03;

    /** Energy below which there is none: a hundredth of the slowest bowing, shoulder widths squared per second squared. */
    private static final double NO_ENERGY = 1e-6;

    /** @param during what was seen during the stroke; empty where nothing was */
    static Swing of(Stroke stroke, List<ArmSample.Seen> during) {
        double along = NO_ENERGY;
        double across = 0;
        double mean = 0;
        double peak = 0;
        for (ArmSample.Seen sample : during) {
            along += sample.velocity() * sample.velocity();
            across += sample.gesture().across() * sample.gesture().across();
            mean += sample.velocity() / during.size();
            peak = Math.max(peak, Math.abs(sample.velocity()));
        }
        return new Swing(stroke, mean * stroke.lengthS(), across / along, peak);
    }

    boolean moves() {
        boolean still = stroke.kind() == StrokeKind.STILL || stroke.kind() == StrokeKind.UNSEEN;
        return quick() || !still && size() > LEAST_WAY;
    }

    boolean quick() {
        return stroke.kind() == StrokeKind.TREMOLO;
    }

    double size() {
        return Math.abs(way);
    }
}
