package tuttarco.align;

import java.util.ArrayList;
import java.util.List;

/**
 * When each note of a passage begins, and how sure that is: from how well the chords fit before and after, from where the
 * note's own partials {@linkplain Rise rise}, from where all sound grows, and from how evenly the tempo runs, all weighed
 * together over all notes in a {@linkplain Chain chain}, each note's beginning lying at one of the times around its first
 * guess.
 */
final class OnsetTimer {
    /** How far a first guess may be off, in half hops: 0.5 s (chosen; not yet measured). */
    static final int REACH = 43;

    static final int PLACES = 2 * REACH + 1;

    /** Worth of a frame's fit: neighbouring spectra overlap and tell much the same (chosen on synthesised sound). */
    private static final double FIT_WEIGHT = 1;

    /** Worth of a growth of the sound by its usual spread (chosen on synthesised sound). */
    private static final double FLUX_WEIGHT = 0.5;

    /** A note's partials are looked at so long before and after its beginning, seconds (chosen on synthesised sound). */
    private static final double BESIDE_S = 0.15;

    /** ... but no further than this share of the way to the notes beside it (chosen: 0.5 to 1 made no difference). */
    private static final double OF_THE_WAY = 0.8;

    /** ... and so many half hops at least. */
    private static final int LEAST_BESIDE = 2;

    /** How unevenly notes follow each other, as the spread of the logarithm of their length (chosen on synthesised sound). */
    static final double UNEVENNESS = 0.25;

    /** A growth of the sound stands out against this long around it, seconds. */
    static final double AROUND_S = 2;

    static final double MOST_SPREADS = 4;

    /** A flux that varies less than this does not vary, but for rounding. */
    static final double LEAST_VARIANCE = 1e-12;

    private final PartChords part;
    private final SoundFeatures sound;
    private final Fit fit;

    OnsetTimer(PartChords part, SoundFeatures sound) {
        this.part = part;
        this.sound = sound;
        this.fit = new Fit(part, sound.bands());
    }

