package tuttarco.files;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.UUID;

/**
 * Moves staged files into a folder that exists and leftovers of an earlier run out of it, all or none; what leaves the
 * folder lies in the staging until the end.
 */
final class Replacement {
    private final Path staged;
    private final Path target;
    private final List<Path> files;
    private final List<Path> leftovers;
    private final Path replaced;
    private final Deque<Staging.Move> undo = new ArrayDeque<>();

    private Replacement(Path staged, Path target, List<Path> files, List<Path> leftovers) {
        this.staged = staged;
        this.target = target;
        this.files = files;
        this.leftovers = leftovers;
        this.replaced = staged.resolve("replaced-" + UUID.randomUUID());
    }

    static Replacement of(Path staged, Path target, OwnFiles earlier) throws IOException {
        List<Path> files = FilesBelow.of(staged);
        List<Path> leftovers = earlier.unchangedIn(target).stream()
                .filter(file -> !files.contains(file))
                .toList();
        return new Replacement(staged, target, files, leftovers);
    }

    void run() throws IOException {
        try {
            for (Path file : leftovers) {
                setAside(file);
            }
            for (Path file : files) {
                replace(file);
            }
        } catch (IOException e) {
            undoAll(e);
            throw e;
        }
    }

    private void replace(Path file) throws IOException {
        Path to = target.resolve(file);
        Staging.makeFolders(to.getParent())
                .descendingIterator()
                .forEachRemaining(made -> undo.addFirst(() -> Files.delete(made)));
        if (Files.isDirectory(to)) {
            throw new FileSystemException(to.toString(), null, to + " is a folder where a file is needed");
        }
        if (Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
            setAside(file);
        }
        Files.move(staged.resolve(file), to);
        undo.addFirst(() -> Files.delete(to));
    }

    private void setAside(Path file) throws IOException {
        Path from = target.resolve(file);
        Path before = replaced.resolve(file);
        Files.createDirectories(before.getParent());
        Files.move(from, before);
        undo.addFirst(() -> Files.move(before, from));
    }

    private void undoAll(IOException cause) {
        for (Staging.Move step : undo) {
            try {
                step.run();
            } catch (IOException e) {
                cause.addSuppressed(e);
            }
        }
    }
}
