package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.bow.BowDirection;
import tuttarco.seats.Player;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * A player of whom it is known what he or she did in a {@link Passage}.
 *
 * @param turned beats played the other way round
 * @param lagS how late, seconds
 */
public record SimulatedPlayer(Player player, List<Beats> turned, double lagS, boolean free) {
    /** Beats of a passage by index, both inclusive. */
    public record Beats(int first, int last) {}

    public static SimulatedPlayer with(Player player) {
        return new SimulatedPlayer(player, List.of(), 0, false);
    }

    public SimulatedPlayer turned(int first, int last) {
        List<Beats> more = new ArrayList<>(turned);
        more.add(new Beats(first, last));
        return new SimulatedPlayer(player, List.copyOf(more), lagS, free);
    }

    public SimulatedPlayer late(double byS) {
        return new SimulatedPlayer(player, turned, byS, free);
    }

    public SimulatedPlayer bowingFreely() {
        return new SimulatedPlayer(player, turned, lagS, true);
    }

    /** Does as the other, so many beats later, but finds back at the same time. */
    public SimulatedPlayer following(SimulatedPlayer other, int beatsLater) {
        List<Beats> later = other.turned.stream()
                .map(b -> new Beats(b.first() + beatsLater, b.last()))
                .toList();
        return new SimulatedPlayer(player, later, lagS, free);
    }

    /** What the player did. */
    public List<Stroke> played(Passage passage, Random random) {
        List<Stroke> strokes = free ? freely(passage, random) : passage.asMarked();
        for (Beats beats : turned) {
            strokes = Bows.turned(strokes, passage.beatStartS(beats.first()), passage.beatStartS(beats.last() + 1));
        }
        return lagS == 0 ? strokes : Bows.late(strokes, lagS);
    }

    /** What would be read of it, with the errors of one of those measured. */
    public Reading read(Passage passage, List<MeasuredErrors> errors, Random random) {
        return Bows.reading(player, errors.get(random.nextInt(errors.size())).on(played(passage, random), random));
    }

    /** Strokes of a quarter second to two seconds, at random, through rests too. */
    private static List<Stroke> freely(Passage passage, Random random) {
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke(0, Passage.START_S, StrokeKind.STILL, 1));
        BowDirection direction = random.nextBoolean() ? BowDirection.DOWN : BowDirection.UP;
        double timeS = Passage.START_S;
        while (timeS < passage.endS()) {
            double untilS = Math.min(passage.endS(), timeS + 0.25 + 1.75 * random.nextDouble());
            if (untilS > timeS) {
                strokes.add(new Stroke(timeS, untilS, StrokeKind.of(direction), 0.95));
            }
            direction = direction.opposite();
            timeS = untilS;
        }
        strokes.add(new Stroke(passage.endS(), passage.endS() + 1, StrokeKind.STILL, 1));
        return strokes;
    }
}
