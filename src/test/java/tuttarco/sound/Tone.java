package tuttarco.sound;

import java.util.List;

/** Sines after one another, as the signals of EBU Tech 3341 are described. */
record Tone(double lengthS, double dbfs) {
    /** A tone that isn't there. */
    static Tone silence(double lengthS) {
        return new Tone(lengthS, Double.NEGATIVE_INFINITY);
    }

    /**
     * One channel.
     *
     * @param frequencyPerS of the sine, whose phase goes on from one tone to the next
     * @param gainDb added to all: 3.01 makes a channel that reads like two which are alike
     */
    static float[] samples(List<Tone> tones, double frequencyPerS, int samplesPerS, double gainDb) {
        double lengthS = tones.stream().mapToDouble(Tone::lengthS).sum();
        float[] samples = new float[(int) Math.round(lengthS * samplesPerS)];
        double endS = 0;
        int i = 0;
        for (Tone tone : tones) {
            endS += tone.lengthS;
            double amplitude = Math.pow(10, (tone.dbfs + gainDb) / 20);
            for (; i < Math.min(samples.length, Math.round(endS * samplesPerS)); i++) {
                samples[i] = (float) (amplitude * Math.sin(2 * Math.PI * frequencyPerS * i / samplesPerS));
            }
        }
        return samples;
    }
}
