package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.compare.BeatReading;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.compare.Verdict;
import tuttarco.seats.Player;

/**
 * One row of a section by beat.
 *
 * @param player empty for the marked row
 * @param cells one a beat of the map
 */
public record CellRow(Optional<Player> player, List<Cell> cells) {
    public CellRow {
        cells = List.copyOf(cells);
    }

    /** The rows of a comparison: what is marked, if that is compared with, then the players in section order. */
    public static List<CellRow> of(Comparison comparison, Against reference) {
        List<CellRow> rows = new ArrayList<>();
        if (reference == Against.MARKING) {
            List<BeatReading> any = comparison.beatReadings().get(0);
            rows.add(
                    new CellRow(Optional.empty(), any.stream().map(Cell::marked).toList()));
        }
        for (int p = 0; p < comparison.players().size(); p++) {
            List<Cell> cells = comparison.beatReadings().get(p).stream()
                    .map(r -> leads(comparison, reference, r) ? Cell.led(r) : Cell.played(r, reference))
                    .toList();
            rows.add(new CellRow(Optional.of(comparison.players().get(p)), cells));
        }
        return List.copyOf(rows);
    }

    /** Where the part rests nobody leads: a bow set anew there is no stroke to go by. */
    private static boolean leads(Comparison comparison, Against reference, BeatReading reading) {
        boolean rests = comparison.marked() && reading.verdict() == Verdict.REST;
        return reference == Against.LEADER && reading.player().leader() && !rests;
    }

    public String name() {
        return player.map(p -> Words.plain(p.label())).orElse("Marked");
    }

    /** Whether somebody of another desk sits here than in the row above. */
    public boolean beginsDeskAfter(CellRow above) {
        return above.player().map(Player::desk).orElse(0)
                < player.map(Player::desk).orElse(0);
    }
}
