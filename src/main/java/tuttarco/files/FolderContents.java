package tuttarco.files;

import java.io.IOException;
import java.nio.file.Path;

/** Writes the files of an output folder. */
@FunctionalInterface
public interface FolderContents {
    /** Writes everything below {@code folder}, which exists and is empty; subfolders may be made as needed. */
    void writeTo(Path folder) throws IOException, OutputException, InterruptedException;
}
