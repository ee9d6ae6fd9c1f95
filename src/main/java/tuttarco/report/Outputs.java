package tuttarco.report;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;
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

    /** What there is to write, in the order in which it is written: the results note the files of all others. */
    public enum Kind {
        /** To be looked at: the page and its charts. */
        REPORT,
        /** A page for each player. */
        SHEETS,
        /** To be seen with the video: the spots, and the bars. */
        CAPTIONS,
        /** The take as a video with its signs; takes long. */
        VIDEO,
        /** To be worked with: tables, and the results in one file. */
        DATA;

        private List<Output> outputs(Faces faces, DoubleConsumer progress) {
            return switch (this) {
                case REPORT -> List.of(new ReportPage(faces), new Charts());
                case SHEETS -> List.of(new PlayerSheets());
                case CAPTIONS -> List.of(new Captions(), new Chapters());
                case VIDEO -> List.of(new TakeVideo(faces, progress::accept));
                case DATA ->
                    List.of(
                            new StrokesCsv(),
                            new BowsCsv(),
                            new BeatsCsv(),
                            new DivergencesCsv(),
                            new LagsCsv(),
                            new MetricsCsv(),
                            new ResultsJson());
            };
        }
    }

    /**
     * Writes a take, and other files besides. Where the results are written, files that those of an earlier run noted and this
     * one does not write again are taken away, unless somebody changed them; whatever else lies in the folder is left alone.
     *
     * @param progress told what share of what takes long is done, the video, from 0 to 1
     * @param others writes the other files, before the outputs
     * @throws OutputException if the folder can't be written
     * @throws InterruptedException if the thread was interrupted; then the folder is as it was before
     */
    public static void write(
            AnalysedTake take,
            Set<Kind> kinds,
            Faces faces,
            DoubleConsumer progress,
            FolderContents others,
            Path folder)
            throws OutputException, InterruptedException {
        OwnFiles earlier = kinds.contains(Kind.DATA) ? ResultsJson.filesNotedIn(folder) : OwnFiles.NONE;
        List<Output> outputs = new TreeSet<>(kinds)
                .stream()
                        .flatMap(kind -> kind.outputs(faces, progress).stream())
                        .toList();
        WholeFolder.write(folder, earlier, contents(take, outputs, others));
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
