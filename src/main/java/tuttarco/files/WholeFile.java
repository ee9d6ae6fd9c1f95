package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Puts the bytes in the file, replacing what was there; missing parent folders are made. The bytes are written beside
     * the file first and moved in place in one step, so nobody ever sees half of them.
     *
     * @throws OutputException if the file can't be written; what was there before is then still there
     */
    public static void write(Path file, byte[] bytes) throws OutputException {
        Path target = file.toAbsolutePath().normalize();
        if (Files.isDirectory(target)) {
            throw Refusal.because(target, "it is a folder, name a file instead");
        }
        try (Staging staging = Staging.besides(target)) {
            Files.write(staging.path(), bytes);
            staging.keep(() -> Files.move(
                    staging.path(), target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING));
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }
}
