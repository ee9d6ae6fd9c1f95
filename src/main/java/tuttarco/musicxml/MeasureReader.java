package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Fractions;
import tuttarco.score.Metre;
import tuttarco.score.PartChoice;

/**
 * Reads the measures of one MusicXML part in turn; what a measure sets (divisions, time, pizzicato, bars repeated by a sign)
 * holds on in the next ones.
 */
final class MeasureReader {
    /**
     * A measure's name.
     *
     * @param number as printed
     * @param implicit whether it is not counted, as a pickup
     */
    record Head(String number, boolean implicit) {}

    /**
     * One measure.
     *
     * @param length how far its notes reach in any voice, quarter notes; zero if nothing is written
     * @param notes notes and rests of the chosen voice, in order
     * @param notesIn index of the measure in which these notes are written: its own, or an earlier one it repeats
     */
    record Measure(
            Head head,
            Metre metre,
            BigFraction length,
            List<WrittenNote> notes,
            int notesIn,
            Optional<String> rehearsal,
            Signs signs) {
        /** This, under the signs of another part too. */
        Measure withSigns(Signs others) {
            return new Measure(head, metre, length, notes, notesIn, rehearsal, signs.and(others));
        }

        Measure withNotes(List<WrittenNote> otherNotes) {
            return new Measure(head, metre, length, otherNotes, notesIn, rehearsal, signs);
        }

        private boolean silent() {
            return notes.stream().allMatch(note -> note.pitches().isEmpty() && note.strokes() == 0);
        }

        private Measure withNotesOf(Measure other) {
            return new Measure(head, metre, other.length, other.notes, other.notesIn, rehearsal, signs);
        }
    }

    /** Longest measure, quarter notes; guards against absurd files (an unmeasured cadenza has a few dozen). */
    private static final int LONGEST_QUARTERS = 1024;

    private static final int SEMITONES = 12;

    /** Longest bar number, characters. */
    private static final int LONGEST_NUMBER = 20;

    /** Most notes of a part, with rests; the longest evening's opera has some ten thousands (common practice). */
    private static final int MOST_NOTES = 250_000;

    private static final Pattern REPEATED = Pattern.compile("[1-9]");

    private final XmlCursor xml;
    private final TimeReader time;
    private final SignReader signs;
    private final Voices voices;
    private final List<Measure> measures = new ArrayList<>();
    private Optional<BigFraction> divisions = Optional.empty();
    private Optional<Integer> repeatedBars = Optional.empty();
    private boolean plucked;

    /** A forte is written before the next note. */
    private boolean forte;

    private int transpose;
    private int allNotes;

    private int notes;
    private BigFraction at = BigFraction.ZERO;
    private BigFraction reached = BigFraction.ZERO;
    private Optional<String> rehearsal = Optional.empty();

    MeasureReader(XmlCursor xml, PartChoice choice) {
        this.xml = xml;
        this.time = new TimeReader(xml);
        this.signs = new SignReader(xml);
        this.voices = new Voices(choice);
    }

    /** The measures read. */
    List<Measure> measures() throws InputException {
        Optional<String> missing = voices.missing();
        if (missing.isPresent()) {
            throw new InputException(missing.get());
        }
        return List.copyOf(measures);
    }

    /** Reads the number of the measure the cursor stands on, the so-manieth. */
    static Head head(XmlCursor xml, int count) throws InputException {
        boolean implicit = xml.attribute("implicit").filter("yes"::equals).isPresent();
        String number = xml.attribute("text")
                .filter(text -> !implicit && !text.isEmpty())
                .or(() -> xml.attribute("number"))
                .filter(text -> !text.isEmpty())
                .orElse(Integer.toString(count));
        if (number.length() > LONGEST_NUMBER || number.chars().anyMatch(Character::isISOControl)) {
            throw xml.wrong("a bar number has at most " + LONGEST_NUMBER + " plain characters; shorten it");
        }
        return new Head(number, implicit);
    }

    /** Reads what the element the cursor stands on holds of the measure. */
    void read(Head head) throws InputException {
        at = BigFraction.ZERO;
        reached = BigFraction.ZERO;
        rehearsal = Optional.empty();
        notes = 0;
        voices.beginMeasure();
        signs.begin();
        xml.children(this::readChild);
        Metre metre = time.metre()
                .orElseThrow(() -> xml.wrong("no time signature stands before the end of the first bar; give the part a"
                        + " metre and export it again"));
        List<WrittenNote> chosen = voices.chosen();
        requireInTurn(head, chosen);
        Measure measure = new Measure(head, metre, reached, chosen, measures.size(), rehearsal, signs.signs());
        measures.add(asRepeated(measure));
    }

