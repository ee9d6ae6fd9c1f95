package tuttarco.tracks;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tuttarco.pose.Pose;
import tuttarco.seats.SeatBox;

/** The seat of a person who was seen at several times. */
public final class BodySeat {
    private BodySeat() {}

    /** The part of the picture in which the arms move, about where the person mostly is. */
    public static SeatBox of(List<Pose> poses, int pictureWidthPx, int pictureHeightPx) {
        List<KeyPose> keys = poses.stream().map(pose -> new KeyPose(0, pose)).toList();
        KeyPose.Place middle = new KeyPose.Place(
                median(keys, k -> k.shoulders().xPx()),
                median(keys, k -> k.shoulders().yPx()));
        return new BodyRegion(middle, median(keys, KeyPose::shoulderWidthPx)).box(pictureWidthPx, pictureHeightPx);
    }

    private static double median(List<KeyPose> keys, ToDoubleFunction<KeyPose> value) {
        double[] sorted = keys.stream().mapToDouble(value).sorted().toArray();
        return Arrays.stream(sorted, (sorted.length - 1) / 2, sorted.length / 2 + 1)
                .average()
                .orElseThrow();
    }
}
