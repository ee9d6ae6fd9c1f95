package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;
import tuttarco.faces.Faces;

/** The take as a video with its signs. */
public final class TakeVideo implements Output {
    /** Its file, beside the report. */
    public static final String FILE = "take-video.mp4";

    private final Faces faces;

    public TakeVideo(Faces faces) {
        this.faces = faces;
    }

    @Override
    public String name() {
        return FILE;
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        throw new UnsupportedOperationException("not written yet with faces " + faces);
    }
}
