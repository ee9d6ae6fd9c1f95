package tuttarco.tracks;

import java.util.Arrays;

/**
 * Levels of the seat's picture pyramid from coarse to fine, and what is done on each. The coarse level sees far and the
 * body as one, the finest almost only its own cell, since a bow hand is small.
 *
 * <p>Chosen on rendered scenes: without the finest level hands half hidden are lost, more rounds are no better, more of
 * the neighbours on the finest level drown the hand.
 */
enum FlowLevel {
    COARSE(32, 2, 3, 1),
    MIDDLE(64, 1, 1, 0.5f),
    FINEST(128, 1, 1, 0.1f);

    private final int sidePx;
    private final int rounds;
    private final int reachCells;
    private final float neighbourWeight;

    FlowLevel(int sidePx, int rounds, int reachCells, float neighbourWeight) {
        this.sidePx = sidePx;
        this.rounds = rounds;
        this.reachCells = reachCells;
        this.neighbourWeight = neighbourWeight;
    }

    /** Side of the square picture, pixels; a multiple of {@link CellFlow#GRID}. */
    int sidePx() {
        return sidePx;
    }

    /** How often the motion is bettered here. */
    int rounds() {
        return rounds;
    }

    /** Weights, along either side of the grid, with which neighbours are added to a cell in the middle; their sum is 1. */
    float[] weights() {
        float[] weights = new float[2 * reachCells + 1];
        float sum = 1 + 2 * reachCells * neighbourWeight;
        Arrays.fill(weights, neighbourWeight / sum);
        weights[reachCells] = 1 / sum;
        return weights;
    }

    int cellPx() {
        return sidePx / CellFlow.GRID;
    }

    /** Border by which the picture is continued on each side, pixels: a cell may have come from there. */
    int borderPx() {
        return 3 * sidePx / 16;
    }

    /** Pixels a row, with both borders. */
    int stridePx() {
        return sidePx + 2 * borderPx();
    }
}
