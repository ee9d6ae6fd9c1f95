package tuttarco.demo;

import java.util.Arrays;
import java.util.List;

/**
 * Bowed tones that follow the strokes. The frog is the strong end of the bow and the tip the weak one, so a down-bow decays
 * and an up-bow grows (common practice); every change leaves a short dip.
 */
record Tones(List<Line> lines) implements Soundtrack {
    /** What one player plays. */
    record Line(Voice voice, List<ToneStroke> strokes) {
        Line {
            strokes = List.copyOf(strokes);
        }
    }

    /** Loudness at the tip, as a share of that at the frog (chosen: about 8 dB, clear to the ear). */
    static final double AT_TIP = 0.4;

    /** One player's loudest, in partials; many add up as their number's root (chosen: seldom too much together). */
    private static final double LOUDEST = 0.3;

    Tones {
        lines = List.copyOf(lines);
    }

    @Override
    public void fill(long first, float[] block) {
        Arrays.fill(block, 0);
        for (Line line : lines) {
            line.strokes().forEach(stroke -> add(line.voice(), stroke, first, block));
        }
        double share = LOUDEST / Math.sqrt(Math.max(1, lines.size()));
        for (int i = 0; i < block.length; i++) {
            block[i] = (float) (share * block[i]);
        }
    }

    private static void add(Voice voice, ToneStroke stroke, long first, float[] block) {
        int start = Soundtrack.indexAt(stroke.startS(), first, block);
        int end = Soundtrack.indexAt(stroke.endS(), first, block);
        if (start == end) {
            return;
        }
        Partials partials = voice.partials(stroke.pitchHz());
        for (int i = start; i < end; i++) {
            double timeS = Soundtrack.timeS(first + i);
            double phase = voice.phase(stroke.pitchHz(), timeS - stroke.startS());
            block[i] += (float) (loudness(stroke, timeS) * partials.at(phase));
        }
    }

    /** Loudness within a stroke, 0 to 1: nought at either end of it, then as the place on the bow says. */
    static double loudness(ToneStroke stroke, double timeS) {
        double speakS = Math.min(stroke.speakS(), (stroke.endS() - stroke.startS()) / 2);
        double edgeS = Math.min(timeS - stroke.startS(), stroke.endS() - timeS);
        double spoken = Math.max(0, Math.min(1, edgeS / speakS));
        return spoken * (1 - (1 - AT_TIP) * stroke.place(timeS));
    }
}
