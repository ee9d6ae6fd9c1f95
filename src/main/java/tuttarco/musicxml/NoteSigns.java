package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The bow signs of one {@code <note>} element and the place for more.
 *
 * @param bows in the order of the file
 */
record NoteSigns(XmlElement note, List<XmlElement> bows) {
    static final String DOWN_BOW = "down-bow";
    static final String UP_BOW = "up-bow";
    private static final Pattern STARTS = Pattern.compile("\\stype\\s*=\\s*[\"']start[\"']");
    private static final String NOTATIONS = "notations";
    private static final String TECHNICAL = "technical";

    /** What the schema lets follow a note's notations. */
    private static final Set<String> AFTER_NOTATIONS = Set.of("lyric", "play", "listen");

    /** @param text the text of the document */
    boolean beginsSlur(String text) {
        return note.children(NOTATIONS).stream()
                .flatMap(n -> n.children("slur").stream())
                .map(slur -> text.substring(slur.start(), slur.open().end()))
                .anyMatch(tag -> STARTS.matcher(tag).find());
    }

    static NoteSigns of(XmlElement note) {
        List<XmlElement> bows = note.children(NOTATIONS).stream()
                .flatMap(n -> n.children(TECHNICAL).stream())
                .flatMap(t -> t.children().stream())
                .filter(s -> s.name().equals(DOWN_BOW) || s.name().equals(UP_BOW))
                .toList();
        return new NoteSigns(note, bows);
    }

    /** Adds a sign, in the first technical signs, or else the first notations, or else notations of its own. */
    void add(String sign, TextEdits edits) {
        List<XmlElement> notations = note.children(NOTATIONS);
        List<XmlElement> technical =
                notations.stream().flatMap(n -> n.children(TECHNICAL).stream()).toList();
        String technicalSign = "<" + TECHNICAL + ">" + sign + "</" + TECHNICAL + ">";
        if (!technical.isEmpty()) {
            edits.append(technical.get(0), sign);
        } else if (!notations.isEmpty()) {
            edits.append(notations.get(0), technicalSign);
        } else {
            edits.insert(afterLastBeforeNotations(), "<" + NOTATIONS + ">" + technicalSign + "</" + NOTATIONS + ">");
        }
    }

    private int afterLastBeforeNotations() {
        int after = note.open().end();
        for (XmlElement child : note.children()) {
            if (AFTER_NOTATIONS.contains(child.name())) {
                break;
            }
            after = child.end();
        }
        return after;
    }

    /** Takes signs away, and with them the elements that held nothing else. */
    void remove(List<XmlElement> signs, TextEdits edits) {
        for (XmlElement notations : note.children(NOTATIONS)) {
            List<XmlElement> technicalGone = new ArrayList<>();
            List<XmlElement> gone = new ArrayList<>();
            for (XmlElement technical : notations.children(TECHNICAL)) {
                List<XmlElement> signsGone =
                        technical.children().stream().filter(signs::contains).toList();
                if (edits.holdsOnly(technical, signsGone)) {
                    technicalGone.add(technical);
                } else {
                    gone.addAll(signsGone);
                }
            }
            if (edits.holdsOnly(notations, technicalGone)) {
                edits.remove(notations);
            } else {
                technicalGone.forEach(edits::remove);
                gone.forEach(edits::remove);
            }
        }
    }
}
