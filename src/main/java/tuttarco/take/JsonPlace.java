package tuttarco.take;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
record JsonPlace(String file, String path, JsonNode value) {
    private static final int LONGEST_TEXT = 200;

    /** What a record's constructor makes of values that have the right form. */
    interface Making<T> {
        T make();
    }

    /** A mandatory field. */
    JsonPlace field(String name) throws InputException {
        return optional(name).orElseThrow(() -> wrong("there is no '" + name + "'", "add it"));
    }

    Optional<JsonPlace> optional(String name) {
        return Optional.ofNullable(value.get(name))
                .map(child -> new JsonPlace(file, path.isEmpty() ? name : path + "." + name, child));
    }

    /** This, if it is an object with no other fields than these. */
    JsonPlace object(String... allowed) throws InputException {
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

    List<JsonPlace> list() throws InputException {
        if (!value.isArray()) {
            throw wrong("this is not a list", "write [ ] with one entry for each");
        }
        List<JsonPlace> entries = new ArrayList<>();
        for (int i = 0; i < value.size(); i++) {
            entries.add(new JsonPlace(file, path + "[" + i + "]", value.get(i)));
        }
        return entries;
    }

    String text() throws InputException {
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

    int wholeNumber() throws InputException {
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw wrong("this is not a whole number", "write one without quotes and point");
        }
        return value.intValue();
    }

    /** A bar number as printed, such as {@code 17} with or without quotes, or {@code "12a"}. */
    String barNumber() throws InputException {
        return value.isIntegralNumber() ? Integer.toString(wholeNumber()) : text();
    }

    double number() throws InputException {
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            throw wrong("this is not a number that can be used", "write one without quotes");
        }
        return value.doubleValue();
    }

    boolean yesOrNo() throws InputException {
        if (!value.isBoolean()) {
            throw wrong("this is neither true nor false", "write one of them without quotes");
        }
        return value.booleanValue();
    }

    /** The one of the values whose word stands here. */
    <T> T oneOf(T[] values, Function<T, String> word) throws InputException {
        String text = text();
        return Arrays.stream(values)
                .filter(candidate -> word.apply(candidate).equals(text))
                .findFirst()
                .orElseThrow(() -> wrong(
                        "'" + Plain.text(text) + "' is not known",
                        "write one of " + Arrays.stream(values).map(word).collect(Collectors.joining(", "))));
    }

    <T> T make(Making<T> making) throws InputException {
        try {
            return making.make();
        } catch (IllegalArgumentException e) {
            throw new InputException(wrong(e.getMessage(), "correct it").getMessage(), e);
        }
    }

    InputException wrong(String what, String todo) {
        return new InputException(file + ": " + (path.isEmpty() ? "" : path + ": ") + what + "; " + todo);
    }
}
