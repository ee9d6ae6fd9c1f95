package tuttarco.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tuttarco.chart.Chart;
import tuttarco.chart.Palette;
import tuttarco.chart.PlayedBars;
import tuttarco.chart.SignSample;
import tuttarco.chart.Type;
import tuttarco.chart.Words;

/**
 * A sheet laid out on one page of A4, within what a page of Letter holds too: everything has its place, and is as much smaller
 * as it takes for the page to hold it. Lengths are points from the page's top left corner.
 *
 * @param blocks in reading order
 * @param rules lines across the page
 * @param signs what is drawn without being read out
 * @param bottom where the last line ends
 * @param scale how much larger than usual it is set
 */
record SheetLayout(List<Block> blocks, List<Rule> rules, List<Picture> signs, double bottom, double scale) {
    private static final double PER_MM = 72 / 25.4;

    /** A4 (ISO 216). */
    static final double WIDTH = 210 * PER_MM;

    static final double HEIGHT = 297 * PER_MM;

    private static final double SIDE = 16 * PER_MM;
    private static final double TOP = 14 * PER_MM;

    /** Letter is 279.4 mm high (ANSI/ASME Y14.1), less a margin that printers keep. */
    private static final double LOWEST = 268 * PER_MM;

    private static final double BODY = 10.5;
    private static final double SMALL = 9;
    private static final double LEADING = 1.35;

    /** Points a pixel of a chart. */
    private static final double PIXEL = 0.64;

    /** How much larger a sheet is set that has little to say. */
    private static final double LARGEST = 1.15;

    private static final double SHRINK = 0.97;
    private static final double SMALLEST = 0.5;

    /** Lines of a label or a title, which may be long. */
    private static final int LABEL_LINES = 2;

    /** The blank between a number and what it counts or numbers, at which no line may break. */
    private static final Pattern COUNTED = Pattern.compile("(?<=\\d) (?=[a-z%])|(?<=[a-z]) (?=\\d+\\b)");

    private static final String NO_BREAK = "\u00A0";

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    /** What a block is to a reader: its type in the structure of a PDF. */
    enum Role {
        TITLE("H1"),
        HEADING("H2"),
        PLACE("H3"),
        TEXT("P"),
        ITEM("LI"),
        FIGURE("Figure");

        private final String type;

        Role(String type) {
            this.type = type;
        }

        String type() {
            return type;
        }
    }

    /**
     * What is read out as one.
     *
     * @param text all of it, or what a picture shows
     * @param lines what is drawn of the text: all of it but emoji that no typeface has
     */
    record Block(Role role, String text, List<Line> lines, Optional<Picture> picture) {
        /** Whether the lines say all of the text. */
        boolean drawnWhole() {
            String drawn = lines.stream().map(Line::text).collect(Collectors.joining());
            return unbroken(drawn).contains(unbroken(text));
        }

        private static String unbroken(String text) {
            return text.replaceAll("[\\s\\u00A0]+", "");
        }
    }

    /** @param baseline where its letters stand */
    record Line(String text, Font font, Color colour, double x, double baseline) {}

    /** @param scale points a pixel */
    record Picture(Chart chart, double x, double y, double scale) {}

    record Rule(double x1, double x2, double y) {}

    /** All letters that stand on it, and those of English words besides. */
    String letters() {
        return IntStream.rangeClosed(' ', '~').mapToObj(Character::toString).collect(Collectors.joining())
                + "–…\u00A0"
                + blocks.stream().map(Block::text).collect(Collectors.joining());
    }

    /** As large as fits. */
    static SheetLayout of(SheetModel sheet) {
        double scale = LARGEST;
        SheetLayout layout = new Setter(scale).set(sheet);
        while (layout.bottom() > LOWEST && scale > SMALLEST) {
            scale *= SHRINK;
            layout = new Setter(scale).set(sheet);
        }
        return layout;
    }

