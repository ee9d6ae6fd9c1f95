package tuttarco.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * How well a reading meets the truth, in steps of 1/30 s; steps within 50 ms of a true change are left out, since the
 * truth of a real clip holds to about a frame. A change is found when the reading has the same change (same new
 * direction) within 100 ms, each matched once.
 *
 * @param agreement share of the steps read as down or up that agree with the truth, of those that truly are
 * @param coverage share of the truly bowed steps for which a direction was read
 * @param recall share of the true changes found; {@code precision} of the read ones that are true
 * @param errorMs mean absolute time error of the found changes, milliseconds
 * @param falseS time read as bowed while truly still, seconds
 */
record Score(
        int steps, double agreement, double coverage, double recall, double precision, double errorMs, double falseS) {
    private static final double STEPS_PER_S = 30;
    private static final double NEAR_CHANGE_S = 0.05;
    private static final double FOUND_S = 0.1;
    private static final double LONGEST_GAP_S = 0.15;

    private record Change(double timeS, StrokeKind to) {}

    static Score of(List<Stroke> strokes, List<TruthSpan> truth) {
        List<TruthSpan> read = strokes.stream().map(TruthSpan::of).toList();
        List<Change> trueChanges = changes(truth);
        int wanted = 0;
        int given = 0;
        int right = 0;
        int invented = 0;
        double endS = truth.get(truth.size() - 1).endS();
        for (int i = 0; i < (int) (endS * STEPS_PER_S); i++) {
            double timeS = (i + 0.5) / STEPS_PER_S;
            if (trueChanges.stream().anyMatch(c -> Math.abs(c.timeS() - timeS) < NEAR_CHANGE_S)) {
                continue;
            }
            Optional<TruthSpan> wants = at(truth, timeS);
            Optional<TruthSpan> has = at(read, timeS).filter(TruthSpan::bowed);
            if (wants.filter(TruthSpan::bowed).isPresent()) {
                wanted++;
                given += has.isPresent() ? 1 : 0;
                right += has.filter(h -> h.kind() == wants.get().kind()).isPresent() ? 1 : 0;
            } else if (wants.filter(w -> w.kind() == StrokeKind.STILL).isPresent() && has.isPresent()) {
                invented++;
            }
        }
        List<Change> readChanges = new ArrayList<>(changes(read));
        int readCount = readChanges.size();
        double errorS = 0;
        int found = 0;
        for (Change change : trueChanges) {
            Optional<Change> nearest = nearest(readChanges, change);
            if (nearest.isPresent()) {
                readChanges.remove(nearest.get());
                found++;
                errorS += Math.abs(nearest.get().timeS() - change.timeS());
            }
        }
        return new Score(
                wanted,
                share(right, given),
                share(given, wanted),
                share(found, trueChanges.size()),
                share(found, readCount),
                found == 0 ? 0 : 1000 * errorS / found,
                invented / STEPS_PER_S);
    }

    /** The mean over players; steps are added up. */
    static Score mean(List<Score> scores) {
        return new Score(
                scores.stream().mapToInt(Score::steps).sum(),
                mean(scores, Score::agreement),
                mean(scores, Score::coverage),
                mean(scores, Score::recall),
                mean(scores, Score::precision),
                mean(scores, Score::errorMs),
                mean(scores, Score::falseS));
    }

    private static double mean(List<Score> scores, ToDoubleFunction<Score> figure) {
        return scores.stream().mapToDouble(figure).average().orElseThrow();
    }

    /** The figures as a row of a table: agreement, coverage, recall and precision in percent, error in ms, false seconds. */
    String row() {
        return String.format(
                Locale.ROOT,
                "%.1f | %.1f | %.0f | %.0f | %.0f | %.1f",
                100 * agreement,
                100 * coverage,
                100 * recall,
                100 * precision,
                errorMs,
                falseS);
    }

    private static double share(int part, int whole) {
        return whole == 0 ? 1 : (double) part / whole;
    }

    private static Optional<Change> nearest(List<Change> changes, Change wanted) {
        return changes.stream()
                .filter(c -> c.to() == wanted.to() && Math.abs(c.timeS() - wanted.timeS()) <= FOUND_S)
                .min((a, b) ->
                        Double.compare(Math.abs(a.timeS() - wanted.timeS()), Math.abs(b.timeS() - wanted.timeS())));
    }

    private static Optional<TruthSpan> at(List<TruthSpan> spans, double timeS) {
        return spans.stream()
                .filter(s -> s.startS() <= timeS && timeS < s.endS())
                .findFirst();
    }

    private static List<Change> changes(List<TruthSpan> spans) {
        List<Change> changes = new ArrayList<>();
        Optional<TruthSpan> last = Optional.empty();
        for (TruthSpan span : spans) {
            if (span.bowed()) {
                if (last.isPresent()
                        && last.get().kind() != span.kind()
                        && span.startS() - last.get().endS() < LONGEST_GAP_S) {
                    changes.add(new Change((span.startS() + last.get().endS()) / 2, span.kind()));
                }
                last = Optional.of(span);
            }
        }
        return changes;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "agreement %.1f %%, coverage %.1f %%, changes: recall %.0f %%, precision %.0f %%, error %.0f ms,"
                        + " bowing read at rest %.1f s (%d steps)",
                100 * agreement,
                100 * coverage,
                100 * recall,
                100 * precision,
                errorMs,
                falseS,
                steps);
    }
}
