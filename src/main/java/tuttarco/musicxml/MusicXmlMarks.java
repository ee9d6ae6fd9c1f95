package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.files.InputException;
import tuttarco.musicxml.XmlTags.Kind;
import tuttarco.musicxml.XmlTags.Tag;
import tuttarco.score.Note.Written;

/**
 * Writes bow signs into a MusicXML document (W3C, MusicXML 4.0) and leaves every other byte of it as it is.
 *
 * <p>The bow signs of the strokes given are replaced, also those on grace notes with which they begin; all others stay. A sign goes among the note's technical signs, which
 * are made where the order of the schema has them if there are none.
 */
final class MusicXmlMarks {
    /** Colour of questions: the accent of the report on paper, dark enough to be read in print. */
    static final String QUESTION_COLOUR = "#8C3B1F";

    /** Stands before the note. Its exact text tells our own question from another's words. */
    static final String QUESTION = "<direction placement=\"above\"><direction-type><words color=\"" + QUESTION_COLOUR
            + "\">?</words></direction-type></direction>";

    /** Levels of the document at which its parts, measures and notes lie; the root is the first. */
    private static final int NOTE_LEVEL = 4;

    private final String text;
    private final TextEdits edits;
    private final Map<Written, StrokeMark> firstNotes = new HashMap<>();
    private final Map<Written, StrokeMark> laterNotes = new HashMap<>();

    /** Grace notes since the last other note. */
    private final List<XmlElement> graces = new ArrayList<>();

    private MusicXmlMarks(String text, List<StrokeMark> marks) {
        this.text = text;
        this.edits = new TextEdits(text);
        for (StrokeMark mark : marks) {
            firstNotes.put(mark.notes().get(0), mark);
            mark.notes().subList(1, mark.notes().size()).forEach(note -> laterNotes.put(note, mark));
        }
    }

    /**
     * The text with the marks.
     *
     * @param text a whole MusicXML document, well-formed
     * @param part index of the part among those of the document
     * @throws InputException if the document does not hold the notes
     */
    static String write(String text, String fileName, int part, List<StrokeMark> marks) throws InputException {
        MusicXmlMarks writer = new MusicXmlMarks(text, marks);
        writer.walk(part);
        if (!writer.firstNotes.isEmpty()) {
            Written lost = writer.firstNotes.keySet().iterator().next();
            throw new InputException(fileName + " holds no note number " + (lost.note() + 1) + " in its measure number "
                    + (lost.measure() + 1) + "; check that it is the part that was read");
        }
        return writer.edits.applied();
    }

    /** Counts parts, measures and notes as their elements begin; measures lie in parts, or parts in measures. */
    private void walk(int wantedPart) {
        XmlTags tags = new XmlTags(text);
        int level = 0;
        int part = -1;
        int measure = -1;
        int note = -1;
        boolean timewise = false;
        boolean ownChord = false;
        for (Optional<Tag> next = tags.next(); next.isPresent(); next = tags.next()) {
            Tag tag = next.get();
            if (tag.kind() == Kind.CLOSE) {
                level--;
                continue;
            }
            int here = level + 1;
            if (here == 1) {
                timewise = tag.name().equals("score-timewise");
            } else if (here < NOTE_LEVEL && tag.name().equals("part")) {
                part++;
                measure = timewise ? measure : -1;
                note = -1;
            } else if (here < NOTE_LEVEL && tag.name().equals("measure")) {
                measure++;
                part = timewise ? -1 : part;
                note = -1;
            } else if (here == NOTE_LEVEL && part == wantedPart && tag.name().equals("note")) {
                note++;
                XmlElement element = XmlElement.of(tag, tags);
                ownChord = visit(new Written(measure, note), element, ownChord);
                continue;
            }
            level += tag.kind() == Kind.OPEN ? 1 : 0;
        }
    }

    /** Returns whether the note belongs to a stroke given; the notes of its chord then do as well. */
    private boolean visit(Written place, XmlElement note, boolean ownChord) {
        if (note.holds("chord") && ownChord) {
            signs(note, Optional.empty(), false);
            return true;
        }
        if (note.holds("grace")) {
            graces.add(note);
            return false;
        }
        List<XmlElement> before = List.copyOf(graces);
        graces.clear();
        Optional<StrokeMark> mark = Optional.ofNullable(firstNotes.remove(place));
        if (mark.isPresent()) {
            before.stream()
                    .dropWhile(grace -> !NoteSigns.of(grace).beginsSlur(text))
                    .forEach(grace -> signs(grace, Optional.empty(), false));
            question(note, mark.get().question());
            signs(note, mark.get().sign(), mark.get().question());
            return true;
        }
        if (laterNotes.containsKey(place)) {
            question(note, false);
            signs(note, Optional.empty(), false);
            return true;
        }
        return false;
    }

    private void question(XmlElement note, boolean asked) {
        boolean stands = text.startsWith(QUESTION, note.start() - QUESTION.length());
        if (asked && !stands) {
            edits.insert(note.start(), QUESTION);
        } else if (!asked && stands) {
            edits.replace(note.start() - QUESTION.length(), note.start(), "");
        }
    }

    private void signs(XmlElement note, Optional<BowDirection> sign, boolean question) {
        NoteSigns there = NoteSigns.of(note);
        if (sign.isEmpty()) {
            there.remove(there.bows(), edits);
            return;
        }
        String name = sign.get() == BowDirection.DOWN ? NoteSigns.DOWN_BOW : NoteSigns.UP_BOW;
        String coloured = "<" + name + " color=\"" + QUESTION_COLOUR + "\"/>";
        String wanted = question ? coloured : "<" + name + "/>";
        if (there.bows().isEmpty()) {
            there.add(wanted, edits);
            return;
        }
        XmlElement first = there.bows().get(0);
        boolean asWanted =
                question == text.substring(first.start(), first.end()).equals(coloured)
                        && first.name().equals(name);
        if (!asWanted) {
            edits.replace(first.start(), first.end(), wanted);
        }
        there.remove(there.bows().subList(1, there.bows().size()), edits);
    }
}
