package tuttarco.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The XDG Base Directory Specification 0.8: $XDG_CACHE_HOME if it is set, not empty and absolute, else $HOME/.cache. The
 * folders of macOS and Windows are common practice (no source). Paths are written as on Unix.
 */
@DisabledOnOs(OS.WINDOWS)
class UserFoldersTest {
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            Linux,      /c, -,  /home/ida,  /c/tuttarco
            Linux,      -,  -,  /home/ida,  /home/ida/.cache/tuttarco
            Linux,      '', -,  /home/ida,  /home/ida/.cache/tuttarco
            Linux,      c,  -,  /home/ida,  /home/ida/.cache/tuttarco
            FreeBSD,    -,  -,  /home/ida,  /home/ida/.cache/tuttarco
            Mac OS X,   -,  -,  /Users/ida, /Users/ida/Library/Caches/tuttarco
            Mac OS X,   /c, -,  /Users/ida, /c/tuttarco
            Windows 11, -,  /l, /Users/ida, /l/tuttarco
            Windows 11, /c, /l, /Users/ida, /c/tuttarco
            """)
    void theFolderIsTheCustomaryOne(String system, String xdg, String local, String home, String folder) {
        Map<String, String> environment = new HashMap<>();
        environment.put("XDG_CACHE_HOME", xdg);
        environment.put("LOCALAPPDATA", local);
        assertEquals(Optional.of(Path.of(folder)), UserFolders.cache(system, environment, home));
    }

    /** The specification's default is $HOME/.local/state. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            Linux,      /s, -,  /home/ida,  /s/tuttarco
            Linux,      -,  -,  /home/ida,  /home/ida/.local/state/tuttarco
            Linux,      s,  -,  /home/ida,  /home/ida/.local/state/tuttarco
            Mac OS X,   -,  -,  /Users/ida, /Users/ida/Library/Application Support/tuttarco
            Windows 11, -,  /l, /Users/ida, /l/tuttarco
            """)
    void whatIsRememberedLiesInTheCustomaryPlace(String system, String xdg, String local, String home, String folder) {
        Map<String, String> environment = new HashMap<>();
        environment.put("XDG_STATE_HOME", xdg);
        environment.put("LOCALAPPDATA", local);
        assertEquals(Optional.of(Path.of(folder)), UserFolders.state(system, environment, home));
    }

    @Test
    void whoHasNoHomeHasNoCache() {
        assertEquals(Optional.empty(), UserFolders.cache("Linux", Map.of(), "?"));
        assertEquals(Optional.empty(), UserFolders.cache("Windows 11", Map.of(), "/Users/ida"));
    }
}