    /** The notes' beginnings of a passage, at least two; or nothing. */
    List<Onset> onsets(Passage passage) {
        List<Integer> stretches = new ArrayList<>();
        for (int s = part.stretchAt(passage.places()[0]); s < part.startQuarters().length; s++) {
            double at = part.startQuarters()[s];
            if (at >= passage.places()[0] - 0.1 && at <= passage.places()[passage.places().length - 1]) {
                stretches.add(s);
            }
        }
        int count = stretches.size();
        if (count == 0) {
            return List.of();
        }
        int[] guess = new int[count];
        double stepS = SoundFeatures.FLUX_HOP_S;
        for (int k = 0; k < count; k++) {
            guess[k] =
                    (int) Math.round((passage.timeS(part.startQuarters()[stretches.get(k)]) - sound.startS()) / stepS);
        }
        int last = count - 1;
        double[][] alone = new double[count][];
        for (int k = 0; k < count; k++) {
            alone[k] = new double[PLACES];
            if (part.onsets()[stretches.get(k)]) {
                int before = k == 0 ? Integer.MAX_VALUE : guess[k] - guess[k - 1];
                int after = k == last ? Integer.MAX_VALUE : guess[k + 1] - guess[k];
                addGrowth(alone[k], guess[k]);
                addRise(alone[k], stretches.get(k), guess[k], beside(before), beside(after));
            }
        }
        Passage even = passage.smooth(PassageTimer.SMOOTH_S);
        double[] lasting = lasting(
                stretches.get(last), guess[last], passage.timeS(part.endQuarters(stretches.get(last))), passage.endS());
        for (int a = 0; a < PLACES; a++) {
            alone[last][a] += lasting[a];
        }
        List<Chain.Link> links = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            links.add(k == 0 ? (a, b) -> 0 : link(even, stretches, guess, k));
        }
        List<Chain.Found> found = Chain.found(alone, links);
        List<Onset> onsets = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            onsets.add(new Onset(
                    part.startQuarters()[stretches.get(k)],
                    sound.startS() + (guess[k] - REACH + found.get(k).middle()) * stepS,
                    found.get(k).spread() * stepS));
        }
        return onsets;
    }

    /** Half hops to look at on the side on which the next note lies so many half hops off. */
    private static int beside(int apart) {
        double most = Math.min(BESIDE_S / SoundFeatures.FLUX_HOP_S, OF_THE_WAY * apart);
        return (int) Math.max(LEAST_BESIDE, most);
    }

    /** Adds what the growth of all sound says for each place of a beginning: sharp, but early where tones speak slowly. */
    private void addGrowth(double[] worth, int guess) {
        int around = (int) (AROUND_S / SoundFeatures.FLUX_HOP_S);
        float[] flux = sound.flux();
        int lag = (int) Math.round((sound.startS() - sound.fluxTimeS(0)) / SoundFeatures.FLUX_HOP_S);
        int from = Math.max(0, guess - around);
        int to = Math.min(flux.length, guess + around);
        double mean = 0;
        double square = 0;
        for (int i = from; i < to; i++) {
            mean += flux[i] / (to - from);
            square += (double) flux[i] * flux[i] / (to - from);
        }
        double spread = Math.sqrt(Math.max(square - mean * mean, LEAST_VARIANCE));
        for (int a = 0; a < PLACES; a++) {
            int at = guess - REACH + a + lag;
            if (at >= 0 && at < flux.length) {
                worth[a] += FLUX_WEIGHT * Math.min(MOST_SPREADS, (flux[at] - mean) / spread);
            }
        }
    }

    /**
     * Adds what the note's partials say for each place of a beginning: those in which its chord stands out against the one
     * before, or all if that is the same.
     */
    private void addRise(double[] worth, int stretch, int guess, int back, int ahead) {
        int chord = part.chordOf()[stretch];
        boolean again = stretch == 0 || part.chordOf()[stretch - 1] == chord;
        int before = again ? PartChords.REST : part.chordOf()[stretch - 1];
        Rise rise = new Rise(back, ahead, before == PartChords.REST);
        double[] loud = new double[rise.needed(PLACES)];
        for (int i = 0; i < loud.length; i++) {
            int at = guess - REACH - back + i;
            if (at < SoundFeatures.FIRST_WHOLE && !sound.sounds(0)) {
                // a recording that begins with background had it before, too; what begins with a tone may begin with a
                // note
                at = SoundFeatures.FIRST_WHOLE;
            }
            if (at >= 0 && at < sound.levels().size()) {
                loud[i] = fit.level(sound.levels().get(at), chord, before);
            }
        }
        double[] said = rise.worth(loud);
        for (int a = 0; a < PLACES; a++) {
            worth[a] += said[a];
        }
    }

    /** What the last chord's fit says for each place of its beginning, as it lasts until its end or the passage's. */
    private double[] lasting(int stretch, int guess, double chordEndS, double passageEndS) {
        int first = guess - REACH;
        int end = Math.max(guess + 1, (int)
                Math.round((Math.min(chordEndS, passageEndS) - sound.startS()) / SoundFeatures.FLUX_HOP_S));
        double[] fitUpTo = fitUpTo(stretch, first, Math.max(end, guess + REACH + 1));
        double[] worth = new double[PLACES];
        for (int a = 0; a < PLACES; a++) {
            worth[a] = fitUpTo[Math.max(a, end - first)] - fitUpTo[a];
        }
        return worth;
    }

    /**
     * What speaks for a note to begin at b if the one before begins at a: its chord's fit and the tempo.
     *
     * @param fitUpTo the fit of the chord before, from its first place on
     * @param apart half hops from its first place to this note's first place
     * @param uneven what it costs that the chord before lasts so many half hops
     */
    private record Link(double[] fitUpTo, int apart, double[] uneven) implements Chain.Link {
        @Override
        public double worth(int a, int b) {
            int lasts = apart + b - a;
            return lasts <= 0 ? Double.NEGATIVE_INFINITY : fitUpTo[apart + b] - fitUpTo[a] - uneven[lasts];
        }
    }

    private Link link(Passage even, List<Integer> stretches, int[] guess, int k) {
        int before = stretches.get(k - 1);
        double expectedS =
                even.timeS(part.startQuarters()[stretches.get(k)]) - even.timeS(part.startQuarters()[before]);
        int apart = guess[k] - guess[k - 1];
        double[] uneven = new double[apart + PLACES];
        for (int lasts = 1; lasts < uneven.length; lasts++) {
            double much = Math.log(lasts * SoundFeatures.FLUX_HOP_S / expectedS) / UNEVENNESS;
            uneven[lasts] = much * much / 2;
        }
        return new Link(fitUpTo(before, guess[k - 1] - REACH, guess[k] + REACH + 1), apart, uneven);
    }

    /** The fit of a stretch's chord summed up over half hops, from a place on. */
    private double[] fitUpTo(int stretch, int from, int to) {
        double[] sums = new double[to - from + 1];
        for (int i = 0; i < to - from; i++) {
            double value = fit(Math.floorDiv(from + i, 2), stretch);
            sums[i + 1] = sums[i] + FIT_WEIGHT * value / 2;
        }
        return sums;
    }

    /** How well a stretch fits a frame; into a rest the chord before may ring on, which tells nothing of when it begins. */
    private double fit(int frame, int stretch) {
        if (frame < 0 || frame >= sound.shapes().size()) {
            return -Fit.WELL;
        }
        float[] shape = sound.shapes().get(frame);
        int chord = part.chordOf()[stretch];
        boolean mayRingOn = chord == PartChords.REST && stretch > 0;
        return mayRingOn ? Math.max(0, fit.of(shape, part.chordOf()[stretch - 1])) : fit.of(shape, chord);
    }
}
