package tuttarco.beats;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Beats listed in a CSV file (UTF-8, commas) with the columns {@code bar,beat,time_s}: bar number as printed, beat within
 * the bar from 1, seconds from the clip's start; and, if they are there, {@code stderr_s}, the standard error of the time in
 * seconds, and {@code source}, a word for where it comes from. Further columns are passed over. Where {@code stderr_s} is
 * empty, the beat is as sure as a tap ({@link Beat#TAPPED_S}); where {@code source} is, it is {@link Beat#LIST}.
 *
 * <p>Times increase from line to line; beats may go back, for they are listed in the order played. An empty line says that
 * the playing stopped there.
 */
public record BeatList(Path file) implements BeatSource {
    /** Latest time of a beat, seconds: a day, longer than any clip. */
    static final double LATEST_S = 86_400;

    private static final int MOST_BYTES = 16 << 20;
    private static final int LONGEST_BAR = 20;
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .setAllowMissingColumnNames(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_EMPTY)
            .get();

    @Override
    public BeatMap beats() throws InputException {
        return read(InputBytes.read(file, MOST_BYTES), InputBytes.name(file));
    }

    /** Beats as such a file holds them, in the order of the map, times and errors to the microsecond. */
    public static String csv(BeatMap map) {
        StringBuilder csv = new StringBuilder("bar,beat,time_s,stderr_s,source\n");
        for (Run run : map.runs()) {
            csv.append(run.firstIndex() == 0 ? "" : "\n");
            for (Beat beat : map.beats().subList(run.firstIndex(), run.lastIndex() + 1)) {
                String stderrS =
                        beat.stderrS().isPresent() ? seconds(beat.stderrS().getAsDouble()) : "";
                csv.append(FORMAT.format(beat.bar(), beat.beat(), seconds(beat.timeS()), stderrS, beat.source()))
                        .append('\n');
            }
        }
        return csv.toString();
    }

    private static String seconds(double s) {
        BigDecimal rounded = BigDecimal.valueOf(s).setScale(6, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static BeatMap read(byte[] content, String name) throws InputException {
        try (CSVParser rows = FORMAT.parse(new StringReader(text(content, name)))) {
            for (String column : List.of("bar", "beat", "time_s")) {
                if (!rows.getHeaderNames().contains(column)) {
                    throw new InputException(name + ": line 1: there is no column " + column
                            + "; begin the file with the line bar,beat,time_s");
                }
            }
            List<List<Beat>> stretches = new ArrayList<>();
            List<Beat> stretch = new ArrayList<>();
            Optional<Beat> last = Optional.empty();
            for (CSVRecord row : rows) {
                Line line = new Line(name + ": line " + rows.getCurrentLineNumber() + ": ", row);
                if (line.isEmpty()) {
                    end(stretch, stretches, name);
                    stretch = new ArrayList<>();
                    continue;
                }
                Beat beat = line.beat();
                if (last.isPresent()) {
                    line.requireAfter(last.get(), beat);
                }
                last = Optional.of(beat);
                stretch.add(beat);
            }
            end(stretch, stretches, name);
            if (stretches.isEmpty()) {
                throw new InputException(name + " lists no beats; list at least two");
            }
            return BeatMap.ofStretches(stretches);
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            throw new InputException(
                    name + " is no CSV file that can be read; write lines of bar,beat,time_s and check its quotes", e);
        }
    }

    private static void end(List<Beat> stretch, List<List<Beat>> stretches, String name) throws InputException {
        if (stretch.size() == 1) {
            throw new InputException(
                    name + " lists " + Plain.text(stretch.get(0).spoken())
                            + " alone; list at least two beats, also between two empty lines");
        }
        if (!stretch.isEmpty()) {
            stretches.add(List.copyOf(stretch));
        }
    }

    private static String text(byte[] content, String name) throws InputException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(name + " is not text in UTF-8; save it as CSV in UTF-8", e);
        }
    }

    /** One line of the file, with the words for where it stands. */
    private record Line(String place, CSVRecord row) {
        Beat beat() throws InputException {
            String bar = field("bar");
            if (bar.isEmpty() || bar.length() > LONGEST_BAR || bar.chars().anyMatch(Character::isISOControl)) {
                throw wrong("a bar number has 1 to " + LONGEST_BAR + " plain characters, not '" + Plain.text(bar)
                        + "'; write it as printed");
            }
            return new Beat(bar, beatNumber(), seconds("time_s"), OptionalDouble.of(stderrS()), source());
        }

        boolean isEmpty() {
            return row.stream().allMatch(String::isEmpty);
        }

        void requireAfter(Beat before, Beat beat) throws InputException {
            if (!(beat.timeS() > before.timeS())) {
                throw wrong(beat.spoken() + " does not come after " + before.spoken()
                        + " in time; list the beats in the order played");
            }
        }

        private int beatNumber() throws InputException {
            String text = field("beat");
            if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) < 1) {
                throw wrong("a beat is a whole number from 1, not '" + Plain.text(text) + "'; correct it");
            }
            return Integer.parseInt(text);
        }

        private double stderrS() throws InputException {
            if (!given("stderr_s")) {
                return Beat.TAPPED_S;
            }
            double stderrS = seconds("stderr_s");
            if (stderrS < 0) {
                throw wrong("a standard error is not negative, as " + Plain.text(field("stderr_s")) + "; correct it");
            }
            return Math.abs(stderrS);
        }

        private String source() throws InputException {
            if (!given("source")) {
                return Beat.LIST;
            }
            String source = field("source");
            if (source.length() > Beat.LONGEST_SOURCE || source.chars().anyMatch(Character::isISOControl)) {
                throw wrong("a source is a word of at most " + Beat.LONGEST_SOURCE + " plain characters, not '"
                        + Plain.text(source) + "'; shorten it");
            }
            return source;
        }

        private boolean given(String column) {
            return row.isSet(column) && !row.get(column).isBlank();
        }

        private double seconds(String column) throws InputException {
            String text = field(column);
            boolean number = text.matches("[+-]?[0-9]{1,9}(\\.[0-9]{0,20})?([eE][+-]?[0-9]{1,2})?");
            if (!number || !(Math.abs(Double.parseDouble(text)) <= LATEST_S)) {
                throw wrong("a time is a number of seconds, at most a day, not '" + Plain.text(text) + "'; correct it");
            }
            return Double.parseDouble(text);
        }

        private String field(String column) throws InputException {
            if (!row.isSet(column)) {
                throw wrong("the line has no " + column + "; write bar,beat,time_s");
            }
            return row.get(column);
        }

        private InputException wrong(String what) {
            return new InputException(place + what);
        }
    }
}
