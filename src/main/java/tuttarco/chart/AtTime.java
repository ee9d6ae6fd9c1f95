package tuttarco.chart;

import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparison;
import tuttarco.compare.Divergence.Against;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.tracks.ArmTrack;
import tuttarco.tracks.Hand;

/**
 * What is shown of each player at any time: the way the bow goes then, and how the beat it falls in was judged. So the sign
 * turns with the bow, also within a beat, and the agreement is the same as in the section by beat. A change that comes a little
 * after the beat, as little as passes for together, is shown with the beat.
 */
public final class AtTime {
    private final BeatMap beats;
    private final List<Line> lines;

    /** One player: what was read, and one cell a beat. */
    private record Line(Player player, Reading reading, BowSide side, List<Cell> cells) {}

    /** One player at a time. */
    public record Shown(Player player, BowSide side, Cell cell) {}

    /**
     * @param reference what the section is compared with
     * @param readings of every player compared
     * @param tracks what the readings were read from
     */
    public AtTime(Comparison comparison, Against reference, List<Reading> readings, List<ArmTrack> tracks) {
        beats = comparison.beats();
        lines = CellRow.of(comparison, reference).stream()
                .flatMap(row ->
                        row.player().stream().map(p -> new Line(p, reading(readings, p), side(tracks, p), row.cells())))
                .toList();
    }

    private static BowSide side(List<ArmTrack> tracks, Player player) {
        Optional<Hand> bowHand = tracks.stream()
                .filter(t -> t.player().label().equals(player.label()))
                .findFirst()
                .flatMap(ArmTrack::bowHand);
        return BowSide.of(bowHand, player.facing());
    }

    private static Reading reading(List<Reading> readings, Player player) {
        return readings.stream()
                .filter(r -> r.player().equals(player))
                .findFirst()
                .orElseThrow();
    }

    /** All players in section order. */
    public List<Shown> at(double timeS) {
        Optional<Integer> beat = beats.indexAt(timeS);
        return lines.stream().map(line -> shown(line, beat, timeS)).toList();
    }

    private Shown shown(Line line, Optional<Integer> beat, double timeS) {
        Optional<Stroke> stroke = line.reading().at(timeS).map(s -> turning(line, s, beat, timeS));
        Optional<Cell> judged = beat.map(line.cells()::get);
        Cell cell = stroke.map(s -> cell(s, judged)).orElse(new Cell(Cell.State.UNSEEN, Optional.empty()));
        return new Shown(line.player(), line.side(), cell);
    }

    /** The stroke that is taken for the beat's: where a stroke from before the beat ends within the tolerance, the next. */
    private Stroke turning(Line line, Stroke stroke, Optional<Integer> beat, double timeS) {
        double startS = beat.map(b -> beats.beats().get(b).timeS()).orElse(timeS);
        boolean ends = stroke.startS() < startS && stroke.endS() - startS <= CompareSettings.DEFAULT.toleranceS();
        return beat.isPresent() && ends ? line.reading().at(stroke.endS()).orElse(stroke) : stroke;
    }

    private static Cell cell(Stroke stroke, Optional<Cell> judged) {
        Cell.State state = switch (stroke.kind()) {
            case DOWN, UP -> judged.map(AtTime::bowing).orElse(Cell.State.SHOWN);
            case TREMOLO, UNSURE -> Cell.State.UNSURE;
            case STILL -> Cell.State.EMPTY;
            case ABSENT -> Cell.State.ABSENT;
            case UNSEEN -> Cell.State.UNSEEN;
        };
        return new Cell(state, stroke.kind().direction(), stroke.source());
    }

    /** A bow that is seen to go some way, in a beat judged as a whole. */
    private static Cell.State bowing(Cell beat) {
        return switch (beat.state()) {
            case WITH, AGAINST -> beat.state();
            case UNSURE, UNSEEN -> Cell.State.UNSURE;
            case SHOWN, ABSENT, EMPTY -> Cell.State.SHOWN;
        };
    }
}
