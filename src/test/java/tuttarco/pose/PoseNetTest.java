package tuttarco.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.junit.jupiter.api.Test;

/** The way from picture to crop and back, in closed form; any picture will do, whatever the model takes it for. */
class PoseNetTest {
    private static final Crop CROP = new Crop(70, 90, 128);

    /**
     * The full and the lite model of npm package @mediapipe/pose 0.5.1675469404; sha256sum of the unpacked files
     * pose_landmark_full.tflite and pose_landmark_lite.tflite.
     */
    private static final Set<String> CHECKED = Set.of(
            "e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f",
            "f17bfbecadb61c3be1baa8b8d851cc6619c870a87167b32848ad20db306b9d61");

    @Test
    void theModelIsOneThatWasChecked() {
        String packed = PackedModel.orSkip().sha256();
        assertTrue(CHECKED.contains(packed), packed);
    }

    @Test
    void aMovedPictureGivesAMovedPoseAndOutsideThePictureIsBlack() {
        try (PoseNet net = PackedModel.orSkip().net();
                Mat picture = blobs(140, 180);
                Mat wider = new Mat(300, 400, opencv_core.CV_8UC1, new Scalar(0));
                Mat inside = new Mat(wider, new Rect(100, 60, 140, 180))) {
            picture.copyTo(inside);
            // this crop runs past the left edge of the picture
            Crop crop = new Crop(20, 90, 128);
            Pose pose = net.estimate(picture, crop);
            Pose moved = net.estimate(wider, new Crop(120, 150, 128));
            assertEquals(Pose.LANDMARKS, pose.landmarks().size());
            for (int i = 0; i < Pose.LANDMARKS; i++) {
                Landmark was = pose.landmarks().get(i);
                Landmark is = moved.landmarks().get(i);
                assertEquals(was.xPx() + 100, is.xPx(), 1e-6);
                assertEquals(was.yPx() + 60, is.yPx(), 1e-6);
                assertEquals(was.visibility(), is.visibility(), 1e-9);
            }
            assertEquals(pose.person(), moved.person(), 1e-9);
        }
    }

    @Test
    void aPictureTwiceAsLargeGivesAPoseTwiceAsLarge() {
        try (PoseNet net = PackedModel.orSkip().net();
                Mat picture = blobs(140, 180);
                Mat twice = new Mat();
                Size size = new Size(280, 360)) {
            opencv_imgproc.resize(picture, twice, size, 0, 0, opencv_imgproc.INTER_LINEAR);
            Pose pose = net.estimate(picture, CROP);
            Pose large = net.estimate(twice, new Crop(140, 180, 256));
            double bound = 0.01 * CROP.sidePx();
            assertTrue(pose.shoulderWidthPx() > 0);
            for (int i = 0; i < Pose.LANDMARKS; i++) {
                assertEquals(
                        pose.landmarks().get(i).xPx(), large.landmarks().get(i).xPx() / 2, bound);
                assertEquals(
                        pose.landmarks().get(i).yPx(), large.landmarks().get(i).yPx() / 2, bound);
            }
        }
    }

    @Test
    void anEmptyPictureShowsNobody() {
        try (PoseNet net = PackedModel.orSkip().net();
                Mat empty = new Mat(180, 140, opencv_core.CV_8UC1, new Scalar(90))) {
            assertTrue(net.estimate(empty, CROP).person() < 0.1);
        }
    }

    /** Smooth random shades. */
    private static Mat blobs(int widthPx, int heightPx) {
        Random random = new Random(5);
        try (Mat coarse = new Mat(8, 6, opencv_core.CV_8UC1);
                Size size = new Size(widthPx, heightPx)) {
            try (UByteIndexer at = coarse.createIndexer()) {
                for (int y = 0; y < 8; y++) {
                    for (int x = 0; x < 6; x++) {
                        at.put(y, x, random.nextInt(256));
                    }
                }
            }
            Mat picture = new Mat();
            opencv_imgproc.resize(coarse, picture, size, 0, 0, opencv_imgproc.INTER_CUBIC);
            return picture;
        }
    }
}
