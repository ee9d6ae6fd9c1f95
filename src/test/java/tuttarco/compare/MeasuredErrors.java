package tuttarco.compare;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * How one measured player's reading went wrong, stretch by stretch: laid on strokes that were played otherwise, it makes them
 * a reading with errors of the same rate, length and confidence. Read from files whose lines
 * {@code ReadingErrorsTest} prints.
 *
 * <p>Reference: H. R. Kuensch, The jackknife and the bootstrap for general stationary observations, Ann. Stat. 17 (1989)
 * 1217: blocks keep what hangs together in time.
 *
 * @param changeErrorS mean absolute error of the changes, seconds
 */
public record MeasuredErrors(String source, double changeErrorS, List<Stretch> stretches) {
    /** A normal deviate's standard deviation is its mean absolute value times this. */
    private static final double SD_OF_MEAN_ABSOLUTE = Math.sqrt(Math.PI / 2);

    /**
     * @param what empty where the direction was read, right or wrong
     */
    record Stretch(double lengthS, boolean wrong, Optional<StrokeKind> what, double confidence) {}

    /** Of the players of rendered scenes. */
    public static List<MeasuredErrors> rendered() {
        return in("reading-errors.csv");
    }

    /** Of the two players of real clips, 16 s in all. */
    public static List<MeasuredErrors> real() {
        return in("reading-errors-real.csv");
    }

    private static List<MeasuredErrors> in(String file) {
        Map<String, MeasuredErrors> players = new LinkedHashMap<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser rows = format.parse(new InputStreamReader(
                Objects.requireNonNull(MeasuredErrors.class.getResourceAsStream(file)), StandardCharsets.UTF_8))) {
            for (CSVRecord row : rows) {
                double changeErrorS = Double.parseDouble(row.get("change_error_ms")) / 1000;
                players.computeIfAbsent(
                                row.get("source"),
                                source -> new MeasuredErrors(source, changeErrorS, new ArrayList<>()))
                        .stretches()
                        .add(stretch(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(players.values());
    }

    private static Stretch stretch(CSVRecord row) {
        String what = row.get("what");
        boolean directed = what.equals("right") || what.equals("wrong");
        return new Stretch(
                Double.parseDouble(row.get("seconds")),
                what.equals("wrong"),
                directed ? Optional.empty() : Optional.of(StrokeKind.valueOf(what.toUpperCase(Locale.ROOT))),
                Double.parseDouble(row.get("confidence")));
    }

    /** The strokes as they would have been read, from a random moment of what was measured on, again and again. */
    public List<Stroke> on(List<Stroke> played, Random random) {
        double endS = played.get(played.size() - 1).endS();
        List<Stroke> read = Bows.jittered(played, changeErrorS * SD_OF_MEAN_ABSOLUTE, random);
        double lengthS = stretches.stream().mapToDouble(Stretch::lengthS).sum();
        double timeS = -lengthS * random.nextDouble();
        for (int i = 0; timeS < endS; i = (i + 1) % stretches.size()) {
            Stretch stretch = stretches.get(i);
            double untilS = timeS + Math.max(stretch.lengthS(), 0.001);
            read = Bows.read(read, timeS, untilS, stretch.wrong(), stretch.what(), stretch.confidence());
            timeS = untilS;
        }
        return read;
    }
}
