package tuttarco.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.chart.BowTravel;
import tuttarco.chart.Spots;
import tuttarco.report.AnalysedTake;
import tuttarco.seats.Player;
import tuttarco.strokes.Bow;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Stroke;

/**
 * One player's bow over the whole clip.
 *
 * @param curve how the bow hand travelled, stretch by stretch
 * @param bows as they were read or set by hand, in time order
 * @param against when the player was away from what the section is compared with
 * @param mostTravel the farthest the curve goes to either side, shoulder widths
 */
public record BowLine(
        Player player,
        List<List<BowTravel.Point>> curve,
        List<Bow> bows,
        List<Stretch> against,
        BeatMap beats,
        double endS,
        double mostTravel) {
    /** At least so much is shown to either side, shoulder widths, so that the tremble of a resting arm stays small (as in charts). */
    private static final double LEAST_TRAVEL = 0.1;

    /** The line of a player, empty if nobody of this name was read. */
    public static Optional<BowLine> of(AnalysedTake take, String label) {
        return take.travel(label)
                .flatMap(curve -> take.bows().stream()
                        .filter(b -> b.player().label().equals(label))
                        .findFirst()
                        .map(bows -> of(take, bows, curve)));
    }

    private static BowLine of(AnalysedTake take, Bows bows, List<List<BowTravel.Point>> curve) {
        BeatMap beats = take.comparison().beats();
        Player player = bows.player();
        return new BowLine(
                player,
                curve,
                bows.bows(),
                Spots.of(player, take.comparison().divergences(), take.reference()).stream()
                        .map(d -> new Stretch(d.first().timeS(), beats.endS(d.lastIndex())))
                        .toList(),
                beats,
                take.endS(),
                curve.stream()
                        .flatMap(List::stream)
                        .mapToDouble(p -> Math.abs(p.travel()))
                        .reduce(LEAST_TRAVEL, Math::max));
    }

    /** Whether a stroke lies for the most part where the player was away. */
    public boolean against(Stroke stroke) {
        double middleS = (stroke.startS() + stroke.endS()) / 2;
        return against.stream().anyMatch(s -> s.holds(middleS));
    }

    /** What can be moved, in time order: changes of this bow, or beats, where bars are known. */
    public List<Mark> marks(Mark.Kind kind) {
        return switch (kind) {
            case CHANGE ->
                IntStream.range(0, bows.size() - 1)
                        .mapToObj(i -> Mark.between(
                                kind,
                                i,
                                bows.get(i).stroke().startS(),
                                bows.get(i).stroke().endS(),
                                bows.get(i + 1).stroke().endS()))
                        .toList();
            case BEAT -> beats.inBars() ? beatMarks() : List.of();
        };
    }

    private List<Mark> beatMarks() {
        List<Beat> all = beats.beats();
        return IntStream.range(0, all.size())
                .mapToObj(i -> Mark.between(
                        Mark.Kind.BEAT,
                        i,
                        i == 0 ? 0 : all.get(i - 1).timeS(),
                        all.get(i).timeS(),
                        i + 1 == all.size() ? endS : all.get(i + 1).timeS()))
                .toList();
    }

    /** The mark nearest to a time; empty if there is none. */
    public Optional<Mark> nearest(Mark.Kind kind, double timeS) {
        return marks(kind).stream().min(Comparator.comparingDouble(m -> Math.abs(m.timeS() - timeS)));
    }

    /** The next mark after a time, or before it; empty if there is none. */
    public Optional<Mark> next(Mark.Kind kind, double timeS, boolean back) {
        return marks(kind).stream()
                .filter(m -> back ? m.timeS() < timeS : m.timeS() > timeS)
                .min(Comparator.comparingDouble(m -> Math.abs(m.timeS() - timeS)));
    }
}
