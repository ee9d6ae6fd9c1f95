package tuttarco.take;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import tuttarco.files.InputException;
import tuttarco.files.Plain;

/** The folder of a take file, which the files named in the take do not leave. */
record TakeFolder(Path folder) {
    /** The existing file named at this place of the take. */
    Path file(JsonPlace place) throws InputException {
        String text = place.text();
        Path relative = relative(place, text);
        Path file = folder.resolve(relative);
        if (!Files.isRegularFile(file)) {
            throw place.wrong(
                    "there is no file " + Plain.text(text) + " beside the take file",
                    "correct the name or put the file there");
        }
        try {
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw place.wrong(
                        Plain.text(text) + " is a link that leaves the take's folder", "copy the file there instead");
            }
        } catch (IOException e) {
            throw new InputException(
                    place.wrong(Plain.text(text) + " can't be opened", "check the file and its folder")
                            .getMessage(),
                    e);
        }
        return file;
    }

    private static Path relative(JsonPlace place, String text) throws InputException {
        if (text.contains("\\") || text.matches("[A-Za-z]:.*")) {
            throw place.wrong(
                    "a path is written with / and begins in the take's folder, not like " + Plain.text(text),
                    "correct it");
        }
        try {
            Path path = Path.of(text);
            boolean leaves = path.isAbsolute();
            for (Path step : path) {
                leaves |= step.toString().equals("..");
            }
            if (leaves) {
                throw place.wrong(
                        Plain.text(text) + " leaves the take's folder",
                        "put the file beside the take file and write its name");
            }
            return path;
        } catch (InvalidPathException e) {
            throw new InputException(
                    place.wrong("'" + Plain.text(text) + "' is not a file name", "correct it")
                            .getMessage(),
                    e);
        }
    }
}
