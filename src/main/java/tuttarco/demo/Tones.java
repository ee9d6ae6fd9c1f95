package tuttarco.demo;

import java.util.Arrays;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.strokes.StrokeKind;

/**
 * Bowed tones that follow the strokes. The frog is the strong end of the bow and the tip the weak one, so a down-bow decays
 * and an up-bow grows (common practice); every change leaves a short dip.
 *
 * @param players each player's strokes
 */
record Tones(List<List<ToneStroke>> players) implements Soundtrack {
    /** How long a tone takes to speak, and to end (chosen). */
    static final double SPEAK_S = 0.025;

    /** Loudness at the tip, as a share of that at the frog (chosen: about 8 dB, clear to the ear). */
    static final double AT_TIP = 0.4;

    /** Partials of a bowed string fall as one over their number: Helmholtz motion is a sawtooth. */
    private static final int PARTIALS = 6;

    /** No sum of such partials goes beyond Si(pi), the overshoot of Gibbs. */
    private static final double HIGHEST_SUM = 1.851_94;

    /** One player's loudest; many add up as their number's root, and what would be too much is bent (chosen). */
    private static final double LOUDEST = 0.8;

    /** How far neighbours are out of tune, as a share of the pitch (chosen: 3 cents, a section and not a machine). */
    private static final double OUT_OF_TUNE = 0.002;

    Tones {
        players = players.stream().map(List::copyOf).toList();
    }

    static Tones of(List<Performer> performers) {
        return new Tones(performers.stream().map(Tones::strokes).toList());
    }

    private static List<ToneStroke> strokes(Performer performer) {
        double pitchHz = openStringHz(performer.instrument()) * (1 + OUT_OF_TUNE * (performer.index() % 5 - 2));
        return performer.motion().travels().stream()
                .filter(t -> t.kind() != StrokeKind.STILL)
                .map(t -> new ToneStroke(t.startS(), t.endS(), t.from(), t.to(), pitchHz))
                .toList();
    }

    /** The second string from the top, equal temperament on A4 = 440 Hz; a viol is the bass of its family. */
    private static double openStringHz(Instrument instrument) {
        return switch (instrument) {
            case VIOLIN -> 440;
            case VIOLA -> 293.7;
            case CELLO -> 146.8;
            case BASS -> 73.4;
            case VIOL -> 220;
        };
    }

    @Override
    public void fill(long first, float[] block) {
        Arrays.fill(block, 0);
        for (List<ToneStroke> strokes : players) {
            strokes.forEach(stroke -> add(stroke, first, block));
        }
        double share = LOUDEST / Math.sqrt(Math.max(1, players.size()));
        for (int i = 0; i < block.length; i++) {
            block[i] = (float) Math.tanh(share * block[i]);
        }
    }

    private static void add(ToneStroke stroke, long first, float[] block) {
        int end = Soundtrack.indexAt(stroke.endS(), first, block);
        for (int i = Soundtrack.indexAt(stroke.startS(), first, block); i < end; i++) {
            double timeS = Soundtrack.timeS(first + i);
            double phase = 2 * Math.PI * stroke.pitchHz() * (timeS - stroke.startS());
            block[i] += (float) (loudness(stroke, timeS) * sawtooth(phase));
        }
    }

    /** Loudness within a stroke, 0 to 1: nought at either end of it, then as the place on the bow says. */
    static double loudness(ToneStroke stroke, double timeS) {
        double speakS = Math.min(SPEAK_S, (stroke.endS() - stroke.startS()) / 2);
        double edgeS = Math.min(timeS - stroke.startS(), stroke.endS() - timeS);
        double spoken = Math.max(0, Math.min(1, edgeS / speakS));
        return spoken * (1 - (1 - AT_TIP) * stroke.place(timeS));
    }

    /** The partials by the recurrence sin kx = 2 cos x sin (k-1)x - sin (k-2)x; -1 to 1. */
    private static double sawtooth(double phase) {
        double before = 0;
        double now = Math.sin(phase);
        double twoCos = 2 * Math.cos(phase);
        double sum = now;
        for (int k = 2; k <= PARTIALS; k++) {
            double next = twoCos * now - before;
            before = now;
            now = next;
            sum += now / k;
        }
        return sum / HIGHEST_SUM;
    }
}
