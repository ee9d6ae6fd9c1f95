package tuttarco.tracks;

import java.util.Optional;

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

    /** Slower than this, shoulder widths between two frames, nothing moves: about 1/50 of a working pixel. */
    private static final double NOTHING_MOVES = 0.0005;

    private final int firstColumn;
    private final int endColumn;

    /**
     * @param downBow tells the bow's side; without it the arm is looked for on both
     */
    MovingArm(Optional<DownBow> downBow) {
        int columns = (int) Math.round(BOW_SIDE * CellFlow.GRID);
        firstColumn = downBow.filter(DownBow::leadsRight).isPresent() ? CellFlow.GRID - columns : 0;
        endColumn = downBow.filter(DownBow::leadsLeft).isPresent() ? columns : CellFlow.GRID;
    }

    /** Motion of the arm from the cells' motion in shoulder widths. */
    ArmMotion in(CellFlow.Motion motion) {
        double weight = 0;
        double vx = 0;
        double vy = 0;
        double px = 0;
        double py = 0;
        for (int row = 0; row < CellFlow.GRID; row++) {
            for (int column = firstColumn; column < endColumn; column++) {
                int cell = row * CellFlow.GRID + column;
                double dx = motion.x(cell) - motion.bodyX();
                double dy = motion.y(cell) - motion.bodyY();
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
        double frameS = motion.toS() - motion.fromS();
        return new ArmMotion(
                vx / weight / frameS, vy / weight / frameS, px / weight / CellFlow.GRID, py / weight / CellFlow.GRID);
    }
}
