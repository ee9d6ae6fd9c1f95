package tuttarco.take;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.UserFolders;

/**
 * A take's file as one who works on it knows it: what somebody else wrote there in between is not written over. Written
 * otherwise but with the same content counts as the same.
 */
public final class TakeOnDisk {
    /** All who write takes on this machine write one after the other. */
    private static final Object ONE_AT_A_TIME = new Object();

    private static final String LOCK = "saving.lock";

    private final Path file;
    private Optional<String> known;

    private TakeOnDisk(Path file, Optional<String> known) {
        this.file = file;
        this.known = known;
    }

    /**
     * A file that holds what was read there.
     *
     * @param held empty if there was no file
     * @throws OutputException if one of the take's files lies outside the folder of {@code file}
     */
    public static TakeOnDisk holding(Path file, Optional<Take> held) throws OutputException {
        return new TakeOnDisk(file, held.isPresent() ? Optional.of(text(held.get(), file)) : Optional.empty());
    }

    /**
     * Writes the take, whole or not at all.
     *
     * @throws ChangedElsewhereException if the file holds something else than was last read or written here; it is left so
     * @throws OutputException if it can't be written
     */
    public void write(Take take) throws OutputException, ChangedElsewhereException {
        String text = text(take, file);
        synchronized (ONE_AT_A_TIME) {
            Optional<Path> folder = UserFolders.state();
            if (folder.isEmpty()) {
                writeOver(take, text);
                return;
            }
            try {
                Files.createDirectories(folder.get());
                try (RandomAccessFile lock =
                                new RandomAccessFile(folder.get().resolve(LOCK).toFile(), "rw");
                        FileLock held = lock.getChannel().lock()) {
                    writeOver(take, text);
                }
            } catch (IOException noLockHere) {
                writeOver(take, text);
            }
        }
    }

    private void writeOver(Take take, String text) throws OutputException, ChangedElsewhereException {
        if (Files.exists(file)) {
            Optional<String> there = there();
            if (there.isEmpty() || !(there.equals(known) || there.get().equals(text))) {
                throw new ChangedElsewhereException(file);
            }
        }
        TakeFile.write(take, file);
        known = Optional.of(text);
    }

    /** What the file says, in the layout in which takes are written; empty if that is no take. */
    private Optional<String> there() throws OutputException {
        try {
            String there = new String(InputBytes.read(file, TakeFile.MOST_BYTES), StandardCharsets.UTF_8);
            return Optional.of(known.filter(there::equals).isPresent() ? there : text(TakeFile.read(file), file));
        } catch (InputException e) {
            return Optional.empty();
        }
    }

    private static String text(Take take, Path file) throws OutputException {
        return TakeJson.of(take, file.toAbsolutePath().normalize().getParent());
    }

    /** Somebody else changed the file in the meantime. The message is one sentence for the user. */
    public static final class ChangedElsewhereException extends Exception {
        private static final long serialVersionUID = 1L;

        ChangedElsewhereException(Path file) {
            super(InputBytes.name(file)
                    + " was changed elsewhere since it was last read or saved here, so it was left as"
                    + " it is; take what the file holds now, or save yours under another name.");
        }
    }
}
