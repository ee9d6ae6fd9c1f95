package tuttarco.align;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import tuttarco.beats.PartRuler;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Metre;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;
import tuttarco.video.SoundTrack;

/**
 * A section that plays a part into a room: every player with a lag, an instrument and a vibrato of their own. What it plays
 * is not what alignment expects: instruments colour their partials by up to 6 dB each way, tones speak slowly and ring on.
 */
final class Section {
    static final int RATE = SoundTrack.SAMPLES_PER_S;
    private static final int PARTIALS = 12;

    /** How far players lie from each other, seconds (spread). */
    private static final double LAG_S = 0.02;

    private final Random random;
    private final int players;
    private final double a4Hz;
    private final double speaksFromS;
    private final double speaksToS;

    /** Tones take 30 to 70 ms to speak: bowed strings up to 50 (Guettler and Askenfelt, J. Acoust. Soc. Am. 101, 1997). */
    Section(long seed, int players, double a4Hz) {
        this(seed, players, a4Hz, 0.03, 0.07);
    }

    /** Tones take from so long to so long to speak, seconds; half of it at half their loudness, 6 dB below it. */
    Section(long seed, int players, double a4Hz, double speaksFromS, double speaksToS) {
        random = new Random(seed);
        this.players = players;
        this.a4Hz = a4Hz;
        this.speaksFromS = speaksFromS;
        this.speaksToS = speaksToS;
    }

    /** A tune that wanders about in D major, in 4/4, with a few rests and repeated notes. */
    static Part tune(long seed, int bars) {
        return tune(seed, bars, new int[] {62, 64, 66, 67, 69, 71, 73, 74, 76, 78, 79, 81, 83, 85, 86});
    }

    static Part tune(long seed, int bars, int[] scale) {
        Random random = new Random(seed);
        List<Note> notes = new ArrayList<>();
        List<Bar> list = new ArrayList<>();
        int at = scale.length / 2;
        double[][] rhythms = {{1, 1, 1, 1}, {2, 1, 1}, {1.5, 0.5, 2}, {0.5, 0.5, 1, 0.5, 0.5, 1}, {3, 0.5, 0.5}, {4}};
        for (int bar = 0; bar < bars; bar++) {
            list.add(Bar.full(Integer.toString(bar + 1), new Metre(4, 4)));
            double beat = 1;
            for (double length : rhythms[random.nextInt(rhythms.length)]) {
                at = Math.max(0, Math.min(scale.length - 1, at + random.nextInt(7) - 3));
                if (random.nextDouble() > 0.05) {
                    notes.add(new Note(
                            new Position(bar, beat),
                            beat + length < 5 ? new Position(bar, beat + length) : end(bar, bars),
                            List.of(scale[at]),
                            false,
                            new Note.Written(bar, 0)));
                }
                beat += length;
            }
        }
        return new Part("tune", list, List.of(), notes, Hints.NONE, List.of());
    }

    private static Position end(int bar, int bars) {
        return bar + 1 < bars ? new Position(bar + 1, 1) : new Position(bar, 5);
    }

    /** Seconds of each place of a part, played at a tempo that sways by up to a quarter each way over 7 s or so. */
    static DoubleUnaryOperator swaying(double startS, double quarterS) {
        return quarters -> startS + quarterS * (quarters + 2 * Math.sin(quarters / 8));
    }

    /** Plays the part's bars from one (by index) up to another into a recording. */
    void play(Part part, int fromBar, int toBar, DoubleUnaryOperator secondsOf, float[] recording) {
        PartRuler ruler = new PartRuler(part);
        float[] dry = new float[recording.length];
        for (int player = 0; player < players; player++) {
            double lagS = players == 1 ? 0 : LAG_S * random.nextGaussian();
            double outOfTune = 1 + (players == 1 ? 0 : 0.002 * random.nextGaussian());
            double[] colour = random.doubles(200, 0.5, 2).toArray();
            double vibratoHz = 5 + random.nextDouble();
            for (Note note : part.notes()) {
                int bar = note.start().barIndex();
                if (bar >= fromBar && bar < toBar) {
                    double startS = secondsOf.applyAsDouble(ruler.quarters(note.start())) + lagS + jitterS();
                    double endS = secondsOf.applyAsDouble(ruler.quarters(note.end())) + lagS;
                    for (int pitch : note.pitches()) {
                        double hz = a4Hz * Math.pow(2, (pitch - 69) / 12.0) * outOfTune;
                        tone(dry, startS, endS, hz, vibratoHz, colour);
                    }
                }
            }
        }
        room(dry, recording);
    }

    private double jitterS() {
        return players == 1 ? 0 : 0.01 * random.nextGaussian();
    }