    /** A text as the page can show it. */
    private static String shown(String text) {
        return Normalizer.normalize(Words.plain(text), Normalizer.Form.NFC);
    }

    /** Sets one block after the other, downwards. */
    private static final class Setter {
        private final double scale;
        private final List<Block> blocks = new ArrayList<>();
        private final List<Rule> rules = new ArrayList<>();
        private final List<Picture> signs = new ArrayList<>();
        private final Font body;
        private final Font strong;
        private final Font small;
        private double y = TOP;

        Setter(double scale) {
            this.scale = scale;
            this.body = sized(Type.body(), BODY);
            this.strong = sized(Type.strong(), BODY);
            this.small = sized(Type.body(), SMALL);
        }

        private Font sized(Font font, double points) {
            return font.deriveFont((float) (points * scale));
        }

        SheetLayout set(SheetModel sheet) {
            head(sheet.head());
            sheet.sections().forEach(this::section);
            signs(sheet.signs());
            y += 6 * scale;
            for (String sentence : sheet.care()) {
                text(Role.TEXT, sentence, small, secondary(), SIDE, WIDTH - SIDE);
            }
            return new SheetLayout(List.copyOf(blocks), List.copyOf(rules), List.copyOf(signs), y, scale);
        }

        private void head(SheetModel.Head head) {
            label(Role.TEXT, head.take(), small, secondary());
            label(Role.TITLE, head.player(), sized(Type.strong(), 22), Palette.PAPER.ink());
            text(Role.TEXT, head.seat(), small, secondary(), SIDE, WIDTH - SIDE);
            y += 5 * scale;
            for (String sentence : head.opening()) {
                text(Role.TEXT, sentence, body, Palette.PAPER.ink(), SIDE, WIDTH - SIDE);
            }
        }

        private void section(SheetModel.Section section) {
            rule();
            text(Role.HEADING, section.heading(), sized(Type.strong(), 13), Palette.PAPER.ink(), SIDE, WIDTH - SIDE);
            y += 2 * scale;
            boolean list = section.said().size() > 1;
            for (String sentence : section.said()) {
                if (list) {
                    item(sentence);
                } else {
                    text(Role.TEXT, sentence, body, Palette.PAPER.ink(), SIDE, WIDTH - SIDE);
                }
            }
            section.places().forEach(this::place);
            section.closing().ifPresent(closing -> {
                y += 4 * scale;
                text(Role.TEXT, closing, body, Palette.PAPER.ink(), SIDE, WIDTH - SIDE);
            });
        }

        private void rule() {
            y += 10 * scale;
            rules.add(new Rule(SIDE, WIDTH - SIDE, y));
            y += 5 * scale;
        }

        private void item(String sentence) {
            double indent = 10 * scale;
            double top = y;
            List<Line> lines =
                    new ArrayList<>(List.of(new Line("•", body, Palette.PAPER.ink(), SIDE, top + ascent(body))));
            lines.addAll(lines(shown(sentence), body, Palette.PAPER.ink(), SIDE + indent, WIDTH - SIDE));
            blocks.add(new Block(Role.ITEM, shown(sentence), lines, Optional.empty()));
            y += scale;
        }

        private void place(SheetModel.Place place) {
            y += 7 * scale;
            PlayedBars chart = place.picture();
            Picture picture = new Picture(chart, SIDE, y, PIXEL * scale);
            double below = y + chart.heightPx() * PIXEL * scale;
            double left = SIDE + chart.widthPx() * PIXEL * scale + 16 * scale;
            text(
                    Role.PLACE,
                    place.where() + "  (" + place.clock() + ")",
                    strong,
                    Palette.PAPER.ink(),
                    left,
                    WIDTH - SIDE);
            blocks.add(new Block(Role.FIGURE, shown(chart.spoken()), List.of(), Optional.of(picture)));
            y += 2 * scale;
            for (String sentence : place.said()) {
                text(Role.TEXT, sentence, body, Palette.PAPER.ink(), left, WIDTH - SIDE);
                y += 2 * scale;
            }
            y = Math.max(y, below);
        }

