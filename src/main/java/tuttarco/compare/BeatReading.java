package tuttarco.compare;

import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;
import tuttarco.strokes.StrokeKind;

/**
 * One player on one beat.
 *
 * @param beatIndex index of the beat in its map
 * @param marked direction of the part at this beat; empty where the part rests or says nothing
 * @param played what the player did over most of the beat
 * @param confidence how sure that is, 0 to 1
 * @param verdict against the marking
 * @param leaderVerdict against the leader; the leader against himself or herself is {@link Verdict#REST}
 */
public record BeatReading(
        Player player,
        int beatIndex,
        Beat beat,
        Optional<BowDirection> marked,
        StrokeKind played,
        double confidence,
        Verdict verdict,
        Verdict leaderVerdict) {}
