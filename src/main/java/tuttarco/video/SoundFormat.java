package tuttarco.video;

/** One channel of sound at a rate, samples a second. */
public record SoundFormat(int samplesPerS) {
    public SoundFormat {
        if (samplesPerS < 8_000 || samplesPerS > 192_000) {
            throw new IllegalArgumentException("8000 to 192000 samples a second, not " + samplesPerS);
        }
    }
}
