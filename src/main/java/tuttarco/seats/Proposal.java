package tuttarco.seats;

import java.awt.image.BufferedImage;
import java.util.List;

/**
 * Who seems to sit where.
 *
 * @param players those who clearly bow, in order of desks; empty if nobody does
 * @param unsure seats of those who may bow or not
 * @param picture a picture of the clip, to show the seats in
 * @param notes things to tell the user, one sentence each
 */
public record Proposal(List<Player> players, List<SeatBox> unsure, BufferedImage picture, List<String> notes) {
    public Proposal {
        players = List.copyOf(players);
        unsure = List.copyOf(unsure);
        notes = List.copyOf(notes);
    }
}
