package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * Where the bow hand was along the bow, summed up from its speed, stretch by stretch; a stretch ends where the arm was
 * not seen.
 *
 * <p>The sum forgets with a time constant of {@value #FORGET_S} s, so that small errors of the speed don't carry the
 * curve off the chart. It shows movement, not the absolute place on the bow.
 */
public final class BowTravel {
    /** Longer than a slow whole bow, shorter than a row of the chart (chosen on rendered scenes). */
    static final double FORGET_S = 6;

    /** A gap between samples longer than this ends a stretch; longer than a frame at 10 frames a second. */
    private static final double GAP_S = 0.25;

    /** Points closer than this are left out: about three pixels of the chart, and a smooth curve at the fastest strokes. */
    private static final double POINT_S = 1 / 26.0;

    /**
     * One point of the curve.
     *
     * @param travel shoulder widths towards the tip
     * @param error standard deviation of {@code travel} from the noise of the speed alone, same unit
     */
    public record Point(double timeS, double travel, double error) {}

    private BowTravel() {}

    /** The stretches of a track's curve, in time order. */
    public static List<List<Point>> of(ArmTrack track) {
        List<List<Point>> stretches = new ArrayList<>();
        List<ArmSample.Seen> seen = new ArrayList<>();
        for (ArmSample sample : track.samples()) {
            if (sample instanceof ArmSample.Seen now) {
                if (!seen.isEmpty() && now.timeS() - seen.get(seen.size() - 1).timeS() > GAP_S) {
                    close(seen, stretches);
                }
                seen.add(now);
            } else {
                close(seen, stretches);
            }
        }
        close(seen, stretches);
        return List.copyOf(stretches);
    }

    private static void close(List<ArmSample.Seen> seen, List<List<Point>> stretches) {
        if (seen.size() > 1) {
            stretches.add(summed(seen));
        }
        seen.clear();
    }

    private static List<Point> summed(List<ArmSample.Seen> seen) {
        List<Point> points = new ArrayList<>();
        double travel = 0;
        double variance = 0;
        double lastKeptS = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < seen.size(); i++) {
            ArmSample.Seen now = seen.get(i);
            if (i > 0) {
                ArmSample.Seen before = seen.get(i - 1);
                double stepS = now.timeS() - before.timeS();
                double kept = Math.exp(-stepS / FORGET_S);
                travel = kept * travel + stepS * (before.velocity() + now.velocity()) / 2;
                variance = kept * kept * variance + Math.pow(stepS * now.noise(), 2);
            }
            if (now.timeS() - lastKeptS >= POINT_S || i == seen.size() - 1) {
                points.add(new Point(now.timeS(), travel, Math.sqrt(variance)));
                lastKeptS = now.timeS();
            }
        }
        return List.copyOf(points);
    }
}
