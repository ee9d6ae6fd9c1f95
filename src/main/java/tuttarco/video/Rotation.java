package tuttarco.video;

import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;

/** How far a stored picture must be turned to stand upright. */
enum Rotation {
    NONE,
    CLOCKWISE,
    HALF,
    COUNTERCLOCKWISE;

    /** FFmpeg's display rotation counts counterclockwise; only quarter turns occur in camera files. */
    static Rotation ofDegrees(double displayRotationDeg) {
        int quarters = Math.floorMod((int) Math.round(displayRotationDeg / 90), 4);
        return switch (quarters) {
            case 1 -> COUNTERCLOCKWISE;
            case 2 -> HALF;
            case 3 -> CLOCKWISE;
            default -> NONE;
        };
    }

    boolean swapsSides() {
        return this == CLOCKWISE || this == COUNTERCLOCKWISE;
    }

    /** The picture upright: itself, or turned into the other. */
    Mat upright(Mat stored, Mat turned) {
        switch (this) {
            case NONE -> {
                return stored;
            }
            case CLOCKWISE -> opencv_core.rotate(stored, turned, opencv_core.ROTATE_90_CLOCKWISE);
            case HALF -> opencv_core.rotate(stored, turned, opencv_core.ROTATE_180);
            case COUNTERCLOCKWISE -> opencv_core.rotate(stored, turned, opencv_core.ROTATE_90_COUNTERCLOCKWISE);
        }
        return turned;
    }
}
