package tuttarco.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.Stroke;

/**
 * What signs of a section by beat mean.
 *
 * @param cells the signs, as they stand in the section
 * @param words what they mean
 */
public record SignKey(List<Cell> cells, String words) {
    public SignKey {
        cells = List.copyOf(cells);
    }

    /** The signs of what was read. */
    public static List<SignKey> ofReadings() {
        return List.of(
                new SignKey(cells(Cell.State.WITH), "down and up, with"),
                new SignKey(cells(Cell.State.AGAINST), "against"),
                new SignKey(
                        Stream.concat(
                                        cells(Cell.State.UNSURE).stream(),
                                        Stream.of(new Cell(Cell.State.UNSURE, Optional.empty())))
                                .toList(),
                        "unsure; ? of which way"),
                new SignKey(List.of(new Cell(Cell.State.UNSEEN, Optional.empty())), "not seen"));
    }

    /** The signs of what somebody set. */
    public static List<SignKey> byHand() {
        return List.of(
                new SignKey(
                        List.of(new Cell(Cell.State.WITH, Optional.of(BowDirection.UP), Stroke.Source.BY_HAND)),
                        "set by hand"),
                new SignKey(
                        List.of(new Cell(Cell.State.ABSENT, Optional.empty(), Stroke.Source.BY_HAND)),
                        "not there, as set by hand"));
    }

    private static List<Cell> cells(Cell.State state) {
        return Stream.of(BowDirection.DOWN, BowDirection.UP)
                .map(way -> new Cell(state, Optional.of(way)))
                .toList();
    }
}
