package tuttarco.pose;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.seats.SeatBox;

public final class PersonFinder {
    public static final double A_PERSON = 0.5;

    private PersonFinder() {}

    public static Optional<Pose> find(PoseNet net, Mat grey, SeatBox s) {
        Pose best = null;
        double bs = 0;
        for (double k : new double[] {0.3, 0.6, 0.9})
            for (double sc : new double[] {1.3, 2.0, 2.8}) {
                Crop c = new Crop(s.xPx() + s.widthPx() / 2.0, s.yPx() + k * s.heightPx(), sc * s.heightPx());
                Pose p = net.estimate(grey, c);
                for (int i = 0; i < 2 && p.person() > 0.2; i++) p = net.estimate(grey, Crop.around(p));
                Landmark n = p.nose();
                boolean in = n.xPx() > s.xPx() - .2 * s.widthPx()
                        && n.xPx() < s.xPx() + 1.2 * s.widthPx()
                        && n.yPx() > s.yPx() - .4 * s.heightPx()
                        && n.yPx() < s.yPx() + .8 * s.heightPx();
                double score = p.person() * (in ? 1 : .1);
                if (score > bs) {
                    bs = score;
                    best = p;
                }
            }
        return bs > .5 ? Optional.of(best) : Optional.empty();
    }
}
