package tuttarco.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import tuttarco.bow.Instrument;
import tuttarco.seats.Desks;
import tuttarco.seats.Facing;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * Who sits where, and who may be a player or not. Every change gives a new one in which at most one leads and each is
 * called otherwise.
 *
 * @param doubtful seats of those who may bow or not; they are no players until they are taken
 */
public record Seats(List<Player> players, List<SeatBox> doubtful) {
    public Seats {
        players = List.copyOf(players);
        doubtful = List.copyOf(doubtful);
    }

    /** The seat of a player moved or resized. */
    Seats withSeat(int index, SeatBox seat) {
        return with(
                index, p -> new Player(p.label(), p.desk(), p.place(), p.instrument(), seat, p.facing(), p.leader()));
    }

    /** Called so; the label must be nobody else's. */
    Seats named(int index, String label) {
        return with(
                index, p -> new Player(label, p.desk(), p.place(), p.instrument(), p.seat(), p.facing(), p.leader()));
    }

    Seats withInstrument(int index, Instrument instrument) {
        return with(
                index, p -> new Player(p.label(), p.desk(), p.place(), instrument, p.seat(), p.facing(), p.leader()));
    }

    /** All play this. */
    Seats withInstrument(Instrument instrument) {
        Seats changed = this;
        for (int i = 0; i < players.size(); i++) {
            changed = changed.withInstrument(i, instrument);
        }
        return changed;
    }

    Seats facing(int index, Optional<Facing> facing) {
        return with(
                index, p -> new Player(p.label(), p.desk(), p.place(), p.instrument(), p.seat(), facing, p.leader()));
    }

    /** Leads, and nobody else does; or leads no longer. */
    Seats led(int index, boolean leads) {
        List<Player> changed = new ArrayList<>();
        for (int i = 0; i < players.size(); i++) {
            changed.add(leading(
                    players.get(i),
                    leads ? i == index : i != index && players.get(i).leader()));
        }
        return new Seats(changed, doubtful);
    }

    /** Sits there; whoever sat there takes the place that is left. */
    Seats sitting(int index, int desk, Place place) {
        Player moved = players.get(index);
        List<Player> changed = new ArrayList<>(players);
        for (int i = 0; i < players.size(); i++) {
            Player other = players.get(i);
            if (i != index && other.desk() == desk && other.place() == place) {
                changed.set(i, at(other, moved.desk(), moved.place()));
            }
        }
        changed.set(index, at(moved, desk, place));
        return new Seats(inOrderOfDesks(calledApart(changed)), doubtful);
    }

    /** One more player, at the first place that is free; the first of all leads. */
    Seats added(SeatBox seat, Instrument instrument) {
        int free = 0;
        while (sits(Desks.desk(free), Desks.place(free))) {
            free++;
        }
        int desk = Desks.desk(free);
        Place place = Desks.place(free);
        List<Player> more = new ArrayList<>(players);
        more.add(new Player(
                Desks.label(desk, place), desk, place, instrument, seat, Optional.empty(), players.isEmpty()));
        return new Seats(inOrderOfDesks(calledApart(more)), doubtful);
    }

    private boolean sits(int desk, Place place) {
        return players.stream().anyMatch(p -> p.desk() == desk && p.place() == place);
    }

    Seats without(int index) {
        List<Player> fewer = new ArrayList<>(players);
        fewer.remove(index);
        return new Seats(fewer, doubtful);
    }

    Seats withoutDoubt(int index) {
        List<SeatBox> fewer = new ArrayList<>(doubtful);
        fewer.remove(index);
        return new Seats(players, fewer);
    }

    /** Who may be a player is one. */
    Seats taken(int doubt, Instrument instrument) {
        return withoutDoubt(doubt).added(doubtful.get(doubt), instrument);
    }

    /** All who may be players are. */
    Seats allTaken(Instrument instrument) {
        Seats all = this;
        while (!all.doubtful.isEmpty()) {
            all = all.taken(0, instrument);
        }
        return all;
    }

    /** Numbered by where they sit in the picture, from the row in front and the leader's side on; the leader stays first. */
    Seats numberedByPlace(LeaderSide side) {
        List<SeatBox> order = Desks.inOrder(
                        players.stream().map(p -> Desks.Spot.of(p.seat())).toList(), side)
                .stream()
                .map(Desks.Spot::seat)
                .toList();
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < players.size(); i++) {
            indices.add(i);
        }
        indices.sort(Comparator.<Integer, Boolean>comparing(i -> !players.get(i).leader())
                .thenComparing(i -> order.indexOf(players.get(i).seat())));
        return numbered(indices);
    }

    /** Numbered in this order, two at a desk and the outside player first; who is not in it follows as before. The first leads. */
    Seats numbered(List<Integer> first) {
        List<Integer> order = new ArrayList<>(first);
        for (int i = 0; i < players.size(); i++) {
            if (!order.contains(i)) {
                order.add(i);
            }
        }
        List<Player> numbered = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            Player player = players.get(order.get(i));
            numbered.add(leading(at(player, Desks.desk(i), Desks.place(i)), i == 0));
        }
        return new Seats(calledApart(numbered), doubtful);
    }

    /** At a desk; a player who is called by the desk is called by the new one. */
    private static Player at(Player p, int desk, Place place) {
        String label = isCalledByDesk(p) ? Desks.label(desk, place) : p.label();
        return new Player(label, desk, place, p.instrument(), p.seat(), p.facing(), p.leader());
    }

    /** Whether nobody gave the player a name. */
    static boolean isCalledByDesk(Player p) {
        return p.label().equals(Desks.label(p.desk(), p.place()));
    }

    private static Player leading(Player p, boolean leads) {
        return new Player(p.label(), p.desk(), p.place(), p.instrument(), p.seat(), p.facing(), leads);
    }

    private Seats with(int index, UnaryOperator<Player> change) {
        List<Player> changed = new ArrayList<>(players);
        changed.set(index, change.apply(players.get(index)));
        return new Seats(changed, doubtful);
    }

    private static List<Player> inOrderOfDesks(List<Player> players) {
        return players.stream()
                .sorted(Comparator.comparingInt(Player::desk).thenComparing(Player::place))
                .toList();
    }

    /** Given names stay; who is called by the desk as somebody is by name gets a number. */
    private static List<Player> calledApart(List<Player> players) {
        Set<String> names = new HashSet<>();
        players.stream().filter(p -> !isCalledByDesk(p)).map(Player::label).forEach(names::add);
        List<Player> apart = new ArrayList<>();
        for (Player p : players) {
            String label = p.label();
            if (isCalledByDesk(p)) {
                for (int number = 2; !names.add(label); number++) {
                    label = p.label() + " (" + number + ")";
                }
            }
            apart.add(new Player(label, p.desk(), p.place(), p.instrument(), p.seat(), p.facing(), p.leader()));
        }
        return apart;
    }
}
