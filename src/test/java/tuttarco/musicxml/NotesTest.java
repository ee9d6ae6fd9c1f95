package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static tuttarco.musicxml.XmlParts.bar;
import static tuttarco.musicxml.XmlParts.document;
import static tuttarco.musicxml.XmlParts.first;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.score.Note;
import tuttarco.score.PartSpan.Position;

/** Pitches as MIDI note numbers: A4 is 69 (MIDI 1.0, MIDI Manufacturers Association 1983; from memory). */
class NotesTest {
    private static final String A4 = pitch("A", 4, "");

    private static String pitch(String step, int octave, String alter) {
        return "<pitch><step>" + step + "</step>" + alter + "<octave>" + octave + "</octave></pitch>";
    }

    /** A note of so many eighths. */
    private static String note(int eighths, String pitch, String notations) {
        return "<note>" + pitch + "<duration>" + eighths + "</duration>" + notations + "</note>";
    }

    private static List<Note> read(String measures) throws InputException {
        byte[] content = document(measures).getBytes(StandardCharsets.UTF_8);
        return new MusicXmlPartReader()
                .read(content, "a.xml", Instrument.VIOLIN)
                .notes();
    }

    private static Note note(int place, int bar, double from, int toBar, double to, Integer... pitches) {
        return new Note(
                new Position(bar, from),
                new Position(toBar, to),
                List.of(pitches),
                false,
                new Note.Written(bar, place));
    }

    @Test
    void stepAlterAndOctaveMakeThePitch() throws InputException {
        String flat = pitch("E", 4, "<alter>-1</alter>");
        String sharp = pitch("C", 3, "<alter>1</alter>");
        assertEquals(
                List.of(note(0, 0, 1, 0, 2, 69), note(1, 0, 2, 0, 3, 63), note(2, 0, 3, 0, 5, 49)),
                read(first("4/4", note(2, A4, "") + note(2, flat, "") + note(4, sharp, ""))));
    }

    @Test
    void aChordIsOneNoteAndTiedNotesAreOne() throws InputException {
        String chord = "<note><chord/>" + pitch("D", 4, "") + "<duration>8</duration></note>";
        String tied = note(8, A4, "<tie type=\"start\"/>");
        String ends = note(2, A4, "<tie type=\"stop\"/>");
        assertEquals(List.of(note(0, 0, 1, 0, 5, 62, 69)), read(first("4/4", note(8, A4, "") + chord)));
        assertEquals(
                List.of(note(0, 0, 1, 1, 2, 69), note(1, 1, 2, 1, 5, 69)),
                read(first("4/4", tied) + bar(2, ends + note(6, A4, ""))));
    }

    @Test
    void aTransposedPartIsReadAsItSounds() throws InputException {
        String octaveLower =
                "<attributes><transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>"
                        + "</attributes>";
        assertEquals(List.of(note(0, 0, 1, 0, 5, 57)), read(first("4/4", octaveLower + note(8, A4, ""))));
    }

    @Test
    void aPluckedNoteIsANoteThoughNoStroke() throws InputException {
        String pizzicato = "<note pizzicato=\"yes\">" + A4 + "<duration>2</duration></note>";
        List<Note> notes = read(first("4/4", pizzicato + note(6, A4, "")));
        assertEquals(List.of(true, false), notes.stream().map(Note::plucked).toList());
    }

    @Test
    void whatIsNoPitchIsSaid() {
        for (String wrong : List.of(
                pitch("H", 4, ""),
                pitch("A", 12, ""),
                pitch("A", 4, "<alter>NaN</alter>"),
                "<pitch><step>A</step></pitch>")) {
            InputException e = assertThrows(InputException.class, () -> read(first("4/4", note(8, wrong, ""))));
            assertEquals(false, e.getMessage().contains("Exception"), e.getMessage());
        }
    }
}
