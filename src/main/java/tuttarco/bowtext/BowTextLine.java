package tuttarco.bowtext;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One line of bow text as words, without its comment. */
record BowTextLine(String text, List<Word> words) {
    /**
     * A word and where it begins.
     *
     * @param column in characters as people count them (code points), from 1
     */
    record Word(String text, int column) {
        Wrong wrong(String what) {
            return new Wrong(what, column);
        }
    }

    /** What is wrong at a place of the line. */
    static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        private final int column;

        Wrong(String what, int column) {
            super(what);
            this.column = column;
        }

        int column() {
            return column;
        }
    }

    /** A colon is a word of its own; a comment begins the line or follows a blank. */
    private static final Pattern WORD = Pattern.compile(":|[^ \t:]+");

    /** Longest line, characters; guards against absurd files. */
    private static final int LONGEST = 10_000;

    private static final Pattern COMMENT = Pattern.compile("(?:^|[ \t])#.*", Pattern.DOTALL);
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\x80-\\x9f&&[^\t]]");

    static BowTextLine of(String line) throws Wrong {
        if (line.length() > LONGEST) {
            throw new Wrong(
                    "the line is longer than " + LONGEST + " characters; write fewer strokes in a line", LONGEST);
        }
        Matcher control = CONTROL.matcher(line);
        if (control.find()) {
            throw new Wrong("a control character stands here; take it out", column(line, control.start()));
        }
        String text = COMMENT.matcher(line).replaceFirst("");
        Matcher word = WORD.matcher(text);
        List<Word> words = new ArrayList<>();
        while (word.find()) {
            words.add(new Word(word.group(), column(text, word.start())));
        }
        return new BowTextLine(text.strip(), List.copyOf(words));
    }

    private static int column(String line, int index) {
        return line.codePointCount(0, index) + 1;
    }
}
