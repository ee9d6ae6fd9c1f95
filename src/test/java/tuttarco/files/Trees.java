package tuttarco.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What lies in a folder. */
final class Trees {
    private Trees() {}

    /** Every file and folder below, hidden ones too, relative and sorted, with forward slashes. */
    static List<String> below(Path root) throws IOException {
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(p -> !p.equals(root))
                    .map(p -> root.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
