package tuttarco.report;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import tuttarco.faces.Faces;
import tuttarco.faces.Looks;
import tuttarco.files.FilesBelow;
import tuttarco.files.FolderContents;
import tuttarco.files.OutputException;
import tuttarco.files.OwnFiles;
import tuttarco.files.WholeFolder;
import tuttarco.film.FacesToBlur;

/** What is written of a take, and how: whole or not at all. */
public final class Outputs {
    /** The page's file. */
    public static final String PAGE = "report.html";

    private Outputs() {}

    /** What there is to write, in the order in which it is written: the results note the files of all others. */
    public enum Kind {
        /** A page for each player. */
        SHEETS,
        /** To be seen with the video: the spots, and the bars. */
        CAPTIONS,
        /** The take as a video with its signs; takes long. */
        VIDEO,
        /** To be looked at: the page, which plays the video that was written before it, and its charts. */
        REPORT,
        /** To be worked with: tables, and the results in one file. */
        DATA;

        private List<Output> outputs(FacesToBlur faces, LongWork work) {
            return switch (this) {
                case REPORT -> List.of(new ReportPage(faces, work.of(LongWork.Part.STILLS)), new Charts());
                case SHEETS -> List.of(new PlayerSheets());
                case CAPTIONS -> List.of(new Captions(), new Chapters());
                case VIDEO -> List.of(new TakeVideo(faces, work.of(LongWork.Part.VIDEO)));
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
     * @param progress told what share of what takes long is done, the pictures, from 0 to 1
     * @param others writes the other files, before the outputs
     * @return what was written, relative to the folder
     * @throws OutputException if the folder can't be written
     * @throws InterruptedException if the thread was interrupted; then the folder is as it was before
     */
    public static Set<Path> write(
            AnalysedTake take,
            Set<Kind> kinds,
            Faces faces,
            DoubleConsumer progress,
            FolderContents others,
            Path folder)
            throws OutputException, InterruptedException {
        OwnFiles earlier = kinds.contains(Kind.DATA) ? ResultsJson.filesNotedIn(folder) : OwnFiles.NONE;
        LongWork work = LongWork.of(kinds, faces, progress);
        FacesToBlur blurred = faces == Faces.SHOWN
                ? FacesToBlur.none()
                : FacesToBlur.in(take.clip(), take.take().players(), looks(take, kinds), work.of(LongWork.Part.FACES));
        List<Output> outputs = new TreeSet<>(kinds)
                .stream().flatMap(kind -> kind.outputs(blurred, work).stream()).toList();
        Set<Path> written = new HashSet<>();
        WholeFolder.write(folder, earlier, into -> {
            contents(take, outputs, others).writeTo(into);
            written.addAll(FilesBelow.of(into));
        });
        return written;
    }

    /** What the files and folders of all kinds are called. */
    public static Set<String> names() {
        return Arrays.stream(Kind.values())
                .flatMap(kind -> kind.outputs(FacesToBlur.none(), LongWork.NONE).stream())
                .map(Output::name)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Where faces are looked for: all along where a video is drawn, which does for the stills too, or else at these. */
    private static Looks looks(AnalysedTake take, Set<Kind> kinds) {
        return kinds.contains(Kind.VIDEO) ? Looks.steady() : Looks.at(MomentPictures.timesS(take.comparison()));
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
