package tuttarco.seats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.bow.Instrument;

/**
 * Puts players at desks. Rows go from the one nearest to the camera, lowest in the picture, to the farthest; in a row
 * players go two by two from the leader's side, the outside player first. The first of all leads. (A convention: sections
 * sit in many ways, and the take file can be corrected.)
 */
public final class Desks {
    /** Shoulders within this of the row's lowest are in the row, distances from hips to rim: about a shoulder width. */
    private static final double ROW = 0.4;

    private Desks() {}

    /** A player's place in the picture. */
    public record Spot(SeatBox seat, double xPx, double yPx, double radiusPx) {
        /** Where the shoulders are in a seat that was laid around them, as a share of its height; see the arms' trackers. */
        private static final double SHOULDERS = 1.2 / 3.2;

        /** Shoulder widths that such a seat is wide. */
        private static final double WIDTH = 4;

        /** The place that a seat alone tells. */
        public static Spot of(SeatBox seat) {
            return new Spot(
                    seat,
                    seat.xPx() + seat.widthPx() / 2.0,
                    seat.yPx() + SHOULDERS * seat.heightPx(),
                    seat.widthPx() / WIDTH / ROW);
        }
    }

    /** The players who sit there. */
    public static List<Player> of(List<Spot> spots, LeaderSide leaderSide, Instrument instrument) {
        List<Player> players = new ArrayList<>();
        for (Spot spot : inOrder(spots, leaderSide)) {
            int desk = desk(players.size());
            Place place = place(players.size());
            players.add(new Player(
                    label(desk, place), desk, place, instrument, spot.seat(), Optional.empty(), players.isEmpty()));
        }
        return List.copyOf(players);
    }

    /** The desk of a player, counted from 0 from the leader on. */
    public static int desk(int index) {
        return 1 + index / 2;
    }

    /** The place at that desk. */
    public static Place place(int index) {
        return index % 2 == 0 ? Place.OUTSIDE : Place.INSIDE;
    }

    /** What somebody is called of whom nothing is known but the desk. */
    public static String label(int desk, Place place) {
        return String.format(Locale.ROOT, "Desk %d %s", desk, place.word());
    }

    /** The places in the order in which they are numbered. */
    public static List<Spot> inOrder(List<Spot> spots, LeaderSide leaderSide) {
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
