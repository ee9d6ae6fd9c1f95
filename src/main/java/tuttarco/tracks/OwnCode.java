package tuttarco.tracks;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.security.CodeSource;
import java.util.List;
import java.util.stream.Stream;
import tuttarco.files.Sha256;

/** Tells this program's way of tracking from that of another version: by its code, so that no number need be raised. */
final class OwnCode {
    /** The rooms that tracks depend on. */
    private static final List<String> ROOMS = List.of("bow", "pose", "seats", "signal", "tracks", "video");

    private OwnCode() {}

    /** Fingerprint of all classes that tracks depend on. */
    static String sha256() throws IOException {
        CodeSource source = OwnCode.class.getProtectionDomain().getCodeSource();
        if (source == null) {
            throw new IOException("nobody knows where this program's code lies");
        }
        try {
            Path place = Path.of(source.getLocation().toURI());
            if (Files.isDirectory(place)) {
                return sha256(place);
            }
            try (FileSystem jar = FileSystems.newFileSystem(place)) {
                return sha256(jar.getPath("/"));
            }
        } catch (URISyntaxException
                | IllegalArgumentException
                | FileSystemNotFoundException
                | ProviderNotFoundException e) {
            throw new IOException("this program's code can't be read", e);
        }
    }

    private static String sha256(Path root) throws IOException {
        StringBuilder all = new StringBuilder();
        for (String room : ROOMS) {
            List<Path> classes;
            try (Stream<Path> files = Files.walk(root.resolve("tuttarco").resolve(room))) {
                classes = files.filter(file -> file.toString().endsWith(".class"))
                        .sorted()
                        .toList();
            }
            for (Path file : classes) {
                all.append(file.getFileName())
                        .append(' ')
                        .append(Sha256.of(Files.readAllBytes(file)))
                        .append('\n');
            }
        }
        return Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8));
    }
}
