package tuttarco.tracks;

import java.util.List;
import java.util.Optional;
import tuttarco.seats.Player;

/**
 * One bow arm over the whole clip, in time order; a sample a frame, or fewer where frames come very quickly.
 *
 * @param bowHand the hand that bows as the picture shows it, where the player's body was seen
 */
public record ArmTrack(Player player, double startS, double endS, List<ArmSample> samples, Optional<Hand> bowHand) {
    public ArmTrack {
        if (!(endS >= startS)) {
            throw new IllegalArgumentException("a track ends after it starts: " + startS + " to " + endS);
        }
        samples = List.copyOf(samples);
    }

    /** A track that does not tell which hand bows. */
    public ArmTrack(Player player, double startS, double endS, List<ArmSample> samples) {
        this(player, startS, endS, samples, Optional.empty());
    }
}
