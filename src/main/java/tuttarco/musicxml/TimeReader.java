package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Metre;

/** Reads {@code <time>} elements; a sum such as 3+2 over 8 is taken as 5 over 8, and senza misura keeps the last metre. */
final class TimeReader {
    private static final Pattern FIGURE = Pattern.compile("[0-9]{1,3}");
    private static final Pattern FIGURES = Pattern.compile("[0-9]{1,3}(\\s*\\+\\s*[0-9]{1,3}){0,15}");

    private final XmlCursor xml;
    private Optional<Metre> metre = Optional.empty();

    TimeReader(XmlCursor xml) {
        this.xml = xml;
    }

    /** The metre last read. */
    Optional<Metre> metre() {
        return metre;
    }

    void read() throws InputException {
        List<String> beats = new ArrayList<>();
        List<String> beatTypes = new ArrayList<>();
        xml.children(child -> {
            if (child.equals("beats")) {
                beats.add(xml.text());
            } else if (child.equals("beat-type")) {
                beatTypes.add(xml.text());
            }
        });
        if (!beats.isEmpty() || !beatTypes.isEmpty()) {
            metre = Optional.of(metre(beats, beatTypes));
        }
    }

    private Metre metre(List<String> beats, List<String> beatTypes) throws InputException {
        boolean figures = beats.stream().allMatch(text -> FIGURES.matcher(text).matches())
                && beatTypes.stream().allMatch(text -> FIGURE.matcher(text).matches());
        if (!figures
                || beats.size() != beatTypes.size()
                || beatTypes.stream().distinct().count() != 1) {
            throw xml.wrong("the metre " + Plain.text(String.join("+", beats) + "/" + String.join("+", beatTypes))
                    + " can't be read; write it as one upper and one lower figure");
        }
        int upper = beats.stream()
                .flatMap(text -> Pattern.compile("\\+").splitAsStream(text))
                .mapToInt(figure -> Integer.parseInt(figure.strip()))
                .sum();
        try {
            return new Metre(upper, Integer.parseInt(beatTypes.get(0)));
        } catch (IllegalArgumentException e) {
            throw new InputException(
                    xml.wrong(e.getMessage() + "; correct the time signature").getMessage(), e);
        }
    }
}
