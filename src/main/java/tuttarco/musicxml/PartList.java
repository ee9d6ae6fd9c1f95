package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/** The parts a MusicXML document holds, and which of them is meant. */
final class PartList {
    /**
     * A part as listed.
     *
     * @param names its name, its short name and its instruments' names, in that order, as far as they are given
     * @param sounds its instruments' standard sounds, such as {@code strings.viola}
     */
    record Listed(String id, List<String> names, List<String> sounds) {
        String name() {
            return names.isEmpty() ? id : names.get(0);
        }

        boolean fits(Instrument instrument) {
            return Stream.concat(names.stream(), sounds.stream())
                    .map(PartList::instrument)
                    .flatMap(Optional::stream)
                    .anyMatch(instrument::equals);
        }

        private String spoken() {
            return names.isEmpty() || name().equals(id)
                    ? Plain.text(id)
                    : Plain.text(name()) + " (" + Plain.text(id) + ")";
        }
    }

    /** Parts told one by one in a message. */
    private static final int MOST_TOLD = 8;

    private static final int LONGEST_NAME = 200;

    /**
     * How names of instruments begin in English, German, Italian, French and Spanish, and their usual short forms (common
     * practice, no source); the earlier one counts, as a viola da gamba is no viola and a violoncello no violone.
     */
    private static final Map<Instrument, Pattern> WORDS = words();

    private final String file;
    private final List<Listed> parts;

    private PartList(String file, List<Listed> parts) {
        this.file = file;
        this.parts = parts;
    }

    private static Map<Instrument, Pattern> words() {
        Map<Instrument, Pattern> words = new LinkedHashMap<>();
        words.put(Instrument.VIOL, Pattern.compile("gamb|\\bviols?\\b"));
        words.put(Instrument.CELLO, Pattern.compile("cell[oi]|violoncel|\\bvl?cl?\\b"));
        words.put(
                Instrument.BASS,
                Pattern.compile(
                        "contraba|kontraba|contreba|violone|double ?bass|\\b(string )?bass(es)?$|\\b[ckd]b\\b"));
        words.put(Instrument.VIOLIN, Pattern.compile("violin|violon|geige|\\bvl?n?s?\\b"));
        words.put(Instrument.VIOLA, Pattern.compile("\\bviol[ae]s?\\b|bratsche|\\baltos?\\b|\\b(vla|va|br)s?\\b"));
        return words;
    }

    private static Optional<Instrument> instrument(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return WORDS.entrySet().stream()
                .filter(words -> words.getValue().matcher(lower).find())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Reads the whole document from its root, for its parts only. */
    static PartList read(XmlCursor xml, String file) throws InputException {
        Map<String, Listed> listed = new LinkedHashMap<>();
        List<String> present = new ArrayList<>();
        xml.children(child -> {
            switch (child) {
                case "part-list" ->
                    xml.children(entry -> {
                        if (entry.equals("score-part")) {
                            Listed part = readListed(xml);
                            listed.putIfAbsent(part.id(), part);
                        }
                    });
                case "part" -> addPresent(xml, present);
                case "measure" ->
                    xml.children(inner -> {
                        if (inner.equals("part")) {
                            addPresent(xml, present);
                        }
                    });
                default -> {}
            }
        });
        if (present.isEmpty()) {
            throw new InputException(file + " holds no part; export it again with its notes");
        }
        return new PartList(
                file,
                present.stream()
                        .map(id -> listed.getOrDefault(id, new Listed(id, List.of(), List.of())))
                        .toList());
    }

    private static void addPresent(XmlCursor xml, List<String> present) {
        String id = id(xml);
        if (!present.contains(id)) {
            present.add(id);
        }
    }

    /** The id of the part the cursor stands on. */
    static String id(XmlCursor xml) {
        return xml.attribute("id").orElse("");
    }

    private static Listed readListed(XmlCursor xml) throws InputException {
        String id = id(xml);
        List<String> names = new ArrayList<>();
        List<String> sounds = new ArrayList<>();
        xml.children(child -> {
            switch (child) {
                case "part-name", "part-abbreviation" -> addTo(names, xml);
                case "score-instrument" ->
                    xml.children(inner -> {
                        switch (inner) {
                            case "instrument-name" -> addTo(names, xml);
                            case "instrument-sound" -> addTo(sounds, xml);
                            default -> {}
                        }
                    });
                default -> {}
            }
        });
        return new Listed(id, List.copyOf(names), List.copyOf(sounds));
    }

    private static void addTo(List<String> texts, XmlCursor xml) throws InputException {
        String text = xml.text()
                .replaceAll("[\\s\\p{Cntrl}\\x80-\\x9f]+", " ")
                .codePoints()
                .limit(LONGEST_NAME)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        if (!text.isEmpty()) {
            texts.add(text);
        }
    }

    /** The part that is meant. */
    Listed chosen(Optional<String> choice, Instrument instrument) throws InputException {
        if (choice.isPresent()) {
            return named(choice.get());
        }
        return parts.size() == 1
                ? parts.get(0)
                : only(part -> part.fits(instrument))
                        .orElseThrow(() -> unclear("it holds several parts, and it is not clear which is meant"));
    }

    /** What to call each part so that no other is meant: its name, or its id where the name is another's too. */
    List<String> callings() {
        return parts.stream()
                .map(part -> only(other -> other.name().equalsIgnoreCase(part.name()))
                                        .isPresent()
                                && parts.stream().noneMatch(other -> other.id().equals(part.name()))
                        ? part.name()
                        : part.id())
                .toList();
    }

    /** The part's place among those of the document, from 0. */
    int place(Listed part) {
        return parts.indexOf(part);
    }

    private Listed named(String choice) throws InputException {
        String wanted = choice.strip();
        return only(part -> part.id().equals(wanted))
                .or(() -> only(part -> part.name().equalsIgnoreCase(wanted)))
                .or(() -> only(part -> part.names().stream().anyMatch(wanted::equalsIgnoreCase)))
                .or(() -> Arrays.stream(Instrument.values())
                        .filter(instrument -> instrument.word().equalsIgnoreCase(wanted))
                        .findFirst()
                        .flatMap(instrument -> only(part -> part.fits(instrument))))
                .orElseThrow(() -> unclear("no single part in it is called '" + Plain.text(wanted) + "'"));
    }

    private Optional<Listed> only(Predicate<Listed> wanted) {
        List<Listed> found = parts.stream().filter(wanted).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private InputException unclear(String what) {
        String told = parts.stream().limit(MOST_TOLD).map(Listed::spoken).collect(Collectors.joining(", "));
        String more = parts.size() > MOST_TOLD ? " and " + (parts.size() - MOST_TOLD) + " more" : "";
        return new InputException(file + ": " + what + "; name one of these by its name or id: " + told + more);
    }
}
