package tuttarco.tracks;

import java.util.List;

/**
 * One level of the seat's picture pyramid, and what is done on it.
 *
 * @param sidePx side of the square picture, pixels; a multiple of {@link CellFlow#GRID}
 * @param rounds how often the motion is bettered here
 * @param neighbours weights, along either side of the grid, with which a cell and its neighbours are seen as one
 */
record FlowLevel(int sidePx, int rounds, float... neighbours) {
    /**
     * From coarse to fine. The coarse level sees far and as a body, the finest almost only its own cell, since a bow hand
     * is small. Chosen on rendered scenes: without the finest level slow bows and hands half hidden are lost, more rounds
     * are no better, more neighbours on the finest level drown the hand.
     */
    static final List<FlowLevel> COARSE_TO_FINE = List.of(
            new FlowLevel(32, 2, 1, 1, 1, 1, 1, 1, 1),
            new FlowLevel(64, 1, 0.5f, 1, 0.5f),
            new FlowLevel(128, 1, 0.1f, 1, 0.1f));

    static FlowLevel finest() {
        return COARSE_TO_FINE.get(COARSE_TO_FINE.size() - 1);
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