    /** A bar that a sign says repeats an earlier one, and in which no notes are written, has the notes of that one. */
    private Measure asRepeated(Measure measure) {
        int from = measures.size() - repeatedBars.orElse(0);
        return measure.silent() && from >= 0 && from < measures.size()
                ? measure.withNotesOf(measures.get(from))
                : measure;
    }

    private void requireInTurn(Head head, List<WrittenNote> voice) throws InputException {
        for (int i = 1; i < voice.size(); i++) {
            if (voice.get(i).start().compareTo(voice.get(i - 1).end()) < 0) {
                throw xml.wrong("in bar " + Plain.text(head.number())
                        + " notes of one voice begin before the ones before them end; put them in voices of their own");
            }
        }
    }

    private void readChild(String child) throws InputException {
        switch (child) {
            case "attributes" -> xml.children(this::readAttribute);
            case "note" -> place(NoteElement.read(xml));
            case "backup" -> xml.children(inner -> move(inner, -1));
            case "forward" -> xml.children(inner -> move(inner, 1));
            case "sound", "direction" -> take(DirectionElement.read(xml));
            case "barline" -> signs.readBarline();
            default -> {}
        }
    }

    private void readAttribute(String attribute) throws InputException {
        if (attribute.equals("time")) {
            time.read();
        } else if (attribute.equals("divisions")) {
            divisions = Optional.of(NoteElement.duration(xml));
        } else if (attribute.equals("transpose")) {
            transpose = 0;
            xml.children(this::readTranspose);
        } else if (attribute.equals("measure-style")) {
            xml.children(this::readMeasureStyle);
        }
    }

    private void readMeasureStyle(String style) throws InputException {
        if (style.equals("measure-repeat")) {
            boolean start = xml.attribute("type").filter("start"::equals).isPresent();
            repeatedBars = Optional.of(xml.text())
                    .filter(text -> start && REPEATED.matcher(text).matches())
                    .map(Integer::valueOf);
        }
    }

    private void readTranspose(String child) throws InputException {
        switch (child) {
            case "chromatic" -> transpose += semitones(1);
            case "octave-change" -> transpose += semitones(SEMITONES);
            default -> {}
        }
    }

    private int semitones(int each) throws InputException {
        String text = xml.text();
        if (!text.matches("[+-]?[0-9]{1,2}(\\.0+)?")) {
            throw xml.wrong("a transposition is a whole number, not '" + Plain.text(text) + "'; export the part again");
        }
        return each * (int) Double.parseDouble(text);
    }

    private void take(DirectionElement direction) {
        signs.add(direction);
        rehearsal = rehearsal.or(direction::rehearsal);
        plucked = direction.plucked().orElse(plucked);
        forte = direction.forte().orElse(forte);
    }

    private void move(String child, int sign) throws InputException {
        if (child.equals("duration")) {
            moveTo(at.add(quarters(NoteElement.duration(xml)).multiply(sign)));
        }
    }

    private void moveTo(BigFraction place) throws InputException {
        if (place.getNumerator().signum() < 0) {
            throw xml.wrong("this goes back beyond the beginning of the bar; export the part again");
        }
        if (place.doubleValue() > LONGEST_QUARTERS || !Fractions.sane(place)) {
            throw xml.wrong("this bar holds a length that no bar has; check its durations and divisions");
        }
        at = place;
        reached = Fractions.max(reached, at);
    }

    private BigFraction quarters(BigFraction durationDivisions) throws InputException {
        return durationDivisions.divide(divisions.orElseThrow(() -> xml.wrong(
                "a duration comes before any <divisions>, so its length is unknown; export the part" + " again")));
    }

    private void place(NoteElement note) throws InputException {
        int place = notes++;
        if (++allNotes > MOST_NOTES) {
            throw xml.wrong("the part has more than " + MOST_NOTES + " notes; give a shorter one");
        }
        String voice = voices.voice(note);
        if (note.grace) {
            voices.addGrace(voice, note.joins);
            return;
        }
        if (forte && !note.chord) {
            note.joins = note.joins.loud();
            forte = false;
        }
        if (note.chord) {
            if (!note.cue) {
                voices.addToChord(voice, written(note, place, at, BigFraction.ZERO));
            }
            return;
        }
        BigFraction start = at;
        BigFraction length = quarters(
                note.durationDivisions.orElseThrow(() -> xml.wrong("a note has no duration; export the part again")));
        moveTo(start.add(length));
        if (!note.cue) {
            voices.add(voice, written(note, place, start, length));
        }
    }

    private WrittenNote written(NoteElement note, int place, BigFraction start, BigFraction length) {
        boolean pizzicato = plucked || note.plucked;
        List<Integer> sounding =
                note.pitch.map(pitch -> pitch + transpose).stream().toList();
        int strokes = note.rest || pizzicato ? 0 : note.strokes(length);
        return new WrittenNote(place, start, length, sounding, pizzicato, strokes, note.joins);
    }
}
