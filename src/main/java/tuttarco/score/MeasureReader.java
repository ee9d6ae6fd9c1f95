package tuttarco.score;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.BigFraction;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Reads the {@code <measure>} elements of one MusicXML part in turn; what a measure sets (divisions, time, pizzicato) holds
 * on in the next ones.
 */
final class MeasureReader {
    /**
     * One measure.
     *
     * @param length how far its notes reach in any voice, quarter notes; zero if nothing is written
     * @param notes notes and rests of the first voice, in order, without those that begin inside the one before
     */
    record Measure(String number, boolean implicit, Metre metre, BigFraction length, List<WrittenNote> notes) {}

    /** Longest measure, quarter notes; guards against absurd files (an unmeasured cadenza has a few dozen). */
    private static final int LONGEST_QUARTERS = 1024;

    private static final int SEMITONES = 12;

    /** Longest bar number, characters. */
    private static final int LONGEST_NUMBER = 20;

    private final XmlCursor xml;
    private final TimeReader time;
    private Optional<BigFraction> divisions = Optional.empty();
    private boolean plucked;

    /** A forte is written before the next note. */
    private boolean forte;

    private int transpose;
    private int measures;
    private int notes;

    private BigFraction at = BigFraction.ZERO;
    private BigFraction reached = BigFraction.ZERO;
    private final Map<String, List<WrittenNote>> voices = new LinkedHashMap<>();

    MeasureReader(XmlCursor xml) {
        this.xml = xml;
        this.time = new TimeReader(xml);
    }

    Measure read() throws InputException {
        measures++;
        String number = number();
        boolean implicit = xml.attribute("implicit").filter("yes"::equals).isPresent();
        at = BigFraction.ZERO;
        reached = BigFraction.ZERO;
        voices.clear();
        notes = 0;
        xml.children(this::readChild);
        Metre metre = time.metre()
                .orElseThrow(() -> xml.wrong("no time signature stands before the end of the first bar; give the part a"
                        + " metre and export it again"));
        return new Measure(number, implicit, metre, reached, firstVoice());
    }

    private String number() throws InputException {
        String number = xml.attribute("number").orElse("");
        if (number.isEmpty()) {
            return Integer.toString(measures);
        }
        if (number.length() > LONGEST_NUMBER || number.chars().anyMatch(Character::isISOControl)) {
            throw xml.wrong("a bar number has at most " + LONGEST_NUMBER + " plain characters; shorten it");
        }
        return number;
    }

    private void readChild(String child) throws InputException {
        switch (child) {
            case "attributes" -> xml.children(this::readAttribute);
            case "note" -> place(NoteElement.read(xml));
            case "backup" -> xml.children(inner -> move(inner, -1));
            case "forward" -> xml.children(inner -> move(inner, 1));
            case "sound" -> readSound();
            case "direction" -> xml.children(this::readDirection);
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

    private void readDirection(String child) throws InputException {
        if (child.equals("sound")) {
            readSound();
        } else if (child.equals("direction-type")) {
            xml.children(this::readWords);
        }
    }

    private void readWords(String child) throws InputException {
        if (child.equals("dynamics")) {
            xml.children(sign -> forte = NoteElement.FORTES.contains(sign));
        } else if (child.equals("words")) {
            String words = xml.text().toLowerCase(Locale.ROOT);
            plucked = !words.startsWith("arco") && (plucked || words.startsWith("pizz"));
        }
    }

    private void readSound() {
        xml.attribute("pizzicato").ifPresent(word -> plucked = word.equals("yes"));
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
        if (note.grace) {
            return;
        }
        if (forte && !note.chord) {
            note.joins = note.joins.loud();
            forte = false;
        }
        List<WrittenNote> voice = voices.computeIfAbsent(note.voice, name -> new ArrayList<>());
        if (note.chord) {
            if (!voice.isEmpty() && !note.cue) {
                int last = voice.size() - 1;
                voice.set(last, voice.get(last).withChord(sounding(note), note.joins));
            }
            return;
        }
        BigFraction start = at;
        BigFraction length = quarters(
                note.durationDivisions.orElseThrow(() -> xml.wrong("a note has no duration; export the part again")));
        moveTo(start.add(length));
        boolean afterLast = voice.isEmpty() || voice.get(voice.size() - 1).end().compareTo(start) <= 0;
        if (!note.cue && afterLast) {
            voice.add(new WrittenNote(
                    place, start, length, sounding(note), !note.rest && !note.plucked && !plucked, note.joins));
        }
    }

    private List<Integer> sounding(NoteElement note) {
        return note.pitch.map(pitch -> pitch + transpose).stream().toList();
    }

    private List<WrittenNote> firstVoice() {
        return voices.values().stream()
                .filter(notes -> !notes.isEmpty())
                .findFirst()
                .map(List::copyOf)
                .orElse(List.of());
    }
}
