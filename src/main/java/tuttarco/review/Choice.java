package tuttarco.review;

import java.util.Optional;

/**
 * What the leader looks at: the same in the picture, the section by beat, the rehearsal list and the bow's curve.
 *
 * @param player the label of a player, if one is chosen
 * @param timeS seconds from the clip's start
 */
public record Choice(Optional<String> player, double timeS) {
    public static final Choice START = new Choice(Optional.empty(), 0);

    public Choice at(double otherS) {
        return new Choice(player, otherS);
    }

    public Choice of(Optional<String> other) {
        return new Choice(other, timeS);
    }
}