    private void tone(float[] into, double startS, double endS, double hz, double vibratoHz, double[] colour) {
        double speakS = Math.min(speaksFromS + (speaksToS - speaksFromS) * random.nextDouble(), (endS - startS) / 2);
        double ringS = 0.06;
        double loud = (0.6 + 0.4 * random.nextDouble()) / Math.sqrt(players);
        double slope = random.nextDouble() - 0.5;
        double[] gains = new double[PARTIALS + 1];
        for (int k = 1; k <= PARTIALS && k * hz < RATE / 2.2; k++) {
            gains[k] = colour[(int) Math.min(199, k * hz / 50)] / k;
        }
        double phase = 2 * Math.PI * random.nextDouble();
        int first = Math.max(0, (int) Math.ceil(startS * RATE));
        for (int i = first; i < Math.min(into.length, (endS + 2 * ringS) * RATE); i++) {
            double t = (double) i / RATE - startS;
            double over = (double) i / RATE - endS;
            double swell = 1 + slope * t / (endS - startS);
            double level = loud * swell * Math.min(1, t / speakS) * (over > 0 ? Math.exp(-over / ringS * 3) : 1);
            double vibrato = 1 + 0.008 * Math.min(1, t / 0.3) * Math.sin(2 * Math.PI * vibratoHz * t);
            phase += 2 * Math.PI * hz * vibrato / RATE;
            double twoCos = 2 * Math.cos(phase);
            double before = 0;
            double now = Math.sin(phase);
            double sum = gains[1] * now;
            for (int k = 2; k <= PARTIALS; k++) {
                double next = twoCos * now - before;
                before = now;
                now = next;
                sum += gains[k] * now;
            }
            into[i] += (float) (0.1 * level * sum);
        }
    }

    /** Adds the direct sound and, 10 dB below it, that of four combs of a small hall's echoes (after Schroeder, 1962). */
    private static void room(float[] dry, float[] into) {
        double[] delaysS = {0.0297, 0.0371, 0.0411, 0.0437};
        for (int i = 0; i < dry.length; i++) {
            into[i] += dry[i];
        }
        for (double delayS : delaysS) {
            int delay = (int) (delayS * RATE);
            // dies away by 60 dB in a second
            float feedback = (float) Math.pow(10, -3 * delayS);
            float[] echo = new float[dry.length];
            for (int i = delay; i < dry.length; i++) {
                echo[i] = dry[i - delay] + feedback * echo[i - delay];
                into[i] += 0.06f * echo[i];
            }
        }
    }

    /**
     * Adds somebody who talks from one time to another: voiced syllables, a few a second, whose pitch glides and whose
     * vowels change.
     */
    void talk(float[] recording, double fromS, double toS) {
        double atS = fromS;
        while (atS < toS) {
            double lengthS = 0.12 + 0.15 * random.nextDouble();
            double hz = 110 * Math.pow(2, random.nextDouble());
            double glide = 0.6 * random.nextGaussian();
            // the first two formants of a vowel
            double[] formantsHz = {300 + 500 * random.nextDouble(), 900 + 1400 * random.nextDouble()};
            double phase = 0;
            for (int i = (int) (atS * RATE); i < Math.min(recording.length, (atS + lengthS) * RATE); i++) {
                double t = ((double) i / RATE - atS) / lengthS;
                double now = hz * Math.pow(2, glide * (t - 0.5));
                phase += 2 * Math.PI * now / RATE;
                double sum = 0;
                for (int k = 1; k * now < 4000; k++) {
                    double level = 0.05;
                    for (double formantHz : formantsHz) {
                        double off = (k * now - formantHz) / 120;
                        level += 1 / (1 + off * off);
                    }
                    sum += level * Math.sin(k * phase);
                }
                recording[i] += (float) (0.05 * Math.sin(Math.PI * t) * sum);
            }
            atS += lengthS + (random.nextDouble() < 0.2 ? 0.4 : 0.03);
        }
    }

    /** Adds white noise of so much power relative to the recording's own, in decibels. */
    void noise(float[] recording, double decibels) {
        double level = rms(recording) * Math.pow(10, decibels / 20);
        for (int i = 0; i < recording.length; i++) {
            recording[i] += (float) (level * random.nextGaussian());
        }
    }

    static double rms(float[] samples) {
        double square = 0;
        for (float sample : samples) {
            square += (double) sample * sample / samples.length;
        }
        return Math.sqrt(square);
    }

    /** Writes a recording as 16-bit PCM, softer if it would be too loud. */
    static void write(float[] recording, Path wav) throws IOException {
        double loudest = 1;
        for (float sample : recording) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        for (int i = 0; i < recording.length; i++) {
            recording[i] /= (float) loudest;
        }
        write(new ByteArrayInputStream(pcm(recording)), recording.length, wav);
    }

    /** Samples from -1 to 1 as 16-bit PCM. */
    static byte[] pcm(float[] samples) {
        byte[] bytes = new byte[2 * samples.length];
        for (int i = 0; i < samples.length; i++) {
            int value = Math.round(32_767 * samples[i]);
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> 8);
        }
        return bytes;
    }

    /** Writes 16-bit PCM as it comes. */
    static void write(InputStream pcm, long samples, Path wav) throws IOException {
        AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
        AudioSystem.write(new AudioInputStream(pcm, format, samples), AudioFileFormat.Type.WAVE, wav.toFile());
    }
}
