package tuttarco.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a small input file whole, with a bound on what it may take of the memory. */
public final class InputBytes {
    private InputBytes() {}

    /**
     * The content of the file.
     *
     * @param most the most bytes the file may have
     * @throws InputException if there is no such file, if it is larger, or if it can't be read
     */
    public static byte[] read(Path file, int most) throws InputException {
        if (Files.isDirectory(file)) {
            throw new InputException(name(file) + " is a folder; name a file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] content = in.readNBytes(most + 1);
            if (content.length > most) {
                throw new InputException(name(file) + " is larger than " + most / 1024
                        + " KiB, too large for this kind of" + " file; check that it is the right one");
            }
            return content;
        } catch (NoSuchFileException e) {
            throw new InputException(
                    "there is no file " + Plain.text(file.toString()) + "; check its name and place", e);
        } catch (IOException e) {
            throw new InputException(
                    Plain.text(file.toString()) + " can't be read; check that you may open it and that it is a file",
                    e);
        }
    }

    /** The file's own name without its folder, fit to stand in a message. */
    public static String name(Path file) {
        Path last = file.getFileName();
        return Plain.text(last == null ? file.toString() : last.toString());
    }
}
