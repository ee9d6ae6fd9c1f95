package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.strokes.StrokeKind;

/**
 * From a player's bow to the tones heard: a stroke sounds the part's notes that lie within it, as late as the player is.
 * Where the bow changes about when the note does, the note changes with the bow, so that a lag is heard.
 */
final class Fingering {
    /** A bowed string takes up to 50 ms to speak (Guettler and Askenfelt, J. Acoust. Soc. Am. 101, 1997); seconds. */
    private static final double QUICKEST_S = 0.02;

    private static final double SLOWEST_S = 0.05;

    /** Under a slur only the finger comes down (chosen: just no click); seconds. */
    static final double SLURRED_S = 0.008;

    /** A stroke of a tremolo may be as short as what a player is uneven: this much of it is its neighbour's at most. */
    private static final double MOST_SHARE = 0.3;

    private final List<Tempo.Played> notes;
    private final Random random;

    private Fingering(Scene scene, long seed) {
        notes = scene.tempo().strokes();
        random = new Random(seed);
    }

    /** Everyone's tones in a scene. */
    static Tones tones(Scene scene, Layout layout) {
        List<Tones.Line> lines = new ArrayList<>();
        for (Performer performer : layout.performers()) {
            Fingering fingering = new Fingering(scene, scene.seed() * 999_983 + performer.index());
            lines.add(fingering.line(performer));
        }
        return new Tones(lines);
    }

    private Tones.Line line(Performer performer) {
        Voice voice = Voice.of(random);
        Tune tune = Tune.of(performer.instrument());
        double lagS = Deviation.lagS(performer.cast().deviations());
        List<ToneStroke> tones = new ArrayList<>();
        for (Travel travel : performer.motion().travels()) {
            if (travel.kind() != StrokeKind.STILL) {
                add(travel, lagS, tune, tones);
            }
        }
        return new Tones.Line(voice, tones);
    }

    private void add(Travel travel, double lagS, Tune tune, List<ToneStroke> tones) {
        double looseS = Math.min(NotePlanner.mostUnevenS(), MOST_SHARE * (travel.endS() - travel.startS()));
        List<Tempo.Played> within = notes.stream()
                .filter(n -> n.startS() + lagS < travel.endS() - looseS && n.endS() + lagS > travel.startS() + looseS)
                .toList();
        double speakS = QUICKEST_S + (SLOWEST_S - QUICKEST_S) * random.nextDouble();
        double atS = travel.startS();
        for (int i = 0; i < within.size(); i++) {
            boolean last = i == within.size() - 1;
            double endS = last ? travel.endS() : within.get(i + 1).startS() + lagS + unevenS(travel);
            double pitchHz = tune.hz(within.get(i).number());
            tones.add(new ToneStroke(
                    atS, endS, place(travel, atS), place(travel, endS), pitchHz, i == 0 ? speakS : SLURRED_S));
            atS = endS;
        }
    }

    /** Of a note within a stroke; none where the strokes of a tremolo are too short for it. */
    private double unevenS(Travel travel) {
        return travel.kind() == StrokeKind.TREMOLO ? 0 : NotePlanner.unevenS(random);
    }

    /** Rounding may take a travel's end a hair beyond the bow's. */
    private static double place(Travel travel, double timeS) {
        return Math.max(0, Math.min(1, travel.place(timeS)));
    }
}
