package tuttarco.mark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Words;
import tuttarco.compare.PlayedStroke;
import tuttarco.compare.Verdict;
import tuttarco.musicxml.StrokeMark;
import tuttarco.score.Note;
import tuttarco.score.Note.Written;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;

/**
 * Chooses the bow signs that say what a player did. Of a place that was taken again after a stop the last certain playing
 * counts ({@link Retakes}).
 *
 * <p>Strokes that the file writes once but that were played several times have the direction of their first certain
 * reading; where certain readings differ, the stroke is a question, told once with what each playing did. A reader needs a sign where the player begins, after a
 * rest, after a question, and where the bow did not turn from the stroke before, in any of the playings (common practice,
 * no source: an unmarked stroke goes the other way). Questions are always written.
 */
public final class PlayerMarking {
    private final Part part;
    private final Map<MarkedStroke, PlayedStroke> played;
    private final Map<MarkedStroke, List<Written>> notes;
    /** By the first note of a stroke: what was played there, in the order played. */
    private final Map<Written, List<PlayedStroke>> playings = new LinkedHashMap<>();

    private PlayerMarking(Part part, List<PlayedStroke> played) {
        this.part = part;
        this.played = played.stream().collect(Collectors.toMap(PlayedStroke::marked, p -> p));
        this.notes = notes(part);
        for (PlayedStroke stroke : played) {
            first(stroke.marked())
                    .ifPresent(note -> playings.computeIfAbsent(note, n -> new ArrayList<>())
                            .add(stroke));
        }
    }

    /**
     * The signs for the part's strokes that were played; the others keep what they have.
     *
     * @param part with its notes
     * @param every a sign on every stroke, also where none is needed
     */
    public static BowMarks of(Part part, List<PlayedStroke> played, boolean every) {
        Retakes retakes = Retakes.of(played);
        PlayerMarking marking = new PlayerMarking(part, retakes.counted());
        List<String> remarks = marking.remarks(retakes.counted());
        retakes.replaced()
                .forEach(stroke -> remarks.add(Places.spoken(
                                part, stroke.marked().start(), stroke.timed().startS())
                        + ": played " + word(stroke) + " here, but otherwise when it was taken again, which counts"));
        return new BowMarks(marking.marks(every), remarks);
    }

    private List<StrokeMark> marks(boolean every) {
        Map<Written, Boolean> needed = new HashMap<>();
        for (int i = 0; i < part.spans().size(); i++) {
            PartSpan span = part.spans().get(i);
            if (span instanceof MarkedStroke stroke && played.containsKey(stroke)) {
                PartSpan before = i == 0 ? span : part.spans().get(i - 1);
                first(stroke).ifPresent(note -> needed.merge(note, needed(stroke, before), Boolean::logicalOr));
            }
        }
        return playings.keySet().stream()
                .sorted(Comparator.comparingInt(Written::measure).thenComparingInt(Written::note))
                .map(note -> mark(note, every || needed.getOrDefault(note, true)))
                .toList();
    }

    private StrokeMark mark(Written note, boolean shown) {
        List<PlayedStroke> here = playings.get(note);
        boolean question = question(note);
        Optional<BowDirection> sign = shown || question ? direction(note) : Optional.empty();
        List<Written> all = here.stream()
                .flatMap(p -> notes.get(p.marked()).stream())
                .distinct()
                .toList();
        return new StrokeMark(all, sign, question);
    }

    private boolean needed(MarkedStroke stroke, PartSpan before) {
        if (!(before instanceof MarkedStroke earlier) || before == stroke || !played.containsKey(earlier)) {
            return true;
        }
        Optional<BowDirection> earlierBow =
                first(earlier).filter(note -> !question(note)).flatMap(this::direction);
        Optional<BowDirection> bow = first(stroke).flatMap(this::direction);
        return earlierBow.isEmpty() || earlierBow.equals(bow);
    }

    /** The first certain direction, or else the first likely one. */
    private Optional<BowDirection> direction(Written note) {
        List<PlayedStroke> here = playings.get(note);
        return here.stream()
                .filter(PlayedStroke::certain)
                .findFirst()
                .or(() -> here.stream().filter(p -> p.direction().isPresent()).findFirst())
                .flatMap(PlayedStroke::direction);
    }

    private boolean question(Written note) {
        return certainDirections(note) != 1;
    }

    private long certainDirections(Written note) {
        return playings.get(note).stream()
                .filter(PlayedStroke::certain)
                .map(PlayedStroke::direction)
                .distinct()
                .count();
    }

    private List<String> remarks(List<PlayedStroke> strokes) {
        List<String> remarks = new ArrayList<>();
        for (PlayedStroke stroke : strokes) {
            String place =
                    Places.spoken(part, stroke.marked().start(), stroke.timed().startS());
            Optional<Written> note = first(stroke.marked());
            if (note.isEmpty()) {
                remarks.add(place + ": left as it is, for no note begins with this stroke");
            } else if (certainDirections(note.get()) > 1) {
                if (playings.get(note.get()).get(0) == stroke) {
                    remarks.add(Places.spoken(part, stroke.marked().start()) + ": a question, for it was played "
                            + eachTime(note.get()));
                }
            } else if (!stroke.certain()) {
                remarks.add(place + ": " + (question(note.get()) ? "a question" : "another playing counts")
                        + ", for the arm "
                        + (stroke.verdict() == Verdict.UNSURE
                                ? "was seen but its direction is not certain"
                                : "was not seen"));
            }
            if (stroke.certain() && stroke.strokes() > 1) {
                remarks.add(place + ": played in " + stroke.strokes() + " bows; the sign gives the first");
            }
            if (stroke.certain() && stroke.goesOn()) {
                remarks.add(place + ": played in one bow with the stroke before; the sign gives its direction");
            }
        }
        return remarks;
    }

    /** {@code down at 0:02.0, up at 0:09.5 and unclearly at 0:17.0}. */
    private String eachTime(Written note) {
        List<String> times = playings.get(note).stream()
                .map(p -> word(p) + " at " + Words.clock(p.timed().startS()))
                .toList();
        int last = times.size() - 1;
        return String.join(", ", times.subList(0, last)) + " and " + times.get(last);
    }

    private static String word(PlayedStroke stroke) {
        return stroke.direction()
                .filter(d -> stroke.certain())
                .map(BowDirection::word)
                .orElse("unclearly");
    }

    private Optional<Written> first(MarkedStroke stroke) {
        return Optional.ofNullable(notes.get(stroke)).map(n -> n.get(0));
    }

    /** The notes of each stroke; strokes that begin on no note have none. */
    private static Map<MarkedStroke, List<Written>> notes(Part part) {
        List<Note> inOrder = part.notes();
        List<Position> starts = inOrder.stream().map(Note::start).toList();
        Map<MarkedStroke, List<Written>> notes = new HashMap<>();
        for (PartSpan span : part.spans()) {
            if (span instanceof MarkedStroke stroke) {
                int from = Collections.binarySearch(starts, stroke.start());
                if (from >= 0) {
                    notes.put(
                            stroke,
                            inOrder.subList(from, inOrder.size()).stream()
                                    .takeWhile(n -> n.start().compareTo(stroke.end()) < 0)
                                    .map(Note::written)
                                    .toList());
                }
            }
        }
        return notes;
    }
}
