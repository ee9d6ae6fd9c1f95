package tuttarco.tracks;

import java.util.List;
import tuttarco.seats.Player;

/**
 * One bow arm over the whole clip, in time order; a sample a frame, or fewer where frames come very quickly.
 *
 * @param signConfidence how likely it is, 0.5 to 1, that positive velocity really is towards the tip
 */
public record ArmTrack(Player player, double startS, double endS, double signConfidence, List<ArmSample> samples) {
    public ArmTrack {
        if (!(endS >= startS)) {
            throw new IllegalArgumentException("a track ends after it starts: " + startS + " to " + endS);
        }
        if (!(signConfidence >= 0.5 && signConfidence <= 1)) {
            throw new IllegalArgumentException("sign confidence lies in 0.5 to 1: " + signConfidence);
        }
        samples = List.copyOf(samples);
    }
}
