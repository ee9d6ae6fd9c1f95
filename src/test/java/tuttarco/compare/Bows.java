package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Players, and what can happen to a reading. */
public final class Bows {
    /** No reading has shorter strokes than this after jitter, seconds. */
    private static final double SHORTEST_S = 0.01;

    private Bows() {}

    public static Player player(String label, int desk, Place place, boolean leader) {
        return new Player(
                label, desk, place, Instrument.VIOLA, new SeatBox(0, 0, 100, 100), Optional.of(Facing.CAMERA), leader);
    }

    static Player player(String label) {
        return player(label, 2, Place.INSIDE, false);
    }

    static Player leader() {
        return player("leader", 1, Place.OUTSIDE, true);
    }

    static Reading reading(Player player, List<Stroke> strokes) {
        return new Reading(player, strokes);
    }

    /** Late by {@code lagS}; still before. */
    static List<Stroke> late(List<Stroke> strokes, double lagS) {
        List<Stroke> late = new ArrayList<>(Spans.shifted(strokes, lagS));
        Stroke first = late.get(0);
        late.set(0, new Stroke(first.startS() - lagS, first.endS(), first.kind(), first.confidence()));
        return late;
    }

    /** The other direction between two times. */
    static List<Stroke> turned(List<Stroke> strokes, double startS, double endS) {
        return during(
                strokes,
                startS,
                endS,
                kind -> kind.direction().map(d -> StrokeKind.of(d.opposite())).orElse(kind));
    }

    static List<Stroke> as(StrokeKind kind, List<Stroke> strokes, double startS, double endS) {
        return during(strokes, startS, endS, before -> kind);
    }

    /** Bowing between two times read as something else, or the other way round, and so sure; rests are left. */
    static List<Stroke> read(
            List<Stroke> strokes,
            double startS,
            double endS,
            boolean wrong,
            Optional<StrokeKind> what,
            double confidence) {
        return during(
                strokes,
                startS,
                endS,
                kind -> kind.direction()
                        .map(d -> what.orElse(StrokeKind.of(wrong ? d.opposite() : d)))
                        .orElse(kind),
                before -> confidence);
    }

    /** Every boundary moved by a normal deviate, seconds. */
    static List<Stroke> jittered(List<Stroke> strokes, double sdS, Random random) {
        List<Stroke> jittered = new ArrayList<>();
        double startS = strokes.get(0).startS();
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            boolean last = i + 1 == strokes.size();
            double endS = last ? stroke.endS() : stroke.endS() + sdS * random.nextGaussian();
            double laterS = Math.max(endS, startS + SHORTEST_S);
            jittered.add(new Stroke(startS, laterS, stroke.kind(), stroke.confidence()));
            startS = laterS;
        }
        return jittered;
    }

    private static List<Stroke> during(
            List<Stroke> strokes, double startS, double endS, UnaryOperator<StrokeKind> change) {
        return during(strokes, startS, endS, change, UnaryOperator.identity());
    }

    private static List<Stroke> during(
            List<Stroke> strokes,
            double startS,
            double endS,
            UnaryOperator<StrokeKind> change,
            UnaryOperator<Double> sure) {
        List<Stroke> pieces = new ArrayList<>();
        for (Stroke s : strokes) {
            add(pieces, s.startS(), Math.min(s.endS(), startS), s.kind(), s.confidence());
            double confidence = sure.apply(s.confidence());
            add(pieces, Math.max(s.startS(), startS), Math.min(s.endS(), endS), change.apply(s.kind()), confidence);
            add(pieces, Math.max(s.startS(), endS), s.endS(), s.kind(), s.confidence());
        }
        return pieces;
    }

    /** Adds a piece, as part of the one before where that is of the same kind. */
    private static void add(List<Stroke> pieces, double startS, double endS, StrokeKind kind, double confidence) {
        if (!(endS > startS)) {
            return;
        }
        Stroke before = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
        if (before != null && before.kind() == kind) {
            pieces.set(pieces.size() - 1, new Stroke(before.startS(), endS, kind, confidence));
        } else {
            pieces.add(new Stroke(startS, endS, kind, confidence));
        }
    }
}
