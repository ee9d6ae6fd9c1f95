package tuttarco.analysis;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** The folder of real clips for tests; those that need it are skipped, and say so, where it is not given. */
final class RealClips {
    private RealClips() {}

    static Path orSkip() {
        String folder = System.getProperty("tuttarco.clips", "");
        boolean given = !folder.isBlank() && Files.isDirectory(Path.of(folder));
        if (!given) {
            System.out.println("Skipped: the real clips are checked only with -Dtuttarco.clips=DIR");
        }
        assumeTrue(given, "the real clips are checked only with -Dtuttarco.clips=DIR");
        return Path.of(folder);
    }
}
