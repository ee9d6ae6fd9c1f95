package tuttarco.compare;

import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * One player on one beat.
 *
 * @param beatIndex index of the beat in its map
 * @param marked direction of the part at this beat, or that begins within it; empty where the part rests or says nothing
 * @param played what the player did for most of the time that stroke sounds in the beat; where nothing is marked, for most
 *     of the beat. A constant delay to the marking is taken off
 * @param confidence probability, 0 to 1, that a verdict {@link Verdict#WITH} or {@link Verdict#AGAINST} the marking is
 *     right; with any other verdict, that {@code played} is
 * @param source where {@code played} comes from
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
        Stroke.Source source,
        Verdict verdict,
        Verdict leaderVerdict) {}
