package tuttarco.review;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFolder;
import tuttarco.take.BeatsGiven;

/** Copies a take with the files it names to another folder, whole or not at all. */
final class TakeCopy {
    private static final int CHUNK_BYTES = 1 << 20;

    private TakeCopy() {}

    /**
     * Copies the video, and where it exists the take's file with whatever else it names.
     *
     * @return what to open there
     * @throws InputException if a file of that name lies there already, or the take hangs on another take
     * @throws InterruptedException if the thread was interrupted
     */
    static Path of(Draft draft, Path folder) throws InputException, OutputException, InterruptedException {
        Path from = draft.file().getParent();
        Path to = folder.toAbsolutePath().normalize();
        boolean saved = Files.exists(draft.file());
        Set<Path> files = new LinkedHashSet<>();
        files.add(draft.video());
        if (saved) {
            files.add(draft.file());
            draft.part().ifPresent(files::add);
            draft.over().ifPresent(files::add);
            beats(draft).ifPresent(files::add);
        }
        for (Path file : files) {
            Path copy = to.resolve(from.relativize(file));
            if (Files.exists(copy)) {
                throw new InputException(InputBytes.name(copy) + " lies in " + InputBytes.name(to)
                        + " already, and nothing was written over it; open it there, or choose another folder.");
            }
        }
        WholeFolder.write(to, inside -> {
            for (Path file : files) {
                copy(file, inside.resolve(from.relativize(file)));
            }
        });
        return to.resolve(from.relativize(saved ? draft.file() : draft.video()));
    }

    private static Optional<Path> beats(Draft draft) throws InputException {
        BeatsGiven source = draft.beats() instanceof BeatsGiven.Anchored anchored ? anchored.source() : draft.beats();
        if (source instanceof BeatsGiven.Carried) {
            throw new InputException(InputBytes.name(draft.file())
                    + " takes its beats from another take; copy the whole folder to a place where you may write.");
        }
        return source.file();
    }

    /** In pieces, so that it can be stopped. */
    private static void copy(Path from, Path to) throws IOException, InterruptedException {
        Files.createDirectories(to.getParent());
        byte[] chunk = new byte[CHUNK_BYTES];
        try (InputStream in = Files.newInputStream(from);
                OutputStream out = Files.newOutputStream(to)) {
            for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("copying was stopped");
                }
                out.write(chunk, 0, read);
            }
        }
    }
}
