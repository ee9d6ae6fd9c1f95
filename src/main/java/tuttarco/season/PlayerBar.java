package tuttarco.season;

import java.util.OptionalDouble;

/** How one player went in one bar of two takes: with the marking, or with the leader where nothing is marked. */
public record PlayerBar(String player, String bar, Tally first, Tally second) {
    /** Share of the second less that of the first; empty where one of them could not be judged. */
    public OptionalDouble difference() {
        return first.judged() == 0 || second.judged() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(second.share() - first.share());
    }
}
