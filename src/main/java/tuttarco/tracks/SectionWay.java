package tuttarco.tracks;

import java.util.LinkedHashMap;
import java.util.Map;
import tuttarco.seats.Player;

/**
 * The way a down-bow leads in the picture, as seen on a player's neighbours: those who play the same instrument and face
 * alike hold it alike (common practice, no source), so that what a hidden arm does not tell, the others do.
 */
final class SectionWay {
    /** So many neighbours who all agree are as clear as a cue can be. */
    private static final double ENOUGH = 2;

    private final Map<Player, Seen> seen = new LinkedHashMap<>();

    /**
     * What a player's own poses and arm showed.
     *
     * @param facing where the chest points, as seen from above
     * @param downBow the mean way of the down-bow; the surer, the longer, up to one
     */
    record Seen(KeyPose.Way facing, KeyPose.Way downBow) {}

    void add(Player player, Seen shown) {
        seen.put(player, shown);
    }

    /**
     * The mean way on the other players of the same instrument, who count as far as they face as this one does; no
     * longer than one, shorter where they differ.
     */
    KeyPose.Way besides(Player player) {
        Seen own = seen.get(player);
        double x = 0;
        double y = 0;
        double count = 0;
        for (Map.Entry<Player, Seen> other : seen.entrySet()) {
            if (!other.getKey().equals(player) && other.getKey().instrument() == player.instrument()) {
                double alike = Math.max(0, own.facing().cosine(other.getValue().facing()));
                x += alike * other.getValue().downBow().x();
                y += alike * other.getValue().downBow().y();
                count += alike;
            }
        }
        double of = Math.max(ENOUGH, count);
        return new KeyPose.Way(x / of, y / of);
    }
}
