package tuttarco.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import tuttarco.files.Cache;
import tuttarco.files.UserFolders;

/** Where arm tracks are kept for another run; the same for all commands that read arms. */
final class CacheOption {
    @ArgGroup
    private Choice choice = new Choice();

    private static final class Choice {
        @Option(
                names = "--cache",
                paramLabel = "DIR",
                description = "The folder where the tracks of arms are kept, so that another run need not follow them"
                        + " again and one that was stopped goes on; if not given, the user's cache folder.")
        private Optional<Path> folder = Optional.empty();

        @Option(names = "--no-cache", description = "Keep no tracks, and use none.")
        private boolean none;
    }

    Optional<Cache> cache() {
        return choice.none
                ? Optional.empty()
                : choice.folder.or(UserFolders::cache).map(Cache::new);
    }
}
