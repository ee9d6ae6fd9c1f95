package tuttarco.sound;

import java.util.Arrays;

/**
 * How far a recording's samples reach down and up in each step of time: enough to draw it at any size. The steps grow with
 * the recording, so that an outline never takes more than a few megabytes. Times are seconds from the clip's start.
 */
public final class Outline {
    /** Samples of the finest step: 3 ms at 22,050 a second, less than a pixel where 20 ms can be told by eye (chosen). */
    static final int FINEST = 64;

    /** Steps are joined in pairs when there are more; 2^19 are half an hour and more of the finest (chosen: 1 MB). */
    static final int MOST_STEPS = 1 << 19;

    private final double startS;
    private final double stepS;
    private final byte[] low;
    private final byte[] high;

    private Outline(double startS, double stepS, byte[] low, byte[] high) {
        this.startS = startS;
        this.stepS = stepS;
        this.low = low;
        this.high = high;
    }

    /** When the first sample sounds. */
    public double startS() {
        return startS;
    }

    public double endS() {
        return startS + low.length * stepS;
    }

    /** How long a step lasts. */
    public double stepS() {
        return stepS;
    }

    /**
     * How far samples reach in a while, -1 to 1.
     *
     * @param low not above 0; {@code high} not below it
     */
    public record Reach(double low, double high) {
        public static final Reach SILENT = new Reach(0, 0);
    }

    /** The reach in all steps that begin before {@code toS} and end after {@code fromS}. */
    public Reach reach(double fromS, double toS) {
        int first = (int) Math.max(0, Math.floor((fromS - startS) / stepS));
        int end = (int) Math.min(low.length, Math.ceil((toS - startS) / stepS));
        int down = 0;
        int up = 0;
        for (int i = first; i < end; i++) {
            down = Math.min(down, low[i]);
            up = Math.max(up, high[i]);
        }
        return down == 0 && up == 0
                ? Reach.SILENT
                : new Reach((double) down / Byte.MAX_VALUE, (double) up / Byte.MAX_VALUE);
    }

    /** Gathers an outline while the sound is read block by block. */
    public static final class Gathering {
        private static final int FIRST_STEPS = 1 << 14;

        private final double startS;
        private final int samplesPerS;
        private int samplesAStep = FINEST;
        private byte[] low = new byte[FIRST_STEPS];
        private byte[] high = new byte[FIRST_STEPS];
        private int count;
        private int inStep;
        private float down;
        private float up;

        /** @param startS when the first sample sounds */
        public Gathering(int samplesPerS, double startS) {
            this.samplesPerS = samplesPerS;
            this.startS = startS;
        }

        /** Takes the samples that follow, -1 to 1: the first {@code length} of a block. */
        public void add(float[] block, int length) {
            for (int i = 0; i < length; i++) {
                down = Math.min(down, block[i]);
                up = Math.max(up, block[i]);
                inStep++;
                if (inStep == samplesAStep) {
                    keep();
                }
            }
        }

        private void keep() {
            if (count == MOST_STEPS) {
                join();
                return;
            }
            if (count == low.length) {
                low = Arrays.copyOf(low, 2 * count);
                high = Arrays.copyOf(high, 2 * count);
            }
            low[count] = (byte) Math.round(Math.max(-1, down) * Byte.MAX_VALUE);
            high[count] = (byte) Math.round(Math.min(1, up) * Byte.MAX_VALUE);
            count++;
            inStep = 0;
            down = 0;
            up = 0;
        }

        /** Steps twice as long; the step just read is half of one and goes on as such. */
        private void join() {
            for (int i = 0; i < count / 2; i++) {
                low[i] = (byte) Math.min(low[2 * i], low[2 * i + 1]);
                high[i] = (byte) Math.max(high[2 * i], high[2 * i + 1]);
            }
            count /= 2;
            samplesAStep *= 2;
        }

        /** The outline; nothing is taken afterwards. */
        public Outline outline() {
            if (inStep > 0 && count < MOST_STEPS) {
                keep();
            }
            return new Outline(
                    startS, (double) samplesAStep / samplesPerS, Arrays.copyOf(low, count), Arrays.copyOf(high, count));
        }
    }
}
