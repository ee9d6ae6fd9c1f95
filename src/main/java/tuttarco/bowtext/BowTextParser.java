package tuttarco.bowtext;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowBars.Content;
import tuttarco.bowtext.BowBars.Extent;
import tuttarco.bowtext.BowTextLine.Word;
import tuttarco.bowtext.BowTextLine.Wrong;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;
import tuttarco.score.PartBuilder;

/** Takes bow text line by line; see {@link BowTextReader} for the grammar. */
final class BowTextParser {
    static final Pattern LABEL = Pattern.compile("[\\p{L}\\p{N}.']{1,20}");
    private static final Pattern RANGE = Pattern.compile("([0-9]{1,6})-([0-9]{1,6})");
    private static final Pattern METRE = Pattern.compile("([0-9]{1,3})/([0-9]{1,3})");
    private static final int LONGEST_NAME = 200;

    private final Map<String, Content> written = new HashMap<>();
    private final BowBars bars;
    private final Optional<Part> under;
    private String name = "part";
    private Optional<Metre> metre = Optional.empty();
    private Optional<String> lastLabel = Optional.empty();

    /**
     * Reads the bowing of a whole part or of some bars.
     *
     * @param under the part whose bars are written over; if there is one, bars may be left out and its metre holds
     */
    BowTextParser(Instrument instrument, Optional<Part> under) {
        bars = new BowBars(instrument, under.isPresent());
        this.under = under;
    }

    void line(BowTextLine line) throws Wrong {
        List<Word> words = line.words();
        if (words.isEmpty()) {
            return;
        }
        int colon = words.stream().map(Word::text).toList().indexOf(":");
        Word first = words.get(0);
        if (first.text().equals("part") && colon != 1) {
            readName(first, line.text().substring("part".length()).strip());
        } else if (first.text().equals("metre") && colon != 1) {
            readMetre(words);
        } else if (colon < 1) {
            throw first.wrong(
                    "'" + Plain.text(first.text()) + "' begins neither a bar, such as '17: d u d u', nor a line of"
                            + " 'part' or 'metre'; write a bar number and a colon");
        } else {
            readBars(words.subList(0, colon), words.get(colon), words.subList(colon + 1, words.size()));
        }
    }

    Part finish() throws InputException {
        return bars.part(name);
    }

    private void readName(Word word, String text) throws Wrong {
        if (text.isEmpty() || text.length() > LONGEST_NAME) {
            throw word.wrong("a part has a name of 1 to " + LONGEST_NAME + " characters; write 'part Violin I'");
        }
        name = text;
    }

    private void readMetre(List<Word> words) throws Wrong {
        Word last = words.get(words.size() - 1);
        Matcher figures = METRE.matcher(last.text());
        if (words.size() != 2 || !figures.matches()) {
            throw last.wrong("a metre is written like 'metre 4/4'; correct it");
        }
        try {
            metre = Optional.of(new Metre(Integer.parseInt(figures.group(1)), Integer.parseInt(figures.group(2))));
        } catch (IllegalArgumentException e) {
            throw last.wrong(e.getMessage() + "; correct it");
        }
    }

    private void readBars(List<Word> head, Word colon, List<Word> tail) throws Wrong {
        Word first = head.get(0);
        List<String> labels = first.text().equals("pickup") ? List.of("0") : labels(first);
        Extent extent = extent(head);
        List<Content> contents = contents(extent, colon, tail, labels.size());
        for (int i = 0; i < labels.size(); i++) {
            String label = labels.get(i);
            requireNext(label, first);
            Metre now = metre.or(() -> barUnder(label).map(Bar::metre))
                    .orElseThrow(() ->
                            first.wrong("this bar has no metre; write a line like 'metre 4/4' before the first bar"));
            Content content = contents.get(i % contents.size());
            bars.add(label, now, content, first);
            written.put(label, content);
            lastLabel = Optional.of(label);
        }
    }

