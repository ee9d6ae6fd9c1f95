package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import tuttarco.chart.Chart;
import tuttarco.chart.TakesByBar;
import tuttarco.season.TakeAgainstTake;

/**
 * Everything that is written of takes beside each other.
 *
 * @param pairs as {@link TakeAgainstTake#among} gives them
 * @param notes things to tell the reader, one sentence each
 * @param inputs names and fingerprints of what was read
 */
public record ComparedTakes(
        List<TakeAgainstTake> pairs, List<String> notes, List<ReportModel.Fact> inputs, String programVersion) {
    /** The page's file name. */
    public static final String PAGE = "compare.html";

    public ComparedTakes {
        pairs = List.copyOf(pairs);
        notes = List.copyOf(notes);
        inputs = List.copyOf(inputs);
    }

    /**
     * @param takes at least two, in the order played
     * @param toAll something to tell of all of them, a sentence
     */
    public static ComparedTakes of(List<AnalysedTake> takes, Optional<String> toAll) {
        List<String> notes = new ArrayList<>(toAll.stream().toList());
        List<ReportModel.Fact> inputs = new ArrayList<>();
        for (int i = 0; i < takes.size(); i++) {
            AnalysedTake take = takes.get(i);
            String number = i + 1 + ". ";
            take.notes().forEach(note -> notes.add(number + take.take().title() + ": " + note));
            inputs.add(new ReportModel.Fact(
                    "take " + (i + 1), take.take().file().getFileName().toString()));
            new TreeMap<>(take.sha256())
                    .forEach((role, hash) -> inputs.add(
                            new ReportModel.Fact("SHA-256 of the " + role + " of take " + number.strip(), hash)));
        }
        return new ComparedTakes(
                TakeAgainstTake.among(
                        takes.stream().map(t -> t.onRecord(Optional.empty())).toList()),
                notes,
                inputs,
                takes.get(0).programVersion());
    }

    /** Take against take; empty where no bow could be compared. */
    Optional<Chart> chart() {
        return pairs.get(0).playerBars().isEmpty() ? Optional.empty() : Optional.of(new TakesByBar(pairs));
    }

    /** Writes page, data and chart into an existing folder. */
    public void write(Path folder) throws IOException {
        Pages.write("compare.jte", new TakesWords(this).model(), folder.resolve(PAGE));
        ChangesCsv.write(this, folder);
        Optional<Chart> chart = chart();
        if (chart.isPresent()) {
            Charts.write(chart.get(), Files.createDirectories(folder.resolve("charts")));
        }
    }

    /** Numbers of a pair's takes in the order played, from 1. */
    int[] numbers(TakeAgainstTake pair) {
        int index = pairs.indexOf(pair);
        int takes = Math.max(2, pairs.size());
        return index == 0 ? new int[] {1, takes} : new int[] {index, index + 1};
    }
}
