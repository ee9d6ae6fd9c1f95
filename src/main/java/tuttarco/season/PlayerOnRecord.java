package tuttarco.season;

import java.util.List;
import java.util.OptionalDouble;
import tuttarco.compare.Verdict;
import tuttarco.seats.AtDesk;
import tuttarco.seats.Place;
import tuttarco.strokes.StrokeKind;

/**
 * What one player did in a take. In another take a player is who has the same label, wherever he or she sits.
 *
 * @param played what was read, for each beat of the take
 * @param verdicts against the marking, for each beat
 * @param leaderVerdicts against the leader, for each beat
 * @param lags of the changes that could be paired with the leader's, or without a leader with the others'
 * @param smallestMs the smallest lag that may be claimed, milliseconds; empty where no lag was measured
 */
public record PlayerOnRecord(
        String label,
        int desk,
        Place place,
        boolean leader,
        List<StrokeKind> played,
        List<Verdict> verdicts,
        List<Verdict> leaderVerdicts,
        List<LagOnRecord> lags,
        OptionalDouble smallestMs)
        implements AtDesk {
    /**
     * How much later than the others' a change came, negative where earlier.
     *
     * @param beat index of the beat nearest to the others' change
     */
    public record LagOnRecord(int beat, double lagMs) {}

    public PlayerOnRecord {
        played = List.copyOf(played);
        verdicts = List.copyOf(verdicts);
        leaderVerdicts = List.copyOf(leaderVerdicts);
        lags = List.copyOf(lags);
        if (played.size() != verdicts.size() || played.size() != leaderVerdicts.size()) {
            throw new IllegalArgumentException("each beat has what was played and how it stands, not " + played.size()
                    + ", " + verdicts.size() + " and " + leaderVerdicts.size());
        }
    }

    /** The same player under another label. */
    PlayerOnRecord called(String other) {
        return new PlayerOnRecord(other, desk, place, leader, played, verdicts, leaderVerdicts, lags, smallestMs);
    }
}
