package tuttarco.corrections;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * Readings with corrections laid over them, one after the other as they were made.
 *
 * <p>A stroke that is set takes the place of whatever lies in its span, and of what would be left of a stroke beside it if that is
 * too short for any bow; it is one bow with a neighbour that goes the same way.
 * A correction that finds no player, no time or no change to set right is left out and told; it stays in the log.
 *
 * @param readings in the order given; of players whom no correction touches they are the very same
 * @param applied the corrections that found their place
 * @param notes those that did not, a sentence each
 */
public record CorrectedReadings(List<Reading> readings, List<LogEntry.Done> applied, List<String> notes) {
    /**
     * A change is taken for the one that was moved if it lies this close to where that was, seconds: changes so close pass as
     * together (common practice, no source), and another run of another program reads no other place for the same.
     */
    static final double SAME_CHANGE_S = 0.1;

    /** No bow is drawn in less time, seconds: sixteenths at 160 a minute take 94 ms (common practice, no source). */
    static final double NO_BOW_S = 0.05;

    public CorrectedReadings {
        readings = List.copyOf(readings);
        applied = List.copyOf(applied);
        notes = List.copyOf(notes);
    }

    /** Lays those of the corrections that are about players over what was read. */
    public static CorrectedReadings of(List<Reading> read, Corrections corrections) {
        Map<String, Reading> byLabel = new LinkedHashMap<>();
        read.forEach(reading -> byLabel.put(reading.player().label(), reading));
        List<LogEntry.Done> applied = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (LogEntry.Done done : corrections.inForce()) {
            if (done.correction().touches() instanceof Correction.Touched.OnePlayer one) {
                Optional<Reading> before = Optional.ofNullable(byLabel.get(one.label()));
                Optional<Reading> after = before.flatMap(reading -> corrected(reading, done.correction()));
                if (after.isPresent()) {
                    byLabel.put(one.label(), after.get());
                    applied.add(done);
                } else {
                    notes.add(leftOut(done, before.isEmpty() ? "the take has no such player" : why(done.correction())));
                }
            }
        }
        return new CorrectedReadings(List.copyOf(byLabel.values()), applied, notes);
    }

    /** What was said of a span before somebody sets it: for how long, seconds, the player did what. */
    public static Map<StrokeKind, Double> wasS(Reading reading, double fromS, double toS) {
        Map<StrokeKind, Double> wasS = new EnumMap<>(StrokeKind.class);
        for (Stroke stroke : reading.strokes()) {
            double togetherS = Math.min(toS, stroke.endS()) - Math.max(fromS, stroke.startS());
            if (togetherS > 0) {
                wasS.merge(stroke.kind(), togetherS, Double::sum);
            }
        }
        return wasS;
    }

    static String leftOut(LogEntry.Done done, String why) {
        return "A correction is left out, but not lost (" + CorrectionWords.of(done.correction()) + "): " + why + ".";
    }

    private static String why(Correction correction) {
        return correction instanceof Correction.ChangeMoved
                ? "there is no change that could be moved so far and no further than its neighbours"
                : "its time lies outside what could be read";
    }

    /** The reading with one correction; nothing where that finds no place. */
    private static Optional<Reading> corrected(Reading reading, Correction correction) {
        if (correction instanceof Correction.StrokeSet set) {
            return set(reading, set.fromS(), set.toS(), set.kind());
        }
        if (correction instanceof Correction.Absent absent) {
            return set(reading, absent.fromS(), absent.toS(), StrokeKind.ABSENT);
        }
        return correction instanceof Correction.ChangeMoved moved ? moved(reading, moved) : Optional.empty();
    }

    private static Optional<Reading> set(Reading reading, double fromS, double toS, StrokeKind kind) {
        List<Stroke> strokes = reading.strokes();
        if (strokes.isEmpty()) {
            return Optional.empty();
        }
        double firstS = strokes.get(0).startS();
        double lastS = strokes.get(strokes.size() - 1).endS();
        if (!(Math.min(toS, lastS) > Math.max(fromS, firstS))) {
            return Optional.empty();
        }
        double startS = reading.at(fromS)
                .filter(s -> fromS - s.startS() < NO_BOW_S)
                .map(Stroke::startS)
                .orElse(Math.max(fromS, firstS));
        double endS = reading.at(toS)
                .filter(s -> s.endS() - toS < NO_BOW_S)
                .map(Stroke::endS)
                .orElse(Math.min(toS, lastS));
        List<Stroke> corrected = new ArrayList<>();
        for (Stroke stroke : strokes) {
            if (stroke.startS() < startS) {
                corrected.add(stroke.during(stroke.startS(), Math.min(startS, stroke.endS())));
            }
            if (stroke.startS() <= startS && startS < stroke.endS()) {
                corrected.add(Stroke.byHand(startS, endS, kind));
            }
            if (stroke.endS() > endS) {
                corrected.add(stroke.during(Math.max(endS, stroke.startS()), stroke.endS()));
            }
        }
        return Optional.of(new Reading(reading.player(), joined(corrected)));
    }

    /** With a stroke that was set and its neighbour as one where both go the same way. */
    private static List<Stroke> joined(List<Stroke> strokes) {
        List<Stroke> joined = new ArrayList<>();
        for (Stroke stroke : strokes) {
            int last = joined.size() - 1;
            if (last >= 0 && oneBow(joined.get(last), stroke)) {
                joined.set(last, Stroke.byHand(joined.get(last).startS(), stroke.endS(), stroke.kind()));
            } else {
                joined.add(stroke);
            }
        }
        return joined;
    }

    private static boolean oneBow(Stroke before, Stroke after) {
        boolean set = before.source() == Stroke.Source.BY_HAND || after.source() == Stroke.Source.BY_HAND;
        return set && before.kind() == after.kind() && after.kind().direction().isPresent();
    }

    private static Optional<Reading> moved(Reading reading, Correction.ChangeMoved move) {
        List<Stroke> strokes = new ArrayList<>(reading.strokes());
        int after = 0;
        double nearestS = Double.POSITIVE_INFINITY;
        for (int i = 1; i < strokes.size(); i++) {
            double awayS = Math.abs(strokes.get(i).startS() - move.fromS());
            if (awayS < nearestS) {
                nearestS = awayS;
                after = i;
            }
        }
        boolean fits = nearestS <= SAME_CHANGE_S
                && strokes.get(after - 1).startS() < move.toS()
                && move.toS() < strokes.get(after).endS();
        if (!fits) {
            return Optional.empty();
        }
        Stroke before = strokes.get(after - 1);
        strokes.set(after - 1, before.during(before.startS(), move.toS()));
        strokes.set(
                after, strokes.get(after).during(move.toS(), strokes.get(after).endS()));
        return Optional.of(new Reading(reading.player(), strokes));
    }
}
