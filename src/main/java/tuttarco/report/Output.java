package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;

/** One thing that is written of an analysed take: a data file, the charts, the page. */
public interface Output {
    /** The file or folder it writes, relative to the output folder: {@code strokes.csv}, {@code charts}. */
    String name();

    /**
     * Writes into an existing folder; equal takes give equal bytes, in every locale.
     *
     * @throws InterruptedException if the thread was interrupted
     */
    void write(AnalysedTake take, Path folder) throws IOException, InterruptedException;
}
