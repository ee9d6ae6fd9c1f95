package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files in a folder and below; folders that are only linked to are left out. */
public final class FilesBelow {
    private FilesBelow() {}

    /** They, relative to the folder, in order; a file is the only one of itself. */
    public static List<Path> of(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile)
                    .map(folder::relativize)
                    .sorted()
                    .toList();
        }
    }
}
