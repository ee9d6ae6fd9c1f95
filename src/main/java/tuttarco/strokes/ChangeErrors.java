package tuttarco.strokes;

import java.util.List;
import java.util.Optional;
import tuttarco.signal.Curve;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * How uncertain the times of changes are.
 *
 * <p>By the delta method the error of a zero crossing is that of the velocity over the slope with which it crosses. The
 * noise of neighbouring samples is one and the same, since the track is smoothed over a longer time than lies between
 * them, so it does not average out. Where a change is no crossing, as between a stroke and a rest, the velocity there
 * tells how far off the crossing may be. What happens between two frames is not seen: their spacing adds the standard
 * deviation of a uniform distribution, and is all that is known beside a time in which the arm was not seen.
 *
 * <p>Reference for the delta method: G. Casella, R. L. Berger, Statistical Inference, 2nd ed. 2002, section 5.5.4.
 */
final class ChangeErrors {
    /**
     * At a change the velocity counts as off by this many of its stated deviations; chosen on rendered scenes so that
     * about 68 and 95 % of the true changes lie within one and two standard errors.
     */
    private static final double OFF_AT_CHANGES = 2.3;

    /**
     * What all changes of a player whose shoulders are {@link #SHARED_AT_PX} wide may be off by alike, seconds, and that it
     * goes down with the square of the width. Measured on the rendered scenes (157 players): pictures as they are coded show
     * the motion of small figures late.
     */
    private static final double SHARED_S = 0.012;

    private static final double SHARED_AT_PX = 20;

    /** The slope is taken from so long before to so long after a change, seconds: half the smoothing's half window. */
    private static final double SLOPE_S = 0.08;

    /** Variance of a uniform distribution of width one is 1/12. */
    private static final double UNIFORM = 1 / Math.sqrt(12);

    /** No change is less certain than if it could lie anywhere where the reader looks for it, seconds. */
    private static final double MOST_S = 2 * HiddenMarkovReader.CROSSING_REACH_S * UNIFORM;

    private final double shoulderWidthPx;
    private final List<ArmSample> samples;
    private final Optional<Curve> velocity;
    private final Optional<Curve> noise;

    ChangeErrors(ArmTrack track) {
        shoulderWidthPx = track.shoulderWidthPx();
        samples = track.samples();
        List<ArmSample.Seen> seen = samples.stream()
                .filter(ArmSample.Seen.class::isInstance)
                .map(ArmSample.Seen.class::cast)
                .toList();
        double[] timesS = seen.stream().mapToDouble(ArmSample::timeS).toArray();
        velocity = curve(
                timesS, seen.stream().mapToDouble(ArmSample.Seen::velocity).toArray());
        noise = curve(timesS, seen.stream().mapToDouble(ArmSample.Seen::noise).toArray());
    }

    private static Optional<Curve> curve(double[] timesS, double[] values) {
        return values.length == 0 ? Optional.empty() : Optional.of(new Curve(timesS, values));
    }

    /** Standard deviation of what all changes are off by alike, seconds; no part of the standard errors. */
    double sharedS() {
        return SHARED_S * Math.pow(SHARED_AT_PX / shoulderWidthPx, 2);
    }

    /** Standard error of a change at a time, seconds. */
    double standardErrorS(double timeS) {
        int after = Samples.after(samples, timeS);
        if (after == 0 || after == samples.size()) {
            return MOST_S;
        }
        ArmSample a = samples.get(after - 1);
        ArmSample b = samples.get(after);
        double betweenFramesS = UNIFORM * (b.timeS() - a.timeS());
        if (!(a instanceof ArmSample.Seen && b instanceof ArmSample.Seen)) {
            return betweenFramesS;
        }
        double offBy = Math.hypot(
                velocity.orElseThrow().at(timeS),
                OFF_AT_CHANGES * noise.orElseThrow().at(timeS));
        double slope = Math.abs(velocity.orElseThrow().slope(timeS, SLOPE_S));
        return slope == 0 ? MOST_S : Math.min(MOST_S, Math.hypot(betweenFramesS, offBy / slope));
    }
}
