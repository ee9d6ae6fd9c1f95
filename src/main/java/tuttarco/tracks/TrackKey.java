package tuttarco.tracks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.bytedeco.javacpp.Loader;
import tuttarco.files.Sha256;
import tuttarco.seats.Place;
import tuttarco.seats.Player;

/**
 * Tells whether tracks of an earlier run are what this run would see. They depend on the clip, the seats in their order, the
 * trackers, and this program's own code and libraries; not on names, desks, part or beats.
 */
public final class TrackKey {
    private TrackKey() {}

    /**
     * The key of a section's tracks; empty if this program's own code can't be told apart from another's.
     *
     * @param videoSha256 the clip's content
     * @param trackers see {@link ArmTrackers#kind()}
     */
    public static Optional<String> of(String videoSha256, String trackers, List<Player> players) {
        try {
            StringJoiner all = new StringJoiner("\n");
            all.add(OwnCode.sha256());
            for (String library : List.of("opencv", "ffmpeg")) {
                all.add(library + " " + Loader.getVersion("org.bytedeco", library));
            }
            all.add(trackers).add(videoSha256);
            players.forEach(player -> all.add(nameless(player).toString()));
            return Optional.of(Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (IOException unknown) {
            return Optional.empty();
        }
    }

    private static Player nameless(Player player) {
        return new Player("player", 1, Place.OUTSIDE, player.instrument(), player.seat(), player.facing(), false);
    }
}
