package tuttarco.seating;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import tuttarco.pose.Pose;

/**
 * Somebody, or what the model takes for somebody, at one place over the whole clip.
 *
 * @param seen how each of a few pictures, in the order of time, shows the person; empty where it does not
 */
record Person(List<Optional<Pose>> seen) {
    /** Share of the pictures that must show a person: one who walks past is in few. */
    private static final double LASTING = 0.5;

    Person {
        seen = List.copyOf(seen);
    }

    List<Pose> poses() {
        return seen.stream().flatMap(Optional::stream).toList();
    }

    boolean stays() {
        return poses().size() > LASTING * seen.size();
    }

    /** How certain it is that this is a person, 0 to 1: over all pictures. */
    double certainty() {
        return poses().stream().mapToDouble(Pose::person).sum() / seen.size();
    }

    boolean sameAs(Person other) {
        return mostly(other, Pose::sameAs);
    }

    boolean handOf(Person other) {
        return mostly(other, Pose::handOf);
    }

    /** Whether something holds in half of the pictures that show both, or more. */
    private boolean mostly(Person other, BiPredicate<Pose, Pose> holds) {
        List<Boolean> each = IntStream.range(0, seen.size())
                .filter(i -> seen.get(i).isPresent() && other.seen.get(i).isPresent())
                .mapToObj(i ->
                        holds.test(seen.get(i).orElseThrow(), other.seen.get(i).orElseThrow()))
                .toList();
        return !each.isEmpty() && 2 * each.stream().filter(h -> h).count() >= each.size();
    }
}
