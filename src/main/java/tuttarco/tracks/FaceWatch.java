package tuttarco.tracks;

import java.io.IOException;
import java.util.BitSet;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.stat.descriptive.moment.VectorialCovariance;
import org.apache.commons.math3.stat.descriptive.moment.VectorialMean;
import org.apache.commons.math3.util.ResizableDoubleArray;

/**
 * Tells when something moves before a player, such as a conductor's arm, by the face: a head moves as one.
 *
 * <p>However a head is carried, turned or nodded, its cells move as a plane does: by a part common to all and parts that
 * grow evenly to the side and downwards. What remains of the cells' motion after such a fit is not the head's. What
 * moves before the face may be before the hand as well, and its motion would be read as the bow's.
 */
final class FaceWatch {
    /**
     * Cells this near to the nose show the face and what is close about it, shoulder widths; within 0.5 a real cellist's
     * own movements come near to a conductor's.
     */
    private static final double REACH = 0.4;

    /** A plane fits any three cells; of fewer than twice as many nothing is told. */
    private static final int FEWEST_CELLS = 6;

    /** Share of a head's own motion by which the flow over it errs; covers a real head that turns with the bow. */
    private static final double ERROR_SHARE = 0.2;

    /** What remains is pooled over this long to either side, seconds: about a bar, in which arms come and go. */
    private static final double POOL_S = 3;

    /**
     * More than this remains where something moves before the face, shoulder widths per second: of players who bow in
     * the open 0.093 at most (ten rendered scenes, two real clips), behind a conductor's arms 0.147 at least.
     */
    private static final double APART = 0.135;

    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    /** Square of what remains, less what the flow errs by. */
    private final ResizableDoubleArray remains = new ResizableDoubleArray();

    /**
     * Takes what moved between two frames.
     *
     * @param motion cells' motion in shoulder widths
     * @param nose where a pose last showed it
     * @param shoulderWidthPx the unit in pixels
     */
    void accept(CellFlow.Motion motion, CellFlow.Grid grid, KeyPose.Place nose, double shoulderWidthPx) {
        VectorialMean mean = new VectorialMean(2);
        VectorialCovariance spread = new VectorialCovariance(4, false);
        for (int cell = 0; cell < CellFlow.CELLS; cell++) {
            double x = (grid.xPx(cell) - nose.xPx()) / shoulderWidthPx;
            double y = (grid.yPx(cell) - nose.yPx()) / shoulderWidthPx;
            if (x * x + y * y < REACH * REACH) {
                double cellX = motion.x(cell) - motion.bodyX();
                double cellY = motion.y(cell) - motion.bodyY();
                mean.increment(new double[] {cellX, cellY});
                spread.increment(new double[] {x, y, cellX, cellY});
            }
        }
        double spanS = motion.toS() - motion.fromS();
        timesS.addElement((motion.fromS() + motion.toS()) / 2);
        remains.addElement(
                mean.getN() < FEWEST_CELLS ? 0 : (remains(spread.getResult()) - error(mean)) / (spanS * spanS));
    }

    /** Variance of the motion that a plane over the places leaves, from the covariance of places and motion. */
    private static double remains(RealMatrix spread) {
        RealMatrix ofPlaces = spread.getSubMatrix(0, 1, 0, 1);
        RealMatrix ofBoth = spread.getSubMatrix(0, 1, 2, 3);
        RealMatrix ofMotion = spread.getSubMatrix(2, 3, 2, 3);
        RealMatrix slopes = new SingularValueDecomposition(ofPlaces).getSolver().solve(ofBoth);
        return ofMotion.subtract(ofBoth.transpose().multiply(slopes)).getTrace();
    }

    private static double error(VectorialMean mean) {
        double[] common = mean.getResult();
        return ERROR_SHARE * ERROR_SHARE * (common[0] * common[0] + common[1] * common[1]);
    }

    /** In which of the motions something was before the face. */
    BitSet crossed() {
        double[] t = timesS.getElements();
        double[] square = remains.getElements();
        BitSet crossed = new BitSet();
        double sum = 0;
        int first = 0;
        int end = 0;
        for (int i = 0; i < t.length; i++) {
            while (end < t.length && t[end] <= t[i] + POOL_S) {
                sum += square[end++];
            }
            while (t[first] < t[i] - POOL_S) {
                sum -= square[first++];
            }
            crossed.set(i, sum / (end - first) > APART * APART);
        }
        return crossed;
    }

    void note(Memo memo) throws IOException {
        memo.series(timesS);
        memo.series(remains);
    }
}
