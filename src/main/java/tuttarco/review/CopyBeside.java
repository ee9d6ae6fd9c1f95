package tuttarco.review;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFile;

/** Files put beside a take, since a take names none outside its folder. Nothing that lies there is written over. */
final class CopyBeside {
    /** Largest file that is copied, bytes: as large as a part may be. */
    private static final int MOST_BYTES = 64 << 20;

    private CopyBeside() {}

    /** Copies a file into a folder, under its own name or, where that is another file's, one with a number. */
    static Path copy(Path file, Path folder) throws InputException, OutputException {
        byte[] content = InputBytes.read(file, MOST_BYTES);
        Path target = folder.resolve(file.getFileName().toString());
        if (Files.exists(target) && Arrays.equals(InputBytes.read(target, MOST_BYTES), content)) {
            return target;
        }
        Path free = free(target);
        WholeFile.write(free, content);
        return free;
    }

    /**
     * The file, or where there is one already, the first that is not there: {@code a-2.csv} for {@code a.csv}, and {@code
     * b-2.bowing.txt} for {@code b.bowing.txt}.
     */
    static Path free(Path wanted) {
        String name = wanted.getFileName().toString();
        int dot = name.endsWith(BowTyping.PART_ENDING)
                ? name.length() - BowTyping.PART_ENDING.length()
                : name.lastIndexOf('.');
        String stem = dot < 1 ? name : name.substring(0, dot);
        String ending = dot < 1 ? "" : name.substring(dot);
        Path free = wanted;
        for (int number = 2; Files.exists(free); number++) {
            free = wanted.resolveSibling(stem + "-" + number + ending);
        }
        return free;
    }
}
