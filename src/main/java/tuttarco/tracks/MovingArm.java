package tuttarco.tracks;

/**
 * Finds the bow arm in a seat's cell flow: the part that moves most against the rest of the body.
 *
 * <p>The median of all cells stands for body, camera and background and is taken off; over the cells on the bow's side the
 * mean is then taken with the cube of each cell's speed as weight, so that the fast hand counts and the quiet rest does
 * not, wherever in the box the hand is just now. (On rendered scenes the square loses swaying and shaken players to the body, the
 * fourth power is no better.)
 */
final class MovingArm {
    /**
     * Share of the seat's width, from the bow's side, in which the arm is looked for. Chosen on real clips with the seat
     * box moved by up to 15 %: narrower loses the hand at the frog, wider takes a turning body for the arm.
     */
    private static final double BOW_SIDE = 0.625;

    /** Slower than this, seat heights between two frames, nothing moves: 1/50 of a working pixel. */
    private static final double NOTHING_MOVES = 0.02 / FlowLevel.FINEST.sidePx();

    private final int firstColumn;
    private final int endColumn;
    private final float[] sorted = new float[CellFlow.GRID * CellFlow.GRID];

    MovingArm(DownBow downBow) {
        int columns = (int) Math.round(BOW_SIDE * CellFlow.GRID);
        firstColumn = downBow.leadsRight() ? CellFlow.GRID - columns : 0;
        endColumn = downBow.leadsLeft() ? columns : CellFlow.GRID;
    }

    /** Motion of the arm from the cells' motion in seat heights. */
    ArmMotion in(float[] cells, double frameS) {
        int count = CellFlow.GRID * CellFlow.GRID;
        double bodyX = median(cells, 0);
        double bodyY = median(cells, count);
        double weight = 0;
        double vx = 0;
        double vy = 0;
        double px = 0;
        double py = 0;
        for (int row = 0; row < CellFlow.GRID; row++) {
            for (int column = firstColumn; column < endColumn; column++) {
                int cell = row * CellFlow.GRID + column;
                double dx = cells[cell] - bodyX;
                double dy = cells[count + cell] - bodyY;
                double squared = dx * dx + dy * dy;
                double w = squared * Math.sqrt(squared);
                weight += w;
                vx += w * dx;
                vy += w * dy;
                px += w * (column + 0.5);
                py += w * (row + 0.5);
            }
        }
        if (weight < NOTHING_MOVES * NOTHING_MOVES * NOTHING_MOVES) {
            return new ArmMotion(0, 0, 0.5, 0.5);
        }
        return new ArmMotion(
                vx / weight / frameS, vy / weight / frameS, px / weight / CellFlow.GRID, py / weight / CellFlow.GRID);
    }

    private double median(float[] cells, int from) {
        System.arraycopy(cells, from, sorted, 0, sorted.length);
        java.util.Arrays.sort(sorted);
        return 0.5 * (sorted[sorted.length / 2 - 1] + sorted[sorted.length / 2]);
    }
}
