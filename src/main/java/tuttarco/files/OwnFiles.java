package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Files that a run wrote into a folder, as it noted them. The note may have been edited since, and so may the files.
 *
 * @param sha256 by the file's path within the folder, with forward slashes
 */
public record OwnFiles(Map<String, String> sha256) {
    public static final OwnFiles NONE = new OwnFiles(Map.of());

    public OwnFiles {
        sha256 = Map.copyOf(sha256);
    }

    /** All files in the folder and below. */
    public static OwnFiles in(Path folder) throws IOException {
        Map<String, String> sha256 = new TreeMap<>();
        for (Path file : FilesBelow.of(folder)) {
            sha256.put(file.toString().replace('\\', '/'), Sha256.read(folder.resolve(file)));
        }
        return new OwnFiles(sha256);
    }

    /** Those of the noted files that still are what was noted, relative to the folder; none outside it or behind a link. */
    List<Path> unchangedIn(Path folder) throws IOException {
        Path real = folder.toRealPath();
        return sha256.keySet().stream()
                .sorted()
                .flatMap(name -> unchanged(real, name).stream())
                .map(real::relativize)
                .toList();
    }

    private Optional<Path> unchanged(Path folder, String name) {
        try {
            Path file = folder.resolve(name);
            boolean within = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && file.startsWith(folder)
                    && file.toRealPath().equals(file);
            return within && Sha256.read(file).equals(sha256.get(name)) ? Optional.of(file) : Optional.empty();
        } catch (IOException | InvalidPathException notOurs) {
            return Optional.empty();
        }
    }
}
