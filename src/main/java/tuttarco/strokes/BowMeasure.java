package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tuttarco.signal.Curve;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * Measures how much bow each stroke took: the integral of the velocity over the stroke. Strokes that are too short or
 * too unclear are not measured, and none is if too many are unclear. Where in the bow they lay: {@link BowStretch}.
 *
 * <p>All constants were chosen on the rendered scenes.
 */
final class BowMeasure {
    /** Of shorter strokes the length read was less than half of the true one, seconds. */
    private static final double SHORTEST_S = 0.35;

    /** The velocity's noise is at most this share of the stroke's speed, both root mean square. */
    private static final double MOST_NOISE = 0.1;

    /** At least this share of a player's strokes that are long enough is clear, or none is believed. */
    private static final double LEAST_CLEAR = 0.6;

    private final List<ArmSample.Seen> samples;

    private BowMeasure(List<ArmSample.Seen> samples) {
        this.samples = samples;
    }

    /** The use of the bow in each of the spans that were read from a track. */
    static List<BowUse> of(ArmTrack track, List<Stroke> strokes) {
        return new BowMeasure(track.samples().stream()
                        .filter(ArmSample.Seen.class::isInstance)
                        .map(ArmSample.Seen.class::cast)
                        .toList())
                .uses(strokes);
    }

    private List<BowUse> uses(List<Stroke> strokes) {
        List<Optional<BowUse.Reason>> troubles =
                strokes.stream().map(this::trouble).toList();
        List<Stroke> clear = new ArrayList<>();
        int unclear = 0;
        for (int i = 0; i < strokes.size(); i++) {
            if (troubles.get(i).isEmpty()) {
                clear.add(strokes.get(i));
            } else if (troubles.get(i).get() == BowUse.Reason.UNCLEAR) {
                unclear++;
            }
        }
        boolean believed = !clear.isEmpty() && clear.size() >= LEAST_CLEAR * (clear.size() + unclear);
        Optional<Lengths> lengths = believed ? Optional.of(new Lengths(clear)) : Optional.empty();
        List<BowUse> uses = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            Optional<BowUse.Reason> trouble = troubles.get(i);
            uses.add(
                    trouble.isPresent() || lengths.isEmpty()
                            ? new BowUse.Unknown(trouble.orElse(BowUse.Reason.UNCLEAR))
                            : lengths.get().use(stroke));
        }
        return uses;
    }

    /** Why a span is not measured, empty if it is. */
    private Optional<BowUse.Reason> trouble(Stroke stroke) {
        if (stroke.kind().direction().isEmpty()) {
            return Optional.of(BowUse.Reason.NO_STROKE);
        }
        if (stroke.lengthS() < SHORTEST_S) {
            return Optional.of(BowUse.Reason.TOO_SHORT);
        }
        List<ArmSample.Seen> within =
                samples.subList(Samples.after(samples, stroke.startS()), Samples.after(samples, stroke.endS()));
        if (within.isEmpty() || !within.stream().allMatch(ArmSample.ByBody.class::isInstance)) {
            return Optional.of(BowUse.Reason.NO_BODY);
        }
        double noise = rootMeanSquare(within, ArmSample.Seen::noise);
        double speed = rootMeanSquare(within, ArmSample.Seen::velocity);
        return noise > MOST_NOISE * speed ? Optional.of(BowUse.Reason.UNCLEAR) : Optional.empty();
    }

    private static double rootMeanSquare(List<ArmSample.Seen> samples, ToDoubleFunction<ArmSample.Seen> value) {
        return Math.sqrt(
                samples.stream().mapToDouble(value).map(v -> v * v).average().orElseThrow());
    }

    /** The clear strokes against each other. */
    private final class Lengths {
        private final Curve run;
        private final double longest;
        private final BowStretch stretch;

        Lengths(List<Stroke> clear) {
            List<ArmSample.ByBody> body = samples.stream()
                    .filter(ArmSample.ByBody.class::isInstance)
                    .map(ArmSample.ByBody.class::cast)
                    .toList();
            double[] timesS = body.stream().mapToDouble(ArmSample::timeS).toArray();
            run = new Curve(
                            timesS,
                            body.stream()
                                    .mapToDouble(ArmSample.ByBody::velocity)
                                    .toArray())
                    .integral();
            longest = clear.stream().mapToDouble(this::length).max().orElseThrow();
            double[] reach = body.stream().mapToDouble(ArmSample.ByBody::reach).toArray();
            stretch = BowStretch.of(run, new Curve(timesS, reach), clear);
        }

        private double length(Stroke stroke) {
            return Math.abs(run.at(stroke.endS()) - run.at(stroke.startS()));
        }

        BowUse use(Stroke stroke) {
            double length = length(stroke);
            return stretch.part(stroke)
                    .<BowUse>map(p -> new BowUse.Placed(length, length / longest, p.part(), p.confidence()))
                    .orElseGet(() -> new BowUse.Length(length, length / longest));
        }
    }
}
