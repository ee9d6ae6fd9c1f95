package tuttarco.files;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where programs keep what they could compute again for a user.
 *
 * <p>Reference: XDG Base Directory Specification 0.8, freedesktop.org; on macOS and Windows the place customary there is
 * taken unless the variable of that specification is set.
 */
public final class UserFolders {
    private static final String OWN = "tuttarco";

    private UserFolders() {}

    /** The program's cache folder of the user who runs it; empty if the system names no home. */
    public static Optional<Path> cache() {
        return cache(System.getProperty("os.name"), System.getenv(), System.getProperty("user.home"));
    }

    static Optional<Path> cache(String system, Map<String, String> environment, String home) {
        Optional<Path> chosen = absolute(environment.get("XDG_CACHE_HOME"));
        if (chosen.isPresent()) {
            return chosen.map(folder -> folder.resolve(OWN));
        }
        String name = system.toLowerCase(Locale.ROOT);
        Optional<Path> customary;
        if (name.startsWith("windows")) {
            customary = absolute(environment.get("LOCALAPPDATA"));
        } else {
            customary = absolute(home).map(own -> own.resolve(name.startsWith("mac") ? "Library/Caches" : ".cache"));
        }
        return customary.map(folder -> folder.resolve(OWN));
    }

    /** Relative paths are to be ignored, as the specification says. */
    private static Optional<Path> absolute(String path) {
        return Optional.ofNullable(path).filter(p -> !p.isBlank()).map(Path::of).filter(Path::isAbsolute);
    }
}
