package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tuttarco.files.InputException;
import tuttarco.musicxml.Signs.Jump;
import tuttarco.musicxml.Signs.Label;
import tuttarco.musicxml.Signs.Mark;
import tuttarco.musicxml.Signs.RepeatEnd;

/**
 * Gathers the signs of one part's measures in turn; a bracket holds on until it is closed, and a segno on the bar line at a
 * measure's end stands before the next.
 */
final class SignReader {
    private static final Pattern TIMES = Pattern.compile("[1-9][0-9]?");

    private final XmlCursor xml;
    private List<Integer> bracket = List.of();

    private boolean repeatBegins;
    private Optional<RepeatEnd> repeatEnds = Optional.empty();
    private List<Integer> endings = List.of();
    private final List<Label> labels = new ArrayList<>();
    private final List<Label> labelsOfNext = new ArrayList<>();
    private final List<Jump> jumps = new ArrayList<>();

    SignReader(XmlCursor xml) {
        this.xml = xml;
    }

    /** Reads a whole measure of which only the signs are wanted. */
    Signs readMeasure() throws InputException {
        begin();
        xml.children(child -> {
            switch (child) {
                case "barline" -> readBarline();
                case "direction", "sound" -> add(DirectionElement.read(xml));
                default -> {}
            }
        });
        return signs();
    }

    void begin() {
        repeatBegins = false;
        repeatEnds = Optional.empty();
        endings = bracket;
        labels.clear();
        labels.addAll(labelsOfNext);
        labelsOfNext.clear();
        jumps.clear();
    }

    void add(DirectionElement direction) {
        repeatBegins |= direction.repeatBegins();
        labels.addAll(direction.labels());
        jumps.addAll(direction.jumps());
    }

    void readBarline() throws InputException {
        boolean atEnd = xml.attribute("location").filter("right"::equals).isPresent();
        List<Label> segnos = atEnd ? labelsOfNext : labels;
        addLabel(Mark.SEGNO, xml.attribute("segno"), segnos);
        addLabel(Mark.CODA, xml.attribute("coda"), labels);
        xml.children(child -> {
            switch (child) {
                case "segno" -> addLabel(Mark.SEGNO, Optional.of(""), segnos);
                case "coda" -> addLabel(Mark.CODA, Optional.of(""), labels);
                case "repeat" -> readRepeat();
                case "ending" -> readEnding();
                default -> {}
            }
        });
    }

    Signs signs() {
        return new Signs(repeatBegins, repeatEnds, endings, labels, jumps);
    }

    private static void addLabel(Mark mark, Optional<String> name, List<Label> to) {
        name.ifPresent(text -> to.add(new Label(mark, text)));
    }

    private void readRepeat() {
        String direction = xml.attribute("direction").orElse("");
        repeatBegins |= direction.equals("forward");
        if (direction.equals("backward")) {
            int times = xml.attribute("times")
                    .filter(text -> TIMES.matcher(text).matches())
                    .map(Integer::valueOf)
                    .orElse(2);
            repeatEnds = Optional.of(new RepeatEnd(
                    times, xml.attribute("after-jump").filter("yes"::equals).isPresent()));
        }
    }

    private void readEnding() {
        if (xml.attribute("type").filter("start"::equals).isPresent()) {
            bracket = DirectionElement.numbers(xml.attribute("number").orElse(""));
            endings = bracket;
        } else {
            bracket = List.of();
        }
    }
}
