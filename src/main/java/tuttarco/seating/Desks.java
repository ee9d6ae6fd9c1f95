package tuttarco.seating;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * Puts players at desks. Rows go from the one nearest to the camera, lowest in the picture, to the farthest; in a row
 * players go two by two from the leader's side, the outside player first. The first of all leads. (A convention: sections
 * sit in many ways, and the take file can be corrected.)
 */
final class Desks {
    /** Shoulders within this of the row's lowest are in the row, distances from hips to rim: about a shoulder width. */
    private static final double ROW = 0.4;

    private Desks() {}

    /** A player's place in the picture. */
    record Spot(SeatBox seat, double xPx, double yPx, double radiusPx) {}

    static List<Player> of(List<Spot> spots, LeaderSide leaderSide, Instrument instrument) {
        List<Player> players = new ArrayList<>();
        for (Spot spot : inOrder(spots, leaderSide)) {
            int desk = 1 + players.size() / 2;
            Place place = players.size() % 2 == 0 ? Place.OUTSIDE : Place.INSIDE;
            players.add(new Player(
                    String.format(Locale.ROOT, "Desk %d %s", desk, place.word()),
                    desk,
                    place,
                    instrument,
                    spot.seat(),
                    Optional.empty(),
                    players.isEmpty()));
        }
        return List.copyOf(players);
    }

    private static List<Spot> inOrder(List<Spot> spots, LeaderSide leaderSide) {
        Comparator<Spot> across = Comparator.comparingDouble(Spot::xPx);
        List<Spot> left = new ArrayList<>(spots);
        left.sort(Comparator.comparingDouble(Spot::yPx).reversed().thenComparing(across));
        List<Spot> ordered = new ArrayList<>();
        while (!left.isEmpty()) {
            Spot lowest = left.get(0);
            List<Spot> row = left.stream()
                    .filter(s -> lowest.yPx() - s.yPx() <= ROW * lowest.radiusPx())
                    .sorted(leaderSide == LeaderSide.LEFT ? across : across.reversed())
                    .toList();
            ordered.addAll(row);
            left.removeAll(row);
        }
        return ordered;
    }
}
