package tuttarco.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tuttarco.bow.BowDirection;
import tuttarco.compare.Verdict;
import tuttarco.files.InputException;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.JsonPlace;

/** What happened on each beat, as a text of one letter a beat. */
final class Letters<T> {
    static final Letters<StrokeKind> PLAYED = new Letters<>(Map.of(
            StrokeKind.DOWN, 'd',
            StrokeKind.UP, 'u',
            StrokeKind.TREMOLO, 't',
            StrokeKind.STILL, 's',
            StrokeKind.UNSURE, '?',
            StrokeKind.UNSEEN, '-',
            StrokeKind.ABSENT, 'x'));

    static final Letters<Verdict> VERDICTS = new Letters<>(Map.of(
            Verdict.WITH, 'w',
            Verdict.AGAINST, 'a',
            Verdict.UNSURE, '?',
            Verdict.UNSEEN, '-',
            Verdict.REST, 'r'));

    static final Letters<Optional<BowDirection>> MARKED = new Letters<>(
            Map.of(Optional.of(BowDirection.DOWN), 'd', Optional.of(BowDirection.UP), 'u', Optional.empty(), '.'));

    private final Map<T, Character> letters;
    private final Map<Character, T> meanings;

    private Letters(Map<T, Character> letters) {
        this.letters = letters;
        this.meanings = letters.keySet().stream().collect(Collectors.toMap(letters::get, Function.identity()));
    }

    String of(List<T> beats) {
        StringBuilder text = new StringBuilder();
        beats.forEach(beat -> text.append(letters.get(beat)));
        return text.toString();
    }

    /**
     * What the text at the place means.
     *
     * @throws InputException if it has not one letter a beat, or one that means nothing
     */
    List<T> at(JsonPlace place, int beats) throws InputException {
        String text = Optional.ofNullable(place.value().textValue()).orElse("");
        if (text.length() != beats) {
            throw place.wrong(
                    "this has not one letter for each of " + beats + " beats", "write the letters " + known());
        }
        List<T> read = new ArrayList<>(beats);
        for (char letter : text.toCharArray()) {
            T meaning = meanings.get(letter);
            if (meaning == null) {
                throw place.wrong("one of the letters means nothing", "write the letters " + known());
            }
            read.add(meaning);
        }
        return read;
    }

    private String known() {
        return meanings.keySet().stream().sorted().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
