package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a set of files whole or not at all. */
public final class WholeFolder {
    private WholeFolder() {}

    /**
     * Has the files written to a hidden folder and then puts them in place. A folder that did not exist appears in one
     * step, its missing parents with it. In a folder that exists only files of the same name are replaced and all others
     * are left alone. After a failure, or when the program is interrupted, everything is as it was before.
     *
     * @param dir the folder the files shall be in afterwards
     * @throws OutputException if {@code dir} can't be written
     * @throws InterruptedException if the contents were interrupted
     */
    public static void write(Path dir, FolderContents contents) throws OutputException, InterruptedException {
        write(dir, OwnFiles.NONE, contents);
    }

    /**
     * As {@link #write(Path, FolderContents)}, and files of an earlier run that this one does not write again are taken
     * away in the same step, unless somebody changed them.
     *
     * @param earlier what the earlier run noted; it is not trusted further than that
     */
    public static void write(Path dir, OwnFiles earlier, FolderContents contents)
            throws OutputException, InterruptedException {
        Path target = dir.toAbsolutePath().normalize();
        requireNoFile(dir);
        boolean exists = Files.isDirectory(target);
        try (Staging staging = exists ? Staging.within(target) : Staging.besides(target)) {
            Files.createDirectory(staging.path());
            contents.writeTo(staging.path());
            if (exists) {
                Replacement replacement = Replacement.of(staging.path(), target, earlier);
                staging.keep(replacement::run);
            } else {
                staging.keep(() -> Files.move(staging.path(), target, StandardCopyOption.ATOMIC_MOVE));
            }
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }

    /** Refuses a place where a file is in the way, so that nobody computes for long what can't be written then. */
    public static void requireNoFile(Path dir) throws OutputException {
        for (Path at = dir.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
            if (Files.exists(at) && !Files.isDirectory(at)) {
                throw Refusal.because(at, "it is a file, name a folder instead");
            }
        }
    }
}
