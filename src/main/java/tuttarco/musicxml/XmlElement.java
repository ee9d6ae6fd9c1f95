package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.List;
import tuttarco.musicxml.XmlTags.Kind;
import tuttarco.musicxml.XmlTags.Tag;

/**
 * An element of an XML text with the places of its tags.
 *
 * @param close the same as {@code open} where one tag does both
 */
record XmlElement(Tag open, Tag close, List<XmlElement> children) {
    /** The element a tag opens; takes the tags up to its end. */
    static XmlElement of(Tag open, XmlTags tags) {
        List<XmlElement> children = new ArrayList<>();
        if (open.kind() == Kind.EMPTY) {
            return new XmlElement(open, open, children);
        }
        Tag tag = tags.next().orElseThrow();
        while (tag.kind() != Kind.CLOSE) {
            children.add(of(tag, tags));
            tag = tags.next().orElseThrow();
        }
        return new XmlElement(open, tag, children);
    }

    String name() {
        return open.name();
    }

    int start() {
        return open.start();
    }

    int end() {
        return close.end();
    }

    boolean emptyTag() {
        return open.kind() == Kind.EMPTY;
    }

    boolean holds(String child) {
        return children.stream().anyMatch(c -> c.name().equals(child));
    }

    List<XmlElement> children(String name) {
        return children.stream().filter(c -> c.name().equals(name)).toList();
    }
}
