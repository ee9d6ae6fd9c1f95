package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tuttarco.score.BarPieces;

/** The note values without and with a dot, longest first, in divisions of {@link BarPieces#DIVISIONS} a quarter note. */
enum NoteValue {
    WHOLE("whole", 4, 1),
    HALF("half", 2, 1),
    QUARTER("quarter", 1, 1),
    EIGHTH("eighth", 1, 2),
    SIXTEENTH("16th", 1, 4),
    THIRTY_SECOND("32nd", 1, 8),
    SIXTY_FOURTH("64th", 1, 16);

    /**
     * One written note or rest.
     *
     * @param type MusicXML's name of the value; empty where no value has this length, as in tuplets
     */
    record Written(int divisions, Optional<String> type, int dots) {}

    private final String type;
    private final int divisions;

    NoteValue(String type, int quarters, int share) {
        this.type = type;
        this.divisions = quarters * BarPieces.DIVISIONS / share;
    }

    /** Written values that together last so many divisions; one without a type if no values do. */
    static List<Written> split(int divisions) {
        List<Written> values = new ArrayList<>();
        int left = divisions;
        while (left > 0) {
            int now = left;
            Optional<Written> next = Arrays.stream(values())
                    .flatMap(value -> value.written().stream())
                    .filter(written -> written.divisions() <= now)
                    .findFirst();
            if (next.isEmpty()) {
                return List.of(new Written(divisions, Optional.empty(), 0));
            }
            values.add(next.get());
            left -= next.get().divisions();
        }
        return values;
    }

    private List<Written> written() {
        Written plain = new Written(divisions, Optional.of(type), 0);
        return divisions % 2 == 0 && this != SIXTY_FOURTH
                ? List.of(new Written(divisions / 2 * 3, Optional.of(type), 1), plain)
                : List.of(plain);
    }
}
