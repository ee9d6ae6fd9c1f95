package tuttarco.take;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tuttarco.score.PartChoice;
import tuttarco.seats.Player;

/**
 * One playing of a passage: the video, who is seen in it, what was on the stand and where the beats lie.
 *
 * @param file the take file this was read from; the other paths are already resolved against its folder
 * @param title what the take is called in the report
 * @param part the part with its bowing, MusicXML or bow text; without one the section is compared with its leader only
 * @param partChoice which of the parts in that file, and how it is played
 * @param over bow text of single bars written over the part
 * @param day when it was played, as somebody wrote it down
 */
public record Take(
        Path file,
        String title,
        Path video,
        List<Player> players,
        Optional<Path> part,
        PartChoice partChoice,
        Optional<Path> over,
        BeatsGiven beats,
        Bowing bowing,
        Optional<LocalDate> day) {
    public Take {
        players = List.copyOf(players);
        if (players.isEmpty()) {
            throw new IllegalArgumentException("a take has at least one player");
        }
        if (players.stream().filter(Player::leader).count() > 1) {
            throw new IllegalArgumentException("a section has one leader, not two");
        }
        if (players.stream().map(Player::label).distinct().count() < players.size()) {
            throw new IllegalArgumentException("each player has a label of his or her own");
        }
    }

    /** A take of whose part no choice is made, over which nothing is written, and whose day is not. */
    public Take(
            Path file,
            String title,
            Path video,
            List<Player> players,
            Optional<Path> part,
            BeatsGiven beats,
            Bowing bowing) {
        this(file, title, video, players, part, PartChoice.DEFAULT, Optional.empty(), beats, bowing, Optional.empty());
    }

    public Optional<Player> leader() {
        return players.stream().filter(Player::leader).findFirst();
    }
}
