package tuttarco.demo;

import java.util.Arrays;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.musicxml.Pitch;

/**
 * The tune of the rendered takes, made up for them: each stroke of a part has the next note, and after the last comes the
 * first again. All instruments play it in octaves.
 *
 * @param written as they stand in the instrument's part
 */
record Tune(Instrument instrument, List<Pitch> written) {
    /** For a violin; in D, within an octave and a second, with one note played twice. */
    private static final String NOTES = "D5 A4 B4 B4 D5 F#5 E5 A5 G5 F#5 D5 B4 E5 F#5 G5 C#5 D5 B5 A5 E5 D5 "
            + "G5 B4 E5 C#5 A5 F#5 B5 A4 D5 G5 E5 B4 A5 F#5";

    private static final int SEMITONES = 12;
    private static final double A4_HZ = 440;
    private static final int A4_MIDI = 69;

    Tune {
        written = List.copyOf(written);
    }

    static Tune of(Instrument instrument) {
        return new Tune(
                instrument,
                Arrays.stream(NOTES.split(" "))
                        .map(note -> pitch(note, octavesBelowViolin(instrument)))
                        .toList());
    }

    private static Pitch pitch(String note, int octavesDown) {
        int octave = note.charAt(note.length() - 1) - '0';
        return new Pitch(note.charAt(0), note.contains("#") ? 1 : 0, octave - octavesDown);
    }

    private static int octavesBelowViolin(Instrument instrument) {
        return switch (instrument) {
            case VIOLIN -> 0;
            case VIOLA, VIOL -> 1;
            case CELLO, BASS -> 2;
        };
    }

    /** What a stroke of the part sounds, hertz, in equal temperament; a bass sounds an octave lower than written. */
    double hz(int stroke) {
        int midi = written.get(stroke % written.size()).midi() - (instrument == Instrument.BASS ? SEMITONES : 0);
        return A4_HZ * Math.pow(2, (midi - A4_MIDI) / (double) SEMITONES);
    }
}
