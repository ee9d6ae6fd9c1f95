package tuttarco.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where programs keep what they could compute again for a user, and what they remember of how they were used.
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
        return folder("XDG_CACHE_HOME", new Customary("Library/Caches", ".cache"), system, environment, home);
    }

    /** The folder for what the program remembers of its use; empty if the system names no home. */
    public static Optional<Path> state() {
        return state(System.getProperty("os.name"), System.getenv(), System.getProperty("user.home"));
    }

    static Optional<Path> state(String system, Map<String, String> environment, String home) {
        Customary customary = new Customary("Library/Application Support", ".local/state");
        return folder("XDG_STATE_HOME", customary, system, environment, home);
    }

    /** The folder for what users make themselves, if they have one: Documents in the home. */
    public static Optional<Path> documents() {
        return absolute(System.getProperty("user.home"))
                .map(home -> home.resolve("Documents"))
                .filter(Files::isDirectory);
    }

    /** Folders below the home. */
    private record Customary(String mac, String elsewhere) {}

    private static Optional<Path> folder(
            String variable, Customary customary, String system, Map<String, String> environment, String home) {
        Optional<Path> chosen = absolute(environment.get(variable));
        if (chosen.isPresent()) {
            return chosen.map(folder -> folder.resolve(OWN));
        }
        String name = system.toLowerCase(Locale.ROOT);
        Optional<Path> folder;
        if (name.startsWith("windows")) {
            folder = absolute(environment.get("LOCALAPPDATA"));
        } else {
            folder = absolute(home)
                    .map(own -> own.resolve(name.startsWith("mac") ? customary.mac() : customary.elsewhere()));
        }
        return folder.map(found -> found.resolve(OWN));
    }

    /** Relative paths are to be ignored, as the specification says. */
    private static Optional<Path> absolute(String path) {
        return Optional.ofNullable(path).filter(p -> !p.isBlank()).map(Path::of).filter(Path::isAbsolute);
    }
}
