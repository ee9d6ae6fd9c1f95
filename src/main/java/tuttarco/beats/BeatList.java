package tuttarco.beats;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/**
 * Beats listed in a CSV file (UTF-8, commas) with the columns {@code bar,beat,time_s}: bar number as printed, beat within
 * the bar from 1, seconds from the clip's start. Further columns are passed over. Times increase from line to line, and so
 * do the beats of a bar.
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
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .setAllowMissingColumnNames(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.ALLOW_EMPTY)
            .get();

    @Override
    public BeatMap beats() throws InputException {
        return read(InputBytes.read(file, MOST_BYTES), InputBytes.name(file));
    }

    /** Beats as such a file holds them, in the order of the map. */
    public static String csv(BeatMap map) {
        StringBuilder csv = new StringBuilder("bar,beat,time_s\n");
        for (Beat beat : map.beats()) {
            csv.append(CSVFormat.RFC4180.format(beat.bar(), beat.beat(), beat.timeS()))
                    .append('\n');
        }
        return csv.toString();
    }

    /** Beats with their standard errors, empty where not known, to the millisecond, and the word for where they come from. */
    public static String csv(BeatMap map, String source) {
        StringBuilder csv = new StringBuilder("bar,beat,time_s,stderr_s,source\n");
        for (Beat beat : map.beats()) {
            String stderrS = beat.stderrS().isPresent()
                    ? String.format(Locale.ROOT, "%.3f", beat.stderrS().getAsDouble())
                    : "";
            String timeS = String.format(Locale.ROOT, "%.3f", beat.timeS());
            csv.append(CSVFormat.RFC4180.format(beat.bar(), beat.beat(), timeS, stderrS, source))
                    .append('\n');
        }
        return csv.toString();
    }

    private static BeatMap read(byte[] content, String name) throws InputException {
        try (CSVParser rows = FORMAT.parse(new StringReader(text(content, name)))) {
            for (String column : List.of("bar", "beat", "time_s")) {
                if (!rows.getHeaderNames().contains(column)) {
                    throw new InputException(name + ": line 1: there is no column " + column
                            + "; begin the file with the line bar,beat,time_s");
                }
            }
            List<Beat> beats = new ArrayList<>();
            for (CSVRecord row : rows) {
                Line line = new Line(name + ": line " + rows.getCurrentLineNumber() + ": ", row);
                Beat beat = line.beat();
                if (!beats.isEmpty()) {
                    line.requireAfter(beats.get(beats.size() - 1), beat);
                }
                beats.add(beat);
            }
            if (beats.size() < 2) {
                throw new InputException(name + " lists " + beats.size() + " beats; list at least two");
            }
            return new BeatMap(beats);
        } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
            throw new InputException(
                    name + " is no CSV file that can be read; write lines of bar,beat,time_s and check its quotes", e);
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
            return new Beat(bar, beatNumber(), timeS());
        }

        void requireAfter(Beat before, Beat beat) throws InputException {
            if (!(beat.timeS() > before.timeS())) {
                throw wrong(beat.spoken() + " does not come after " + before.spoken()
                        + " in time; list the beats in the order played");
            }
            if (beat.bar().equals(before.bar()) && beat.beat() <= before.beat()) {
                throw wrong(beat.spoken() + " can't follow " + before.spoken()
                        + "; list each beat of a bar once, in order");
            }
        }

        private int beatNumber() throws InputException {
            String text = field("beat");
            if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) < 1) {
                throw wrong("a beat is a whole number from 1, not '" + Plain.text(text) + "'; correct it");
            }
            return Integer.parseInt(text);
        }

        private double timeS() throws InputException {
            String text = field("time_s");
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
