package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import tuttarco.files.InputException;
import tuttarco.musicxml.Signs.Jump;
import tuttarco.musicxml.Signs.Label;
import tuttarco.musicxml.Signs.Mark;
import tuttarco.musicxml.Signs.Way;

/**
 * What one {@code <direction>} or {@code <sound>} element says. What it says for playback counts before its words and signs.
 */
final class DirectionElement {
    private static final Pattern PLUCKED_OR_BOWED = Pattern.compile("\\b(pizz|arco)");
    private static final Pattern DA_CAPO = Pattern.compile("\\bd\\. ?c\\b|^d ?c\\b|\\bda capo\\b");
    private static final Pattern DAL_SEGNO = Pattern.compile("\\bd\\. ?s\\b|^d ?s\\b|\\bdal segno\\b");
    private static final Pattern TO_CODA = Pattern.compile("\\b(to|alla) coda\\b");
    private static final Pattern CODA = Pattern.compile("^\\W*coda\\W*$");
    private static final Pattern FINE = Pattern.compile("^\\W*fine\\W*$");
    private static final Pattern REPEATS_AGAIN = Pattern.compile(
            "\\bcon (repli|ripeti|ritornell)|\\bwith (the )?repeats\\b|\\bavec (les )?reprises\\b|\\bmit wiederholung");
    private static final Pattern FIGURES = Pattern.compile("[1-9][0-9]{0,2}");

    /** The attributes of {@code <sound>} that are read. */
    private static final List<String> SOUNDS = List.of(
            "pizzicato", "forward-repeat", "dacapo", "dalsegno", "segno", "tocoda", "coda", "fine", "time-only");

    private final Map<String, String> sounds = new HashMap<>();
    private final StringBuilder text = new StringBuilder();
    private boolean segno;
    private boolean coda;
    private Optional<Boolean> forte = Optional.empty();
    private Optional<String> rehearsal = Optional.empty();

    private DirectionElement() {}

    /** Reads the direction or sound that the cursor stands on. */
    static DirectionElement read(XmlCursor xml) throws InputException {
        DirectionElement direction = new DirectionElement();
        if (xml.name().equals("sound")) {
            direction.readSound(xml);
        } else {
            xml.children(child -> direction.readChild(xml, child));
        }
        return direction;
    }

    private void readChild(XmlCursor xml, String child) throws InputException {
        if (child.equals("sound")) {
            readSound(xml);
        } else if (child.equals("direction-type")) {
            xml.children(type -> readType(xml, type));
        }
    }

    private void readSound(XmlCursor xml) {
        for (String name : SOUNDS) {
            xml.attribute(name).ifPresent(value -> sounds.put(name, value));
        }
    }

    private void readType(XmlCursor xml, String type) throws InputException {
        switch (type) {
            case "words" -> text.append(' ').append(xml.text().toLowerCase(Locale.ROOT));
            case "segno" -> segno = true;
            case "coda" -> coda = true;
            case "dynamics" -> xml.children(sign -> forte = Optional.of(NoteElement.FORTES.contains(sign)));
            case "rehearsal" -> rehearsal = Optional.of(xml.text()).filter(mark -> !mark.isEmpty());
            default -> {}
        }
    }

    Optional<String> rehearsal() {
        return rehearsal;
    }

    /** Whether the next note is forte; nothing if this does not say. */
    Optional<Boolean> forte() {
        return forte;
    }

    /** Whether what follows is plucked; nothing if this does not say. */
    Optional<Boolean> plucked() {
        if (sounds.containsKey("pizzicato")) {
            return Optional.of(sounds.get("pizzicato").equals("yes"));
        }
        return PLUCKED_OR_BOWED
                .matcher(words())
                .results()
                .reduce((before, later) -> later)
                .map(last -> last.group(1).equals("pizz"));
    }

    boolean repeatBegins() {
        return "yes".equals(sounds.get("forward-repeat"));
    }

    List<Label> labels() {
        List<Label> labels = new ArrayList<>();
        if (sounds.containsKey("segno")) {
            labels.add(new Label(Mark.SEGNO, sounds.get("segno")));
        }
        if (sounds.containsKey("coda")) {
            labels.add(new Label(Mark.CODA, sounds.get("coda")));
        }
        boolean silent = labels.isEmpty() && jumps().isEmpty();
        if (silent && segno) {
            labels.add(new Label(Mark.SEGNO, ""));
        }
        if (silent && (coda || says(CODA))) {
            labels.add(new Label(Mark.CODA, ""));
        }
        return labels;
    }

    List<Jump> jumps() {
        List<Jump> jumps = new ArrayList<>();
        if ("yes".equals(sounds.get("dacapo"))) {
            jumps.add(jump(Way.DA_CAPO, ""));
        }
        if (sounds.containsKey("dalsegno")) {
            jumps.add(jump(Way.DAL_SEGNO, sounds.get("dalsegno")));
        }
        if (sounds.containsKey("tocoda")) {
            jumps.add(jump(Way.TO_CODA, sounds.get("tocoda")));
        }
        if (sounds.containsKey("fine") && !"no".equals(sounds.get("fine"))) {
            jumps.add(jump(Way.FINE, ""));
        }
        if (jumps.isEmpty() && !sounds.containsKey("segno") && !sounds.containsKey("coda")) {
            inWords().ifPresent(way -> jumps.add(jump(way, "")));
        }
        return jumps;
    }

    private Optional<Way> inWords() {
        if (says(DA_CAPO)) {
            return Optional.of(Way.DA_CAPO);
        }
        if (says(DAL_SEGNO)) {
            return Optional.of(Way.DAL_SEGNO);
        }
        if (says(TO_CODA) || (coda && words().equals("to"))) {
            return Optional.of(Way.TO_CODA);
        }
        return says(FINE) ? Optional.of(Way.FINE) : Optional.empty();
    }

    private Jump jump(Way way, String to) {
        return new Jump(way, to, numbers(sounds.getOrDefault("time-only", "")), says(REPEATS_AGAIN));
    }

    private boolean says(Pattern pattern) {
        return pattern.matcher(words()).find();
    }

    private String words() {
        return text.toString().replaceAll("\\s+", " ").strip();
    }

    /** The numbers of a list such as {@code 1, 2}. */
    static List<Integer> numbers(String list) {
        return FIGURES.matcher(list)
                .results()
                .map(figure -> Integer.valueOf(figure.group()))
                .toList();
    }
}
