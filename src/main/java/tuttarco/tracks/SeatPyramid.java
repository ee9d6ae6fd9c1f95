package tuttarco.tracks;

import java.util.List;

/**
 * A seat in one frame: its fine structure at each of {@link FlowLevel#COARSE_TO_FINE}, row by row with borders, in grey
 * values about zero.
 */
record SeatPyramid(List<float[]> coarseToFine) {
    static SeatPyramid empty() {
        return new SeatPyramid(FlowLevel.COARSE_TO_FINE.stream()
                .map(level -> new float[level.stridePx() * level.stridePx()])
                .toList());
    }
}
