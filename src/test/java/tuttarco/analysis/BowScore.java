package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowPart;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Edge;

/**
 * How well times, lengths and places of strokes meet the truth, pooled over players.
 *
 * <p>A change is compared with the nearest true one to the same direction, if that is within 150 ms. A stroke is
 * compared with the true stroke of its direction that covers most of it, if that is more than half. Shares and thirds
 * are those of what the player truly used.
 */
final class BowScore {
    private static final double FOUND_S = 0.15;

    private final List<Double> changeErrors = new ArrayList<>();
    private final List<Double> standardErrorsS = new ArrayList<>();
    private final List<Double> shareErrors = new ArrayList<>();
    private final List<Double> lengthRatios = new ArrayList<>();
    private int strokes;
    private int measured;
    private int placed;
    private int rightlyPlaced;
    private double confidences;

    /** A true stroke, as a {@code truth.bows.csv} has it. */
    private record True(double startS, double endS, String direction, double from, double to, double length) {
        double sharedS(Bow bow) {
            return Math.min(endS, bow.stroke().endS())
                    - Math.max(startS, bow.stroke().startS());
        }

        double middle() {
            return (from + to) / 2;
        }
    }

    void add(Bows read, Path spansFile, Path bowsFile) throws IOException {
        addChanges(read, TruthSpan.read(spansFile, read.player().label()));
        addUses(read, trueBows(bowsFile, read.player().label()));
    }

    private static List<True> trueBows(Path file, String player) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<True> bows = new ArrayList<>();
        try (CSVParser rows = format.parse(Files.newBufferedReader(file))) {
            for (CSVRecord row : rows) {
                if (row.get("player").equals(player)) {
                    bows.add(new True(
                            Double.parseDouble(row.get("start_s")),
                            Double.parseDouble(row.get("end_s")),
                            row.get("direction"),
                            Double.parseDouble(row.get("from")),
                            Double.parseDouble(row.get("to")),
                            Double.parseDouble(row.get("length_shoulder_widths"))));
                }
            }
        }
        return bows;
    }

    /** Changes between a down-bow and an up-bow. */
    void addChanges(Bows read, List<TruthSpan> truth) {
        for (int i = 1; i < read.bows().size(); i++) {
            Bow bow = read.bows().get(i);
            boolean turns = bow.stroke().kind().direction().isPresent()
                    && read.bows().get(i - 1).stroke().kind().direction().isPresent();
            if (!turns || !(bow.start() instanceof Edge.Change change)) {
                continue;
            }
            double nearest = Double.POSITIVE_INFINITY;
            for (int k = 1; k < truth.size(); k++) {
                double error = bow.stroke().startS() - truth.get(k).startS();
                if (truth.get(k - 1).bowed()
                        && truth.get(k).kind() == bow.stroke().kind()
                        && Math.abs(error) < Math.abs(nearest)) {
                    nearest = error;
                }
            }
            if (Math.abs(nearest) < FOUND_S) {
                changeErrors.add(nearest);
                standardErrorsS.add(change.standardErrorS());
            }
        }
    }

    private void addUses(Bows read, List<True> truth) {
        double longest = truth.stream().mapToDouble(True::length).max().orElse(1);
        double frog = truth.stream()
                .mapToDouble(t -> Math.min(t.from(), t.to()))
                .min()
                .orElse(0);
        double tip = truth.stream()
                .mapToDouble(t -> Math.max(t.from(), t.to()))
                .max()
                .orElse(1);
        for (Bow bow : read.bows()) {
            if (bow.stroke().kind().direction().isEmpty()) {
                continue;
            }
            strokes++;
            if (!(bow.use() instanceof BowUse.Measured use)) {
                continue;
            }
            measured++;
            Optional<True> met = truth.stream()
                    .filter(t -> t.direction().equals(bow.stroke().kind().word()))
                    .filter(t -> t.sharedS(bow) > bow.stroke().lengthS() / 2)
                    .max(Comparator.comparingDouble(t -> t.sharedS(bow)));
            met.ifPresent(t -> {
                shareErrors.add(use.lengthShare() - t.length() / longest);
                lengthRatios.add(use.lengthShoulderWidths() / t.length());
            });
            if (use instanceof BowUse.Placed place) {
                placed++;
                confidences += place.confidence();
                rightlyPlaced += met.filter(t -> third((t.middle() - frog) / (tip - frog)) == place.part())
                                .isPresent()
                        ? 1
                        : 0;
            }
        }
    }

    private static BowPart third(double share) {
        return BowPart.values()[(int) Math.max(0, Math.min(2, Math.floor(3 * share)))];
    }

    int changes() {
        return changeErrors.size();
    }

    int measured() {
        return measured;
    }

    int placed() {
        return placed;
    }

    /** Share of the changes that lie within so many standard errors of the truth. */
    double within(double standardErrors) {
        int within = 0;
        for (int i = 0; i < changeErrors.size(); i++) {
            within += Math.abs(changeErrors.get(i)) <= standardErrors * standardErrorsS.get(i) ? 1 : 0;
        }
        return share(within, changeErrors.size());
    }

    /** Share of the measured strokes whose length, as a share of the player's longest, is right to so much. */
    double sharesWithin(double error) {
        return share(
                (int) shareErrors.stream().filter(e -> Math.abs(e) <= error).count(), measured);
    }

    double placedRightly() {
        return share(rightlyPlaced, placed);
    }

    private static double share(int part, int whole) {
        return whole == 0 ? 0 : (double) part / whole;
    }

    private static double median(List<Double> values) {
        return values.isEmpty()
                ? 0
                : values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }

    /**
     * The figures as a row of a table: changes, share within one and two standard errors, median standard error in ms;
     * strokes, share measured, ratio of the measured length to the true one, shares right to 0.15; share placed, share
     * of these in the right third, their mean confidence.
     */
    String row() {
        return String.format(
                Locale.ROOT,
                "%d | %.0f | %.0f | %.0f | %d | %.0f | %.2f | %.0f | %.0f | %.0f | %.2f",
                changes(),
                100 * within(1),
                100 * within(2),
                1000 * median(standardErrorsS),
                strokes,
                100 * share(measured, strokes),
                median(lengthRatios),
                100 * sharesWithin(0.15),
                100 * share(placed, strokes),
                100 * placedRightly(),
                placed == 0 ? 0 : confidences / placed);
    }
}
