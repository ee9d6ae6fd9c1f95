package tuttarco.video;

/** Channels of sound at a rate, samples a second of each. */
public record SoundFormat(int samplesPerS, int channels) {
    /** AAC's rates, ISO/IEC 14496-3, lie in between; hertz. */
    private static final int LOWEST = 8_000;

    private static final int HIGHEST = 96_000;

    public SoundFormat {
        if (channels < 1 || channels > 2) {
            throw new IllegalArgumentException("sound has one channel or two, not " + channels);
        }
        if (samplesPerS < LOWEST || samplesPerS > HIGHEST) {
            throw new IllegalArgumentException(
                    "sound has " + LOWEST + " to " + HIGHEST + " samples a second, not " + samplesPerS);
        }
    }

    /** One channel. */
    public static SoundFormat mono(int samplesPerS) {
        return new SoundFormat(samplesPerS, 1);
    }
}
