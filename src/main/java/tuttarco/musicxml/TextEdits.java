package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Changes to an XML text, each at a place of the text as it was. */
final class TextEdits {
    private record Edit(int from, int to, String instead) {}

    private final String text;
    private final List<Edit> edits = new ArrayList<>();

    TextEdits(String text) {
        this.text = text;
    }

    void replace(int from, int to, String instead) {
        edits.add(new Edit(from, to, instead));
    }

    void insert(int at, String more) {
        replace(at, at, more);
    }

    /** Writes more behind what the element holds. */
    void append(XmlElement element, String more) {
        if (element.emptyTag()) {
            int slash = element.end() - 2;
            replace(slash, element.end(), ">" + more + "</" + element.name() + ">");
        } else if (element.children().isEmpty()) {
            insert(element.open().end(), more);
        } else {
            insert(element.children().get(element.children().size() - 1).end(), more);
        }
    }

    /** Takes an element away with the blanks before it, so that no empty line stays. */
    void remove(XmlElement element) {
        int from = element.start();
        while (Character.isWhitespace(text.charAt(from - 1))) {
            from--;
        }
        replace(from, element.end(), "");
    }

    /** Whether these children, at least one, are all that stands in the element. */
    boolean holdsOnly(XmlElement element, List<XmlElement> children) {
        int at = element.open().end();
        for (XmlElement child : children) {
            if (!blank(at, child.start())) {
                return false;
            }
            at = child.end();
        }
        return !children.isEmpty() && blank(at, element.close().start());
    }

    private boolean blank(int from, int to) {
        return text.substring(from, to).isBlank();
    }

    /** The text with all changes. */
    String applied() {
        edits.sort(Comparator.comparingInt(Edit::from));
        StringBuilder changed = new StringBuilder(text.length());
        int at = 0;
        for (Edit edit : edits) {
            changed.append(text, at, edit.from()).append(edit.instead());
            at = edit.to();
        }
        return changed.append(text, at, text.length()).toString();
    }
}
