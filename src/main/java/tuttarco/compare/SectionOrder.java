package tuttarco.compare;

import java.util.Comparator;
import tuttarco.seats.Player;

/** The order in which a section is listed: the leader, then desk by desk from the front, outside before inside. */
public final class SectionOrder {
    /** Orders players; players at the same place keep the order they came in. */
    public static final Comparator<Player> COMPARATOR = Comparator.comparing(Player::leader)
            .reversed()
            .thenComparingInt(Player::desk)
            .thenComparing(Player::place);

    private SectionOrder() {}
}
