package tuttarco.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** One sentence for what the file system refused. */
final class Refusal {
    private Refusal() {}

    static OutputException of(Path target, IOException e) {
        return new OutputException(sentence(target, reason(e)), e);
    }

    static OutputException because(Path target, String reason) {
        return new OutputException(sentence(target, reason), null);
    }

    private static String sentence(Path target, String reason) {
        return "Can't write " + Plain.text(target.toString()) + ": " + reason + ".";
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "this user may not write there, name another place";
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return Plain.text(((FileSystemException) e).getFile()) + " is a file where a folder is needed";
        }
        String said = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return said == null ? "the file system refused" : Plain.text(said);
    }
}
