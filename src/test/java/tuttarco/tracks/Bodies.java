package tuttarco.tracks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tuttarco.pose.Landmark;
import tuttarco.pose.Pose;

/**
 * Poses made by hand: a body that faces the camera, shoulders 100 px apart with their middle at (200, 100), hips 150 px
 * below, nose over the shoulders and knees over the hips until turned. Nose, shoulders, hips, knees and wrists are of use.
 */
record Bodies(
        KeyPose.Place nose,
        KeyPose.Place knees,
        KeyPose.Place leftShoulder,
        KeyPose.Place rightShoulder,
        KeyPose.Place leftHip,
        KeyPose.Place rightHip,
        KeyPose.Place leftWrist,
        KeyPose.Place rightWrist) {
    static final double SHOULDERS_PX = 100;
    static final KeyPose.Place SHOULDERS = new KeyPose.Place(200, 100);
    static final KeyPose.Place HIPS = new KeyPose.Place(200, 250);

    /** A quarter of the way from the hips to the shoulders. */
    static final KeyPose.Place BELLY = new KeyPose.Place(200, 212.5);

    /** The player's left is to the picture's right. */
    static Bodies of(KeyPose.Place leftWrist, KeyPose.Place rightWrist) {
        return new Bodies(
                SHOULDERS,
                HIPS,
                SHOULDERS.plus(SHOULDERS_PX / 2, 0),
                SHOULDERS.plus(-SHOULDERS_PX / 2, 0),
                HIPS.plus(30, 0),
                HIPS.plus(-30, 0),
                leftWrist,
                rightWrist);
    }

    /** With nose and knees moved to the picture's right. */
    Bodies aside(double nosePx, double kneesPx) {
        return new Bodies(
                nose.plus(nosePx, 0),
                knees.plus(kneesPx, 0),
                leftShoulder,
                rightShoulder,
                leftHip,
                rightHip,
                leftWrist,
                rightWrist);
    }

    /** Moved and then scaled about the picture's corner. */
    Bodies placed(double dxPx, double dyPx, double scale) {
        return new Bodies(
                placed(nose, dxPx, dyPx, scale),
                placed(knees, dxPx, dyPx, scale),
                placed(leftShoulder, dxPx, dyPx, scale),
                placed(rightShoulder, dxPx, dyPx, scale),
                placed(leftHip, dxPx, dyPx, scale),
                placed(rightHip, dxPx, dyPx, scale),
                placed(leftWrist, dxPx, dyPx, scale),
                placed(rightWrist, dxPx, dyPx, scale));
    }

    private static KeyPose.Place placed(KeyPose.Place place, double dxPx, double dyPx, double scale) {
        return new KeyPose.Place(scale * (place.xPx() + dxPx), scale * (place.yPx() + dyPx));
    }

    /** As a mirror shows it: left and right change places in the picture and in the model's eyes. */
    Bodies mirrored() {
        return new Bodies(
                mirrored(nose),
                mirrored(knees),
                mirrored(rightShoulder),
                mirrored(leftShoulder),
                mirrored(rightHip),
                mirrored(leftHip),
                mirrored(rightWrist),
                mirrored(leftWrist));
    }

    private static KeyPose.Place mirrored(KeyPose.Place place) {
        return new KeyPose.Place(2 * SHOULDERS.xPx() - place.xPx(), place.yPx());
    }

    /** With the names of left and right changed, nothing else; after a mirror, as seen from behind. */
    Bodies swapped() {
        return new Bodies(nose, knees, rightShoulder, leftShoulder, rightHip, leftHip, rightWrist, leftWrist);
    }

    KeyPose at(double timeS) {
        return at(timeS, 1, 1);
    }

    /** With the model's word for the right hand. */
    KeyPose at(double timeS, double visibility, double presence) {
        List<Landmark> landmarks = new ArrayList<>(Collections.nCopies(Pose.LANDMARKS, landmark(SHOULDERS)));
        landmarks.set(0, landmark(nose));
        landmarks.set(11, landmark(leftShoulder));
        landmarks.set(12, landmark(rightShoulder));
        landmarks.set(15, landmark(leftWrist));
        landmarks.set(16, new Landmark(rightWrist.xPx(), rightWrist.yPx(), visibility, presence));
        landmarks.set(23, landmark(leftHip));
        landmarks.set(24, landmark(rightHip));
        landmarks.set(25, landmark(knees));
        landmarks.set(26, landmark(knees));
        return new KeyPose(timeS, new Pose(landmarks, landmark(HIPS), landmark(SHOULDERS), 1));
    }

    private static Landmark landmark(KeyPose.Place place) {
        return new Landmark(place.xPx(), place.yPx(), 1, 1);
    }
}
