package tuttarco.video;

/** One channel of sound at a rate, samples a second. */
public record SoundFormat(int samplesPerS) {
    /** AAC's rates, ISO/IEC 14496-3, lie in between; hertz. */
    private static final int LOWEST = 8_000;

    private static final int HIGHEST = 96_000;

    public SoundFormat {
        if (samplesPerS < LOWEST || samplesPerS > HIGHEST) {
            throw new IllegalArgumentException(
                    "sound has " + LOWEST + " to " + HIGHEST + " samples a second, not " + samplesPerS);
        }
    }
}
