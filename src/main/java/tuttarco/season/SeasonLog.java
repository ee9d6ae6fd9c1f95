package tuttarco.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.LineFile;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;
import tuttarco.seats.DeskLabels;

/**
 * The takes of a season: {@code season.jsonl} in a folder of its own, one line a take, to which lines are only added. Of one
 * recording the later line counts.
 *
 * @param takes in the order in which they were first logged
 * @param notes lines that could not be used, a sentence each
 */
public record SeasonLog(List<TakeOnRecord> takes, List<String> notes) {
    /** The log's name in its folder. */
    public static final String NAME = "season.jsonl";

    /** Sixty players over two hours take about 5 MB. */
    private static final int MOST_BYTES = 16 << 20;

    public SeasonLog {
        takes = List.copyOf(takes);
        notes = List.copyOf(notes);
    }

    /**
     * Adds a take; the folder is made.
     *
     * @throws OutputException if it can't be written
     */
    public static void append(Path folder, TakeOnRecord take) throws OutputException {
        LineFile.append(folder.resolve(NAME), TakeLine.of(take));
    }

    /** The same with all players called by where they sat last, so that nobody is named. */
    public SeasonLog byDesk() {
        List<TakeOnRecord> latestFirst = new ArrayList<>(Season.inOrder(takes));
        Collections.reverse(latestFirst);
        DeskLabels labels = new DeskLabels(
                latestFirst.stream().flatMap(t -> t.players().stream()).toList());
        List<String> told = new ArrayList<>(notes);
        labels.note().ifPresent(told::add);
        return new SeasonLog(takes.stream().map(t -> t.called(labels::of)).toList(), told);
    }

    /**
     * Reads a season. A line that was cut off, or is damaged so that it is no JSON, is left out and noted.
     *
     * @throws InputException if there is no log in the folder, it can't be read, or a line says what no take can be
     */
    public static SeasonLog read(Path folder) throws InputException {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file)) {
            throw new InputException("there is no " + NAME + " in " + Plain.text(folder.toString())
                    + "; log takes there with 'analyse TAKE --out DIR --season " + Plain.text(folder.toString()) + "'");
        }
        Map<String, TakeOnRecord> takes = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        LineFile.read(file, MOST_BYTES, (number, line) -> {
            if (!LineFile.blank(line)) {
                Optional<TakeOnRecord> take = TakeLine.read(line, InputBytes.name(file) + ": line " + number);
                take.ifPresent(t -> takes.put(t.videoSha256(), t));
                if (take.isEmpty()) {
                    notes.add(InputBytes.name(file) + ": line " + number
                            + " was cut off or is damaged and is left out; analyse that take again.");
                }
            }
        });
        return new SeasonLog(List.copyOf(takes.values()), notes);
    }
}
