package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder of what could be computed again: one file an entry, named for its key. Several programs may use it at a time. The
 * folder is made when something is first written; only its owner may look into it.
 */
public final class Cache {
    /** What all entries together may take, bytes: hours of clips. */
    private static final long LARGEST_BYTES = 500_000_000;

    /** A half-written entry this old was left behind by a program that was killed. */
    private static final Duration ABANDONED = Duration.ofHours(1);

    private static final Pattern ENTRY = Pattern.compile("[0-9a-f]{64}\\.entry");
    static final String UNFINISHED = ".unfinished-";

    private final Path folder;
    private final long largestBytes;

    public Cache(Path folder) {
        this(folder, LARGEST_BYTES);
    }

    Cache(Path folder, long largestBytes) {
        this.folder = folder.toAbsolutePath().normalize();
        this.largestBytes = largestBytes;
    }

    /**
     * The place of one entry, filled or not.
     *
     * @param key a SHA-256 in lower-case hexadecimal
     */
    public CacheEntry entry(String key) {
        String name = key + ".entry";
        if (!ENTRY.matcher(name).matches()) {
            throw new IllegalArgumentException("not a SHA-256: " + key);
        }
        return new CacheEntry(this, key, folder.resolve(name));
    }

    Path folder() {
        return folder;
    }

    void makeFolder() throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] ownersOnly = posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
        Files.createDirectories(folder, ownersOnly);
    }

    /** Removes what was longest not used until the rest fits, but not what was just written. */
    void makeRoom(Path justWritten) throws IOException {
        long sum = 0;
        for (Stored stored : lastUsedFirst()) {
            boolean abandoned =
                    stored.unfinished() && stored.used().isBefore(Instant.now().minus(ABANDONED));
            sum += stored.bytes();
            if (abandoned || !stored.unfinished() && !stored.file().equals(justWritten) && sum > largestBytes) {
                sum -= stored.bytes();
                remove(stored.file());
            }
        }
    }

    /** Removes a file, unless another program holds it: a later one will. */
    static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException held) {
            return;
        }
    }

    private List<Stored> lastUsedFirst() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Cache::isOwn)
                    .map(Stored::of)
                    .sorted(Comparator.comparing(Stored::used).reversed())
                    .toList();
        }
    }

    private static boolean isOwn(Path file) {
        String name = file.getFileName().toString();
        return ENTRY.matcher(name).matches() || name.startsWith(UNFINISHED);
    }

    private record Stored(Path file, long bytes, Instant used) {
        static Stored of(Path file) {
            try {
                return new Stored(
                        file, Files.size(file), Files.getLastModifiedTime(file).toInstant());
            } catch (IOException takenAway) {
                // by another program just now
                return new Stored(file, 0, Instant.MAX);
            }
        }

        boolean unfinished() {
            return file.getFileName().toString().startsWith(UNFINISHED);
        }
    }
}
