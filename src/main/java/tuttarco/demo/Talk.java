package tuttarco.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Something like talk, in which nothing is said: syllables of several voices. */
record Talk(List<Syllable> syllables) implements Soundtrack {
    /** One sound of a voice, whose pitch goes evenly from one to another. */
    record Syllable(double startS, double endS, double fromHz, double toHz, Vowel vowel) {}

    /** The first two formants of a man's vowels, hertz (G. Peterson and H. Barney, 1952, from memory). */
    enum Vowel {
        HEED(270, 2290),
        HEAD(530, 1840),
        HOD(730, 1090),
        HAWED(570, 840),
        WHOD(300, 870);

        private final double firstHz;
        private final double secondHz;

        Vowel(double firstHz, double secondHz) {
            this.firstHz = firstHz;
            this.secondHz = secondHz;
        }

        /** How much of a sound of so many hertz the mouth lets through. */
        private double share(double hz) {
            return resonance(hz, firstHz) + resonance(hz, secondHz) / 2;
        }

        private static double resonance(double hz, double formantHz) {
            double off = (hz - formantHz) / WIDTH_HZ;
            return 1 / (1 + off * off);
        }
    }

    private static final int TALKERS = 3;

    /** Half the width of a formant, hertz (chosen: 50 to 100 in speech, no source). */
    private static final double WIDTH_HZ = 80;

    /** Syllables take so long, and so long passes between them (chosen: about four a second); seconds. */
    private static final double SHORTEST_S = 0.1;

    private static final double LONGEST_S = 0.25;
    private static final double LONGEST_GAP_S = 0.15;

    /** What a voice lies between, hertz, and how far it goes within a syllable, as a share (chosen). */
    private static final double LOWEST_HZ = 95;

    private static final double HIGHEST_HZ = 220;
    private static final double GLIDE = 0.15;

    private static final int PARTIALS = 20;
    /** How long a syllable takes to begin and to end, seconds (chosen). */
    private static final double EDGE_S = 0.03;
    /** About as loud as the section (chosen). */
    private static final double LOUDEST = 0.3;

    Talk {
        syllables = List.copyOf(syllables);
    }

    /** All talk through every one of these times. */
    static Talk during(List<Spell> spells, long seed) {
        Random random = new Random(seed);
        List<Syllable> syllables = new ArrayList<>();
        for (Spell spell : spells) {
            for (int talker = 0; talker < TALKERS; talker++) {
                double voiceHz = LOWEST_HZ + (HIGHEST_HZ - LOWEST_HZ) * random.nextDouble();
                double atS = spell.startS() + LONGEST_GAP_S * random.nextDouble();
                double endS = atS + SHORTEST_S + (LONGEST_S - SHORTEST_S) * random.nextDouble();
                while (endS <= spell.endS()) {
                    syllables.add(syllable(atS, endS, voiceHz, random));
                    atS = endS + LONGEST_GAP_S * random.nextDouble();
                    endS = atS + SHORTEST_S + (LONGEST_S - SHORTEST_S) * random.nextDouble();
                }
            }
        }
        return new Talk(syllables);
    }

    private static Syllable syllable(double startS, double endS, double voiceHz, Random random) {
        Vowel[] vowels = Vowel.values();
        return new Syllable(
                startS,
                endS,
                voiceHz * (1 + GLIDE * random.nextGaussian()),
                voiceHz * (1 + GLIDE * random.nextGaussian()),
                vowels[random.nextInt(vowels.length)]);
    }

    @Override
    public void fill(long first, float[] block) {
        Arrays.fill(block, 0);
        syllables.forEach(syllable -> add(syllable, first, block));
    }

    private static void add(Syllable s, long first, float[] block) {
        int start = Soundtrack.indexAt(s.startS(), first, block);
        int end = Soundtrack.indexAt(s.endS(), first, block);
        if (start == end) {
            return;
        }
        Partials partials = partials(s);
        double lengthS = s.endS() - s.startS();
        for (int i = start; i < end; i++) {
            double sinceS = Soundtrack.timeS(first + i) - s.startS();
            double spoken = Math.min(1, Math.min(sinceS, lengthS - sinceS) / EDGE_S);
            double phase = 2 * Math.PI * sinceS * (s.fromHz() + (s.toHz() - s.fromHz()) * sinceS / (2 * lengthS));
            block[i] += (float) (LOUDEST * spoken * partials.at(phase));
        }
    }

    /** A voice's partials fall as one over their number before the mouth shapes them (chosen). */
    private static Partials partials(Syllable syllable) {
        double[] loudness = new double[PARTIALS];
        double middleHz = (syllable.fromHz() + syllable.toHz()) / 2;
        for (int k = 1; k <= PARTIALS; k++) {
            loudness[k - 1] = syllable.vowel().share(k * middleHz) / k;
        }
        return new Partials(loudness);
    }
}
