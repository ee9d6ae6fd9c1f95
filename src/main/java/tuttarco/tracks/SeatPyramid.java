package tuttarco.tracks;

import java.util.EnumMap;
import java.util.Map;

/** A seat in one frame: its fine structure at each level, row by row with borders, in grey values about zero. */
record SeatPyramid(Map<FlowLevel, float[]> levels) {
    static SeatPyramid empty() {
        Map<FlowLevel, float[]> levels = new EnumMap<>(FlowLevel.class);
        for (FlowLevel level : FlowLevel.values()) {
            levels.put(level, new float[level.stridePx() * level.stridePx()]);
        }
        return new SeatPyramid(levels);
    }

    float[] at(FlowLevel level) {
        return levels.get(level);
    }
}