    private static List<String> labels(Word word) throws Wrong {
        Matcher range = RANGE.matcher(word.text());
        if (!range.matches()) {
            if (LABEL.matcher(word.text()).matches()) {
                return List.of(word.text());
            }
            throw word.wrong("'" + Plain.text(word.text()) + "' is not a bar number; write one like '17' or '17-20'");
        }
        int from = Integer.parseInt(range.group(1));
        int to = Integer.parseInt(range.group(2));
        if (to < from || to - from >= PartBuilder.MOST_BARS) {
            throw word.wrong("bars " + word.text() + " are no stretch of bars; write the lower number first");
        }
        List<String> labels = new ArrayList<>();
        for (int number = from; number <= to; number++) {
            labels.add(Integer.toString(number));
        }
        return labels;
    }

    private static Extent extent(List<Word> head) throws Wrong {
        boolean bare = head.get(0).text().equals("pickup");
        if (head.size() == 1) {
            return bare ? Extent.PICKUP : Extent.FULL;
        }
        Word word = head.get(1);
        Optional<Extent> extent = Extent.ofWord(word.text());
        if (bare || head.size() > 2 || extent.isEmpty()) {
            throw word.wrong("'" + Plain.text(word.text()) + "' can't stand before the colon; only 'pickup', 'short' or"
                    + " 'long' may follow the bar number");
        }
        return extent.get();
    }

    private List<Content> contents(Extent extent, Word colon, List<Word> tail, int bars) throws Wrong {
        if (tail.isEmpty()) {
            throw colon.wrong("nothing follows the colon; write strokes such as 'd u d u', or '-4' for a rest of four"
                    + " beats");
        }
        if (tail.get(0).text().equals("as")) {
            return repeated(extent, tail, bars);
        }
        List<BowToken> entries = new ArrayList<>();
        for (Word word : tail) {
            entries.add(BowToken.of(word.text())
                    .orElseThrow(
                            () -> word.wrong("'" + Plain.text(word.text()) + "' is no stroke or rest; write d, u, . or"
                                    + " -, with a length in beats if it isn't one, like 'd2' or 'u1/2'")));
        }
        return List.of(new Content(extent, entries));
    }

    private List<Content> repeated(Extent extent, List<Word> tail, int bars) throws Wrong {
        Word as = tail.get(0);
        if (tail.size() != 2 || extent != Extent.FULL) {
            throw as.wrong("'as' stands alone with the bars it repeats; write it like '18-20: as 17'");
        }
        Word source = tail.get(1);
        List<Content> contents = new ArrayList<>();
        for (String label : labels(source)) {
            Content content = written.get(label);
            if (content == null) {
                throw source.wrong("bar " + Plain.text(label) + " is not written above; name an earlier bar");
            }
            contents.add(content);
        }
        if (bars % contents.size() != 0) {
            throw source.wrong(
                    contents.size() + " bars can't be repeated evenly in " + bars + "; name as many bars, or one");
        }
        return contents;
    }

    private void requireNext(String label, Word word) throws Wrong {
        if (written.containsKey(label)) {
            throw word.wrong("bar " + Plain.text(label) + " is already written above; write each bar once");
        }
        if (under.isPresent()) {
            if (barUnder(label).isEmpty()) {
                throw word.wrong("bar " + Plain.text(label) + " is not in the part; correct its number");
            }
            return;
        }
        Optional<Integer> before = lastLabel.flatMap(BowTextParser::number);
        Optional<Integer> now = number(label);
        if (before.isPresent() && now.isPresent() && now.get() != before.get() + 1) {
            throw word.wrong("bar " + Plain.text(label) + " can't follow bar " + before.get()
                    + "; write the bars in order and leave none out");
        }
    }

    private Optional<Bar> barUnder(String label) {
        return under.flatMap(part ->
                part.bars().stream().filter(bar -> bar.number().equals(label)).findFirst());
    }

    private static Optional<Integer> number(String label) {
        return label.matches("[0-9]{1,6}") ? Optional.of(Integer.parseInt(label)) : Optional.empty();
    }
}