        private void signs(List<SignSample> samples) {
            if (samples.isEmpty()) {
                return;
            }
            rule();
            double x = SIDE;
            double highest =
                    samples.stream().mapToDouble(s -> s.heightPx()).max().orElseThrow() * PIXEL * scale;
            double middle = y + highest / 2;
            for (SignSample sample : samples) {
                double pictured = sample.widthPx() * PIXEL * scale + 4 * scale;
                double wide = pictured + widthOf(sample.title(), small);
                if (x > SIDE && x + wide > WIDTH - SIDE) {
                    x = SIDE;
                    middle += highest + 2 * scale;
                }
                signs.add(new Picture(sample, x, middle - highest / 2, PIXEL * scale));
                Line line = new Line(
                        sample.title(),
                        small,
                        Palette.PAPER.ink(),
                        x + pictured,
                        middle + ascent(small) / 2 - 1.5 * scale);
                blocks.add(new Block(Role.ITEM, sample.title(), List.of(line), Optional.empty()));
                x += wide + 14 * scale;
            }
            y = middle + highest / 2;
        }

        private static double widthOf(String text, Font font) {
            return font.getStringBounds(text, EXACT).getWidth();
        }

        /** What somebody typed, cut where it takes too many lines. */
        private void label(Role role, String text, Font font, Color colour) {
            String shown = shown(text);
            String drawn = Type.drawable(font, shown);
            List<String> lines = broken(drawn, Type.able(font, drawn), WIDTH - 2 * SIDE);
            String cut = lines.size() <= LABEL_LINES
                    ? shown
                    : String.join(" ", lines.subList(0, LABEL_LINES - 1)) + " "
                            + lines.get(LABEL_LINES - 1)
                                    .substring(
                                            0,
                                            lines.get(LABEL_LINES - 1)
                                                    .offsetByCodePoints(
                                                            lines.get(LABEL_LINES - 1)
                                                                    .length(),
                                                            -2))
                            + "…";
            text(role, cut, font, colour, SIDE, WIDTH - SIDE);
        }

        private void text(Role role, String text, Font font, Color colour, double left, double right) {
            String shown = shown(text);
            blocks.add(new Block(role, shown, lines(shown, font, colour, left, right), Optional.empty()));
        }

        private List<Line> lines(String shown, Font font, Color colour, double left, double right) {
            String drawn = Type.drawable(font, shown);
            Font able = Type.able(font, drawn);
            List<Line> lines = new ArrayList<>();
            for (String line : broken(drawn, able, right - left)) {
                lines.add(new Line(line, able, colour, left, y + ascent(able)));
                y += able.getSize2D() * LEADING;
            }
            return lines;
        }

        private static double ascent(Font font) {
            return font.getSize2D() * LEADING * 0.78;
        }

        private static List<String> broken(String text, Font font, double width) {
            if (text.isBlank()) {
                return List.of();
            }
            AttributedString attributed =
                    new AttributedString(COUNTED.matcher(text).replaceAll(NO_BREAK));
            attributed.addAttribute(TextAttribute.FONT, font);
            LineBreakMeasurer measurer =
                    new LineBreakMeasurer(attributed.getIterator(), BreakIterator.getLineInstance(Locale.ROOT), EXACT);
            List<String> lines = new ArrayList<>();
            while (measurer.getPosition() < text.length()) {
                int start = measurer.getPosition();
                int end = Math.max(start + 1, measurer.nextOffset((float) width));
                measurer.setPosition(end);
                String line = text.substring(start, end).strip();
                if (!line.isEmpty()) {
                    lines.add(line);
                }
            }
            return lines;
        }

        private static Color secondary() {
            return Palette.PAPER.secondary();
        }
    }
}
