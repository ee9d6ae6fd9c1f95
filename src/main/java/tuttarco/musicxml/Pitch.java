package tuttarco.musicxml;

import tuttarco.bow.Instrument;

/**
 * A written pitch.
 *
 * @param step C to B
 * @param alter semitones up, -1 to 1
 * @param octave 4 begins at middle C
 */
public record Pitch(char step, int alter, int octave) {
    private static final int SEMITONES = 12;
    private static final int STEPS = 7;

    /** Of C to B. */
    private static final int[] SEMITONES_ABOVE_C = {0, 2, 4, 5, 7, 9, 11};

    public Pitch {
        if (step < 'A' || step > 'G' || alter < -1 || alter > 1 || octave < 0 || octave > 9) {
            throw new IllegalArgumentException("no pitch is written " + step + ", " + alter + ", " + octave);
        }
    }

    /** The MIDI note number: 60 is middle C. */
    public int midi() {
        return SEMITONES * (octave + 1) + SEMITONES_ABOVE_C[(step - 'C' + STEPS) % STEPS] + alter;
    }

    /** A string of the instrument that is played open, as written in its clef (common practice, no source). */
    public static Pitch openString(Instrument instrument) {
        return switch (instrument) {
            case VIOLIN, VIOLA -> new Pitch('A', 0, 4);
            case CELLO, BASS -> new Pitch('A', 0, 3);
            case VIOL -> new Pitch('D', 0, 4);
        };
    }
}
