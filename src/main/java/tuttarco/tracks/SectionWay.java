package tuttarco.tracks;

import java.util.LinkedHashMap;
import java.util.Map;
import tuttarco.seats.Player;

/**
 * The way a down-bow leads in the picture, as seen on a player's neighbours: those who play the same instrument in one
 * section sit much alike (common practice, no source), so that what a hidden arm does not tell, the others do.
 */
final class SectionWay {
    /** So many neighbours who all agree are as clear as a cue can be. */
    private static final double ENOUGH = 2;

    private final Map<Player, KeyPose.Way> seen = new LinkedHashMap<>();

    /**
     * Tells what a player's own arm showed.
     *
     * @param way the mean way of the down-bow; the surer, the longer, up to one
     */
    void add(Player player, KeyPose.Way way) {
        seen.put(player, way);
    }

    /** The mean way on the other players of the same instrument; no longer than one, shorter where they differ. */
    KeyPose.Way besides(Player player) {
        double x = 0;
        double y = 0;
        int count = 0;
        for (Map.Entry<Player, KeyPose.Way> other : seen.entrySet()) {
            if (!other.getKey().equals(player) && other.getKey().instrument() == player.instrument()) {
                x += other.getValue().x();
                y += other.getValue().y();
                count++;
            }
        }
        double of = Math.max(ENOUGH, count);
        return new KeyPose.Way(x / of, y / of);
    }
}
