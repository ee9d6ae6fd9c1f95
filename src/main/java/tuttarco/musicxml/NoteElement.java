package tuttarco.musicxml;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.bow.BowDirection;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.musicxml.WrittenNote.Joins;
import tuttarco.score.Fractions;

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
    String staff = "1";
    Optional<BigFraction> durationDivisions = Optional.empty();
    Joins joins = Joins.NONE;

    /** Written pitch, semitones from the C below the lowest octave (MIDI note number); none for a rest. */
    Optional<Integer> pitch = Optional.empty();

    /** Strokes through the stem of a tremolo on one note; nothing without one. */
    private Optional<Integer> tremolo = Optional.empty();

    private String type = "";
    private int dots;

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
            case "staff" -> staff = xml.text();
            case "duration" -> durationDivisions = Optional.of(duration(xml));
            case "type" -> type = xml.text();
            case "dot" -> dots = Math.min(dots + 1, Tremolo.MOST_DOTS);
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
            case "ornaments" -> xml.children(ornament -> readOrnament(xml, ornament));
            case "articulations" -> xml.children(this::readArticulation);
            case "dynamics" -> xml.children(this::readDynamic);
            default -> {}
        }
    }

    private void readOrnament(XmlCursor xml, String ornament) throws InputException {
        if (ornament.equals("tremolo")) {
            String kind = xml.attribute("type").orElse("single");
            String marks = xml.text();
            if (kind.equals("unmeasured")) {
                tremolo = Optional.of(Tremolo.UNMEASURED);
            } else if (kind.equals("single") && Tremolo.MARKS.matcher(marks).matches()) {
                tremolo = Optional.of(Integer.valueOf(marks));
            }
        }
    }

    /** How many strokes the bowed note takes; none where they are too quick to count. */
    int strokes(BigFraction lengthQuarters) {
        return tremolo.isPresent() ? Tremolo.strokes(tremolo.get(), type, dots, lengthQuarters) : 1;
    }

    /**
     * A tremolo on one note: a stroke through the stem halves the value of the strokes, a quarter or longer beginning with
     * eighths; thirty-seconds and quicker mean as fast as can be, without counting (common practice, no source).
     */
    private static final class Tremolo {
        static final Pattern MARKS = Pattern.compile("[1-8]");
        static final int UNMEASURED = 8;
        static final int MOST_DOTS = 4;

        /** Slowest strokes that are not counted, in a quarter note. */
        private static final int UNCOUNTED = 8;

        /** Quarter notes in a note value. */
        private static final Map<String, BigFraction> QUARTERS = Map.of(
                "breve", new BigFraction(8),
                "whole", new BigFraction(4),
                "half", new BigFraction(2),
                "quarter", BigFraction.ONE,
                "eighth", BigFraction.ONE_HALF,
                "16th", BigFraction.ONE_QUARTER,
                "32nd", new BigFraction(1, 8));

        static int strokes(int marks, String type, int dots, BigFraction lengthQuarters) {
            Optional<BigFraction> value = Optional.ofNullable(QUARTERS.get(type));
            BigFraction plain = value.orElse(lengthQuarters);
            BigFraction beamed = plain.compareTo(BigFraction.ONE) < 0 ? plain : BigFraction.ONE;
            BigFraction stroke = beamed.divide(1 << marks);
            if (stroke.multiply(UNCOUNTED).compareTo(BigFraction.ONE) <= 0) {
                return 0;
            }
            BigFraction dotted = value.isPresent() ? plain.multiply(2).subtract(plain.divide(1 << dots)) : plain;
            BigFraction count = dotted.divide(stroke);
            return count.getDenominatorAsInt() == 1 ? count.getNumeratorAsInt() : 0;
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
