package tuttarco.seating;

import java.util.HashMap;
import java.util.Map;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** Somebody with what the arm did. */
record Candidate(Person person, ArmTrack track, Bowing bowing) {
    /** Neighbours' seats have less in common, as a share of the smaller. */
    private static final double OVERLAP = 0.5;

    /** The same arm moves as alike in both seats; measured: 0.99 for one player found twice, 0.74 for a player's arm before
     * somebody behind. */
    private static final double ALIKE = 0.7;

    SeatBox seat() {
        return track.player().seat();
    }

    double areaPx() {
        return (double) seat().widthPx() * seat().heightPx();
    }

    /** Whether both follow one arm: in almost the same place, and moving alike. */
    boolean sameArm(Candidate other) {
        return overlap(other) > OVERLAP && Math.abs(correlation(other)) > ALIKE;
    }

    private double overlap(Candidate other) {
        SeatBox a = seat();
        SeatBox b = other.seat();
        double widthPx = Math.min(a.xPx() + a.widthPx(), b.xPx() + b.widthPx()) - Math.max(a.xPx(), b.xPx());
        double heightPx = Math.min(a.yPx() + a.heightPx(), b.yPx() + b.heightPx()) - Math.max(a.yPx(), b.yPx());
        return widthPx <= 0 || heightPx <= 0 ? 0 : widthPx * heightPx / Math.min(areaPx(), other.areaPx());
    }

    /** Of the velocities, over the times at which both were seen. */
    private double correlation(Candidate other) {
        Map<Double, Double> others = new HashMap<>();
        other.track.samples().forEach(s -> {
            if (s instanceof ArmSample.Seen seen) {
                others.put(seen.timeS(), seen.velocity());
            }
        });
        double own = 0;
        double theirs = 0;
        double common = 0;
        for (ArmSample sample : track.samples()) {
            if (sample instanceof ArmSample.Seen seen && others.containsKey(seen.timeS())) {
                double there = others.get(seen.timeS());
                own += seen.velocity() * seen.velocity();
                theirs += there * there;
                common += seen.velocity() * there;
            }
        }
        return own == 0 || theirs == 0 ? 0 : common / Math.sqrt(own * theirs);
    }
}
