package tuttarco.pose;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Optional;

/** The pose model for tests; those that need it are skipped, and say so, where the build could not fetch it. */
public final class PackedModel {
    private PackedModel() {}

    public static PoseModel orSkip() {
        Optional<PoseModel> model = PoseModel.installed();
        if (model.isEmpty()) {
            System.out.println("Skipped: the pose model could not be fetched by the build");
        }
        assumeTrue(model.isPresent(), "the pose model could not be fetched by the build");
        return model.get();
    }
}
