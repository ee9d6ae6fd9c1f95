package tuttarco.corrections;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.LineFile;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;
import tuttarco.files.Sha256;
import tuttarco.files.WholeFile;

/**
 * The corrections of a take: {@code NAME.corrections.jsonl} beside {@code NAME.take.json}, one line each, to which lines are
 * only added. Taking back and counting again are lines, too. Several programs may add lines.
 *
 * @param notes lines that could not be used, a sentence each; they stay in the file
 * @param sha256 of the file, lower-case hex; empty where there is none
 */
public record CorrectionLog(List<LogEntry> entries, List<String> notes, Optional<String> sha256) {
    /** Nothing was ever corrected. */
    public static final CorrectionLog EMPTY = new CorrectionLog(List.of(), List.of(), Optional.empty());

    private static final String TAKE_ENDING = ".take.json";
    private static final String ENDING = ".corrections.jsonl";

    /** A line has about 200 bytes; with the longest label there is, 2 KiB. */
    private static final int LONGEST_LINE_BYTES = 16 << 10;

    /** About 80 000 corrections. */
    private static final int MOST_BYTES = 16 << 20;

    /** So many lines that can't be used are told of one by one (chosen). */
    private static final int MOST_NOTES = 5;

    public CorrectionLog {
        entries = List.copyOf(entries);
        notes = List.copyOf(notes);
    }

    /** Where the log of a take lies. */
    public static Path beside(Path takeFile) {
        Path real = takeFile.toAbsolutePath().normalize();
        String name = real.getFileName().toString();
        String title = name.endsWith(TAKE_ENDING) ? name.substring(0, name.length() - TAKE_ENDING.length()) : name;
        return real.resolveSibling(title + ENDING);
    }

    /**
     * Reads the log of a take, an empty one where nothing was corrected yet. A line that was cut off or says nothing that is
     * known is passed over and told.
     *
     * @throws InputException if the file can't be read, or is too large for a log
     */
    public static CorrectionLog of(Path takeFile) throws InputException {
        Path file = beside(takeFile);
        if (!Files.exists(file)) {
            return EMPTY;
        }
        requireSmall(file);
        Gathering gathering = new Gathering(InputBytes.name(file));
        LineFile.read(file, LONGEST_LINE_BYTES, gathering::line);
        return new CorrectionLog(gathering.entries, gathering.notes(), Optional.of(Sha256.of(file)));
    }

    private static void requireSmall(Path file) throws InputException {
        try {
            if (Files.isRegularFile(file) && Files.size(file) > MOST_BYTES) {
                throw new InputException(InputBytes.name(file) + " is larger than " + (MOST_BYTES >> 20)
                        + " MiB, too large for corrections; check that it is the right file");
            }
        } catch (IOException e) {
            throw new InputException(
                    Plain.text(file.toString()) + " can't be read; check that you may open it and that it is a file",
                    e);
        }
    }

    /**
     * Adds a line to the log of a take.
     *
     * @throws OutputException if it can't be written
     */
    public static void append(Path takeFile, LogEntry entry) throws OutputException {
        LineFile.append(beside(takeFile), CorrectionLine.of(entry));
    }

    /**
     * Begins the log of a take with all that another's holds; there must be none yet.
     *
     * @throws InputException if the other's can't be read
     * @throws OutputException if it can't be written
     */
    public static void copy(Path fromTakeFile, Path toTakeFile) throws InputException, OutputException {
        Path from = beside(fromTakeFile);
        if (Files.exists(from)) {
            WholeFile.write(beside(toTakeFile), InputBytes.read(from, MOST_BYTES));
        }
    }

    /** What the lines come to. */
    public Corrections corrections() {
        return Corrections.of(entries);
    }

    /** Takes one line after the other. */
    private static final class Gathering {
        private final String file;
        private final List<LogEntry> entries = new ArrayList<>();
        private final Set<UUID> ids = new HashSet<>();
        private final List<String> told = new ArrayList<>();
        private int passedOver;

        Gathering(String file) {
            this.file = file;
        }

        void line(int number, byte[] line) {
            if (LineFile.blank(line)) {
                return;
            }
            String where = file + ": line " + number;
            try {
                LogEntry entry = CorrectionLine.read(line, where);
                if (!ids.add(entry.id())) {
                    throw new InputException(where + " bears the name of an earlier line");
                }
                entries.add(entry);
            } catch (InputException e) {
                passedOver++;
                if (told.size() < MOST_NOTES) {
                    told.add(Plain.line(e.getMessage()) + ". The line is passed over, and stays where it is.");
                }
            }
        }

        List<String> notes() {
            List<String> notes = new ArrayList<>(told);
            if (passedOver > told.size()) {
                notes.add(file + " has " + (passedOver - told.size()) + " more lines that are passed over.");
            }
            return notes;
        }
    }
}
