package tuttarco.corrections;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;

/**
 * The corrections of a take: {@code NAME.corrections.jsonl} beside {@code NAME.take.json}, one line each, to which lines are
 * only added. Taking back and counting again are lines, too. Several programs may add lines.
 *
 * @param notes lines that could not be used, a sentence each; they stay in the file
 * @param sha256 of the file, lower-case hex; empty where there is none
 */
public record CorrectionLog(List<LogEntry> entries, List<String> notes, Optional<String> sha256) {
    public static final CorrectionLog EMPTY = new CorrectionLog(List.of(), List.of(), Optional.empty());

    public CorrectionLog {
        entries = List.copyOf(entries);
        notes = List.copyOf(notes);
    }

    /** Where the log of a take lies. */
    public static Path beside(Path takeFile) {
        throw new UnsupportedOperationException();
    }

    /**
     * Reads the log of a take, an empty one where nothing was corrected yet.
     *
     * @throws InputException if it can't be read
     */
    public static CorrectionLog of(Path takeFile) throws InputException {
        throw new UnsupportedOperationException();
    }

    /**
     * Adds a line to the log of a take.
     *
     * @throws OutputException if it can't be written
     */
    public static void append(Path takeFile, LogEntry entry) throws OutputException {
        throw new UnsupportedOperationException();
    }

    public Corrections corrections() {
        return Corrections.of(entries);
    }
}
