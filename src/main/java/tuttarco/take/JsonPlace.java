package tuttarco.take;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * A value in a JSON document together with the words for where it stands.
 *
 * @param path such as {@code players[2].seat}; empty for the whole document
 */
public record JsonPlace(String file, String path, JsonNode value) {
    private static final int LONGEST_TEXT = 200;
    private static final DateTimeFormatter DAY = new DateTimeFormatterBuilder()
            .appendValue(ChronoField.YEAR, 4)
            .appendPattern("-MM-dd")
            .toFormatter(Locale.ROOT)
            .withResolverStyle(ResolverStyle.STRICT);

    /** What a record's constructor makes of values that have the right form. */
    public interface Making<T> {
        T make();
    }

    /** A mandatory field. */
    public JsonPlace field(String name) throws InputException {
        return optional(name).orElseThrow(() -> wrong("there is no '" + name + "'", "add it"));
    }

    public Optional<JsonPlace> optional(String name) {
        return Optional.ofNullable(value.get(name))
                .map(child -> new JsonPlace(file, path.isEmpty() ? name : path + "." + name, child));
    }

    /** This, if it is an object with no other fields than these. */
    public JsonPlace object(String... allowed) throws InputException {
        if (!value.isObject()) {
            throw wrong("this is not an object", "write { } with " + String.join(", ", allowed));
        }
        Set<String> known = Set.of(allowed);
        for (var entry : value.properties()) {
            if (!known.contains(entry.getKey())) {
                throw wrong(
                        "there is no field '" + Plain.text(entry.getKey()) + "' here",
                        "the fields are " + String.join(", ", allowed));
            }
        }
        return this;
    }

    public List<JsonPlace> list() throws InputException {
        if (!value.isArray()) {
            throw wrong("this is not a list", "write [ ] with one entry for each");
        }
        List<JsonPlace> entries = new ArrayList<>();
        for (int i = 0; i < value.size(); i++) {
            entries.add(new JsonPlace(file, path + "[" + i + "]", value.get(i)));
        }
        return entries;
    }

    public String text() throws InputException {
        if (!value.isTextual() || value.textValue().isBlank()) {
            throw wrong("this is not a text", "write some words in quotes");
        }
        String text = value.textValue();
        if (text.length() > LONGEST_TEXT || text.chars().anyMatch(Character::isISOControl)) {
            throw wrong(
                    "a text has at most " + LONGEST_TEXT + " characters and no control characters",
                    "shorten it or take them out");
        }
        return text;
    }

    public int wholeNumber() throws InputException {
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw wrong("this is not a whole number", "write one without quotes and point");
        }
        return value.intValue();
    }

    /** A bar number as printed, such as {@code 17} with or without quotes, or {@code "12a"}. */
    public String barNumber() throws InputException {
        return value.isIntegralNumber() ? Integer.toString(wholeNumber()) : text();
    }

    public double number() throws InputException {
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            throw wrong("this is not a number that can be used", "write one without quotes");
        }
        return value.doubleValue();
    }

    /** A day of the calendar, ISO 8601: {@code "2026-11-25"}. */
    public LocalDate day() throws InputException {
        String text = text();
        try {
            return LocalDate.parse(text, DAY);
        } catch (DateTimeParseException e) {
            throw wrong("'" + Plain.text(text) + "' is no day of the calendar", "write it like \"2026-11-25\"");
        }
    }

    public boolean yesOrNo() throws InputException {
        if (!value.isBoolean()) {
            throw wrong("this is neither true nor false", "write one of them without quotes");
        }
        return value.booleanValue();
    }

    /** The one of the values whose word stands here. */
    public <T> T oneOf(T[] values, Function<T, String> word) throws InputException {
        String text = text();
        return Arrays.stream(values)
                .filter(candidate -> word.apply(candidate).equals(text))
                .findFirst()
                .orElseThrow(() -> wrong(
                        "'" + Plain.text(text) + "' is not known",
                        "write one of " + Arrays.stream(values).map(word).collect(Collectors.joining(", "))));
    }

    public <T> T make(Making<T> making) throws InputException {
        try {
            return making.make();
        } catch (IllegalArgumentException e) {
            throw new InputException(wrong(e.getMessage(), "correct it").getMessage(), e);
        }
    }

    public InputException wrong(String what, String todo) {
        return new InputException(file + ": " + (path.isEmpty() ? "" : path + ": ") + what + "; " + todo);
    }
}
