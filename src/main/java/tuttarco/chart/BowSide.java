package tuttarco.chart;

import java.util.Optional;
import tuttarco.seats.Facing;
import tuttarco.tracks.Hand;

/** On which side of a player the bow hand is in the picture. */
public enum BowSide {
    LEFT,
    RIGHT;

    /**
     * @param bowHand as the picture shows it; the right where no pose was seen
     * @param facing where the chest points; to the camera where that is not known
     */
    public static BowSide of(Optional<Hand> bowHand, Optional<Facing> facing) {
        boolean left = bowHand.equals(Optional.of(Hand.LEFT));
        boolean away = facing.map(Facing::away).orElse(false);
        return left == away ? LEFT : RIGHT;
    }
}
