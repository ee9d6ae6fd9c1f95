package tuttarco.score;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.BowDirection;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.WrittenNote.Joins;

/** What one {@code <note>} element says. */
final class NoteElement {
    /** MusicXML numbers slurs from 1 to 16. */
    private static final Pattern SLUR_NUMBER = Pattern.compile("[1-9]|1[0-6]");

    /** Signs that call for a loud beginning. */
    static final Set<String> FORTES = Set.of("f", "ff", "fff", "sf", "sfz", "sffz", "fz", "fp", "sfp");

    boolean grace;
    boolean cue;
    boolean chord;
    boolean rest;
    boolean plucked;
    String voice = "1";
    Optional<BigFraction> durationDivisions = Optional.empty();
    Joins joins = Joins.NONE;

    /** Written pitch, semitones from the C below the lowest octave (MIDI note number); none for a rest. */
    Optional<Integer> pitch = Optional.empty();

    private NoteElement() {}

    static NoteElement read(XmlCursor xml) throws InputException {
        NoteElement note = new NoteElement();
        note.plucked = xml.attribute("pizzicato").filter("yes"::equals).isPresent();
        xml.children(child -> note.readChild(xml, child));
        return note;
    }

    private void readChild(XmlCursor xml, String child) throws InputException {
        switch (child) {
            case "grace" -> grace = true;
            case "cue" -> cue = true;
            case "chord" -> chord = true;
            case "rest" -> rest = true;
            case "pitch" -> pitch = Optional.of(readPitch(xml));
            case "voice" -> voice = xml.text();
            case "duration" -> durationDivisions = Optional.of(duration(xml));
            case "tie" -> tie(xml);
            case "notations" -> xml.children(notation -> readNotation(xml, notation));
            default -> {}
        }
    }

    private static int readPitch(XmlCursor xml) throws InputException {
        PitchElement pitch = new PitchElement();
        xml.children(child -> pitch.read(xml, child));
        return pitch.midi()
                .orElseThrow(() -> xml.wrong("this note has no pitch that can be read; export the part again"));
    }

    /** What a {@code <pitch>} element says. */
    private static final class PitchElement {
        /** Semitones of C to B above C. */
        private static final Map<String, Integer> STEPS =
                Map.of("C", 0, "D", 2, "E", 4, "F", 5, "G", 7, "A", 9, "B", 11);

        private static final Pattern ALTER = Pattern.compile("[+-]?[0-3](\\.[0-9]{1,6})?");
        private static final Pattern OCTAVE = Pattern.compile("[0-9]");
        private static final int SEMITONES = 12;

        private Optional<Integer> step = Optional.empty();
        private double alter;
        private Optional<Integer> octave = Optional.empty();

        void read(XmlCursor xml, String child) throws InputException {
            switch (child) {
                case "step" -> step = Optional.ofNullable(STEPS.get(xml.text()));
                case "alter" -> alter = alter(xml);
                case "octave" ->
                    octave = Optional.of(xml.text())
                            .filter(text -> OCTAVE.matcher(text).matches())
                            .map(Integer::valueOf);
                default -> {}
            }
        }

        private static double alter(XmlCursor xml) throws InputException {
            String text = xml.text();
            if (!ALTER.matcher(text).matches()) {
                throw xml.wrong("an alteration is a number of semitones, not '" + Plain.text(text)
                        + "'; export the part again");
            }
            return Double.parseDouble(text);
        }

        Optional<Integer> midi() {
            return step.flatMap(s -> octave.map(o -> (int) Math.round(SEMITONES * (o + 1) + s + alter)));
        }
    }

    private void readNotation(XmlCursor xml, String notation) throws InputException {
        switch (notation) {
            case "tied" -> tie(xml);
            case "slur" -> slur(xml);
            case "technical" -> xml.children(this::readTechnical);
            case "articulations" -> xml.children(this::readArticulation);
            case "dynamics" -> xml.children(this::readDynamic);
            default -> {}
        }
    }

    private void readArticulation(String sign) {
        switch (sign) {
            case "staccato", "tenuto", "detached-legato", "staccatissimo" -> joins = joins.separated();
            default -> {}
        }
    }

    private void readDynamic(String sign) {
        if (FORTES.contains(sign)) {
            joins = joins.loud();
        }
    }

    private void readTechnical(String sign) {
        switch (sign) {
            case "down-bow" -> joins = joins.marked(BowDirection.DOWN);
            case "up-bow" -> joins = joins.marked(BowDirection.UP);
            default -> {}
        }
    }

    private void tie(XmlCursor xml) {
        switch (xml.attribute("type").orElse("")) {
            case "start" -> joins = joins.tieStart();
            case "stop" -> joins = joins.tieStop();
            default -> {}
        }
    }

    private void slur(XmlCursor xml) {
        String number = xml.attribute("number").orElse("1");
        if (!SLUR_NUMBER.matcher(number).matches()) {
            return;
        }
        switch (xml.attribute("type").orElse("")) {
            case "start" -> joins = joins.slurStart(number);
            case "stop" -> joins = joins.slurStop(number);
            default -> {}
        }
    }

    /** A duration in divisions, more than none. */
    static BigFraction duration(XmlCursor xml) throws InputException {
        String text = xml.text();
        return Fractions.ofDecimal(text)
                .filter(Fractions::positive)
                .orElseThrow(() -> xml.wrong(
                        "a duration is a positive number, not '" + Plain.text(text) + "'; export the part again"));
    }
}
