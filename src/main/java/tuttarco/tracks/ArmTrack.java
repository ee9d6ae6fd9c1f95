package tuttarco.tracks;

import java.util.List;
import tuttarco.seats.Player;

/**
 * One bow arm over the whole clip, in time order; a sample a frame, or fewer where frames come very quickly.
 */
public record ArmTrack(Player player, double startS, double endS, List<ArmSample> samples) {
    public ArmTrack {
        if (!(endS >= startS)) {
            throw new IllegalArgumentException("a track ends after it starts: " + startS + " to " + endS);
        }
        samples = List.copyOf(samples);
    }
}
