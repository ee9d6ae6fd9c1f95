package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import tuttarco.seats.Place;
import tuttarco.seats.Player;

/** Whom or what a figure is about. */
public sealed interface Scope {
    /** The sort, as files name it. */
    String sort();

    /** Whether a player belongs to it. */
    default boolean holds(Player player) {
        return true;
    }

    /** The desks and the halves of a section, by place and by desk, that are neither empty nor everybody. */
    static List<Scope> groups(List<Player> section) {
        List<Integer> desks =
                section.stream().map(Player::desk).distinct().sorted().toList();
        int lastInFront = desks.get((desks.size() - 1) / 2);
        List<Scope> groups = new ArrayList<>();
        desks.forEach(d -> groups.add(new OfDesk(d)));
        groups.addAll(List.of(
                new OfPlace(Place.OUTSIDE),
                new OfPlace(Place.INSIDE),
                new OfHalf(true, lastInFront),
                new OfHalf(false, lastInFront)));
        return groups.stream()
                .filter(g -> section.stream().anyMatch(g::holds))
                .filter(g -> !section.stream().allMatch(g::holds))
                .toList();
    }

    /** Which of its sort; empty for the whole take. */
    String name();

    /** The whole section in the whole take. */
    record Whole() implements Scope {
        @Override
        public String sort() {
            return "take";
        }

        @Override
        public String name() {
            return "";
        }
    }

    /**
     * The section in one bar as played.
     *
     * @param firstIndex index of its first beat in the beat map; {@code lastIndex} its last, inclusive
     */
    record InBar(String name, int firstIndex, int lastIndex, double startS) implements Scope {
        @Override
        public String sort() {
            return "bar";
        }
    }

    /** The players of one desk in the whole take. */
    record OfDesk(int desk) implements Scope {
        @Override
        public boolean holds(Player player) {
            return player.desk() == desk;
        }

        @Override
        public String sort() {
            return "desk";
        }

        @Override
        public String name() {
            return Integer.toString(desk);
        }
    }

    /** All inside or all outside players in the whole take. */
    record OfPlace(Place place) implements Scope {
        @Override
        public boolean holds(Player player) {
            return player.place() == place;
        }

        @Override
        public String sort() {
            return "place";
        }

        @Override
        public String name() {
            return place.word();
        }
    }

    /**
     * The front or the back half of the desks in the whole take.
     *
     * @param lastInFront number of the last desk of the front half, to which the middle one of an odd number belongs
     */
    record OfHalf(boolean front, int lastInFront) implements Scope {
        @Override
        public boolean holds(Player player) {
            return player.desk() <= lastInFront == front;
        }

        @Override
        public String sort() {
            return "desks";
        }

        @Override
        public String name() {
            return front ? "front" : "back";
        }
    }

    /** One player in the whole take. */
    record OfPlayer(Player player) implements Scope {
        @Override
        public boolean holds(Player player) {
            return this.player.equals(player);
        }

        @Override
        public String sort() {
            return "player";
        }

        @Override
        public String name() {
            return player.label();
        }
    }
}
