package tuttarco.musicxml;

import java.util.Optional;

/**
 * The tags of a well-formed XML text in order, each with its place, so that something can be written between them.
 * Comments, character data, instructions and the document type line are passed over.
 */
final class XmlTags {
    enum Kind {
        OPEN,
        CLOSE,
        /** Opens and closes at once. */
        EMPTY
    }

    /**
     * One tag.
     *
     * @param start index of its first character in the text
     * @param end index after its last
     */
    record Tag(String name, Kind kind, int start, int end) {}

    private final String text;
    private int at;

    /** @param text well-formed; without declarations in its document type line */
    XmlTags(String text) {
        this.text = text;
    }

    /** The next tag, nothing after the last. */
    Optional<Tag> next() {
        while (true) {
            int start = text.indexOf('<', at);
            if (start < 0) {
                return Optional.empty();
            }
            if (text.startsWith("<!--", start)) {
                at = after("-->", start + "<!--".length());
            } else if (text.startsWith("<![CDATA[", start)) {
                at = after("]]>", start);
            } else if (text.startsWith("<?", start)) {
                at = after("?>", start);
            } else {
                at = afterTag(start);
                if (text.charAt(start + 1) != '!') {
                    return Optional.of(tag(start, at));
                }
            }
        }
    }

    private Tag tag(int start, int end) {
        boolean closes = text.charAt(start + 1) == '/';
        int nameStart = closes ? start + 2 : start + 1;
        int nameEnd = nameStart;
        while (!endsName(text.charAt(nameEnd))) {
            nameEnd++;
        }
        Kind kind = closes ? Kind.CLOSE : text.charAt(end - 2) == '/' ? Kind.EMPTY : Kind.OPEN;
        return new Tag(text.substring(nameStart, nameEnd), kind, start, end);
    }

    private static boolean endsName(char c) {
        return Character.isWhitespace(c) || c == '/' || c == '>';
    }

    private int after(String mark, int from) {
        return wellFormed(text.indexOf(mark, from)) + mark.length();
    }

    /** A value in quotes may hold a {@code >}. */
    private int afterTag(int start) {
        char quote = 0;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '>') {
                return i + 1;
            }
        }
        return wellFormed(-1);
    }

    private static int wellFormed(int index) {
        if (index < 0) {
            throw new IllegalArgumentException("the text is not well-formed XML");
        }
        return index;
    }
}
