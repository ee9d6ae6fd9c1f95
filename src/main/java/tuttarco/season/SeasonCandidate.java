package tuttarco.season;

import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;

/**
 * A bar that players left in the same way in most of the takes in which it was played, so that the marking may be the trouble.
 *
 * @param beats all of the bar that were marked so, in order
 * @param takes those in which it was played as marked so and could be judged
 * @param p probability of the beat that was left most clearly, if it were left no more than other bars in most of the takes;
 *     adjusted over all beats of the season
 */
public record SeasonCandidate(String bar, List<Beat> beats, List<InTake> takes, double p) {
    /**
     * A beat of the bar.
     *
     * @param left whether it was left beyond chance
     * @param instead what those who left the bar mostly did there
     */
    public record Beat(int beat, BowDirection marked, boolean left, Optional<BowDirection> instead) {}

    /**
     * One take.
     *
     * @param take its index in the season
     * @param left labels of players who were against on one of the beats left
     * @param judged how many could be judged on one of them
     */
    public record InTake(int take, List<String> left, int judged) {
        public InTake {
            left = List.copyOf(left);
        }
    }

    public SeasonCandidate {
        beats = List.copyOf(beats);
        takes = List.copyOf(takes);
    }

    /** In how many takes somebody left. */
    public int takesLeft() {
        return (int) takes.stream().filter(t -> !t.left().isEmpty()).count();
    }

    /** How many players left, take by take. */
    public int playersLeft() {
        return takes.stream().mapToInt(t -> t.left().size()).sum();
    }

    /** How many could be judged, take by take. */
    public int playersJudged() {
        return takes.stream().mapToInt(InTake::judged).sum();
    }
}
