package tuttarco.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tuttarco.faces.Faces;
import tuttarco.files.FolderContents;
import tuttarco.files.OutputException;
import tuttarco.files.OwnFiles;
import tuttarco.files.WholeFolder;

/** What is written of a take, and how: whole or not at all. */
public final class Outputs {
    /** The page's file. */
    public static final String PAGE = "report.html";

    private Outputs() {}

    /** What {@code analyse} writes, in this order: the results note the files of all others. */
    public static List<Output> all() {
        List<Output> all = new ArrayList<>(page());
        all.add(new PlayerSheets());
        all.addAll(data());
        return List.copyOf(all);
    }

    /** To be looked at: the page and its charts. */
    public static List<Output> page() {
        return List.of(new ReportPage(Faces.BLURRED), new Charts());
    }

    /** To be worked with: tables, and the results in one file. */
    public static List<Output> data() {
        return List.of(
                new StrokesCsv(),
                new BowsCsv(),
                new BeatsCsv(),
                new DivergencesCsv(),
                new LagsCsv(),
                new MetricsCsv(),
                new ResultsJson());
    }

    /**
     * Writes all outputs of a take. Files of an earlier run that are not written again are taken away, unless somebody changed
     * them.
     *
     * @throws OutputException if the folder can't be written
     * @throws InterruptedException if the thread was interrupted; then the folder is as it was before
     */
    public static void write(AnalysedTake take, Path folder) throws OutputException, InterruptedException {
        WholeFolder.write(folder, ResultsJson.filesNotedIn(folder), contents(take, all(), into -> {}));
    }

    /**
     * Writes some of the outputs and other files besides. Whatever else lies in the folder is left alone.
     *
     * @param others writes the other files, before the outputs
     */
    public static void write(AnalysedTake take, List<Output> outputs, FolderContents others, Path folder)
            throws OutputException, InterruptedException {
        WholeFolder.write(folder, OwnFiles.NONE, contents(take, outputs, others));
    }

    private static FolderContents contents(AnalysedTake take, List<Output> outputs, FolderContents others) {
        return folder -> {
            others.writeTo(folder);
            for (Output output : outputs) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("writing was stopped");
                }
                output.write(take, folder);
            }
        };
    }
}
