package tuttarco.pose;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import tuttarco.files.Sha256;

/**
 * The trained model that finds a person's joints, packed into the program where the build could fetch it: the landmark
 * model of MediaPipe Pose (see NOTICE.txt beside it).
 *
 * <p>Reference: V. Bazarevsky et al., BlazePose: On-device real-time body pose tracking, CVPR workshop 2020.
 */
public final class PoseModel {
    private static final String RESOURCE = "pose_landmark.tflite";

    private final byte[] bytes;

    private PoseModel(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The model; empty if the program was built without it. */
    public static Optional<PoseModel> installed() {
        try (InputStream in = PoseModel.class.getResourceAsStream(RESOURCE)) {
            return in == null ? Optional.empty() : Optional.of(new PoseModel(in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException("the pose model can't be read from the program's own files", e);
        }
    }

    /** A net of its own for each thread that estimates poses. */
    public PoseNet net() {
        // OpenCV sets its importer up when it is first used, and not safely for two threads at a time
        synchronized (PoseModel.class) {
            return new PoseNet(bytes);
        }
    }

    /** Tells which model it is. */
    public String sha256() {
        return Sha256.of(bytes);
    }
}
