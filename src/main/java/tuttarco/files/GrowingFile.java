package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A file written bit by bit by somebody else, whole or not at all: it grows under a hidden name beside its target and takes
 * the target's name when it is {@linkplain #keep() kept}. Closing removes what was not kept.
 */
public final class GrowingFile implements AutoCloseable {
    private final Path target;
    private final Staging staging;

    private GrowingFile(Path target, Staging staging) {
        this.target = target;
        this.staging = staging;
    }

    /**
     * A hidden place beside the target; missing parent folders are made.
     *
     * @throws OutputException if the target is a folder or nothing can be written beside it
     */
    public static GrowingFile besides(Path file) throws OutputException {
        Path target = file.toAbsolutePath().normalize();
        if (Files.isDirectory(target)) {
            throw Refusal.because(target, "it is a folder, name a file instead");
        }
        try {
            return new GrowingFile(target, Staging.besides(target));
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }

    /** Where to write; nothing is there yet. */
    public Path path() {
        return staging.path();
    }

    /**
     * Gives the file its name in one step, replacing what was there.
     *
     * @throws OutputException if that can't be done; what was there before is then still there
     */
    public void keep() throws OutputException {
        try {
            staging.keep(() -> Files.move(
                    staging.path(), target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING));
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }

    @Override
    public void close() throws OutputException {
        try {
            staging.close();
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }
}
