package tuttarco.tracks;

import java.util.List;
import java.util.Optional;
import tuttarco.seats.Player;
import tuttarco.video.Shot;

/**
 * One bow arm over the whole clip, in time order; a sample a frame, or fewer where frames come very quickly.
 *
 * @param body what poses showed of the player, where they did
 * @param shots what the clip was cut together from, in time order; each has a sample and no movement goes on from
 *     one to the next
 */
public record ArmTrack(
        Player player, double startS, double endS, List<ArmSample> samples, Optional<Body> body, List<Shot> shots) {
    public ArmTrack {
        if (!(endS >= startS)) {
            throw new IllegalArgumentException("a track ends after it starts: " + startS + " to " + endS);
        }
        samples = List.copyOf(samples);
        shots = List.copyOf(shots);
    }

    /** A track of a clip that is one shot. */
    public ArmTrack(Player player, double startS, double endS, List<ArmSample> samples, Optional<Body> body) {
        this(player, startS, endS, samples, body, List.of(Shot.FIRST));
    }

    /** A track without poses. */
    public ArmTrack(Player player, double startS, double endS, List<ArmSample> samples) {
        this(player, startS, endS, samples, Optional.empty());
    }

    /** When a shot begins after one time and not after the other, seconds; empty if none does. */
    public Optional<Double> cutBetween(double fromS, double toS) {
        return shots.stream()
                .skip(1)
                .map(Shot::startS)
                .filter(cutS -> fromS < cutS && cutS <= toS)
                .findFirst();
    }

    /** The hand that bows as the picture shows it, where the player's body was seen. */
    public Optional<Hand> bowHand() {
        return body.map(Body::bowHand);
    }

    /** The player's shoulder width, pixels: as poses showed it, or else as the seat has room for. */
    public double shoulderWidthPx() {
        return body.map(Body::shoulderWidthPx).orElseGet(() -> FlowArmTracker.shoulderWidthPx(player.seat()));
    }
}
