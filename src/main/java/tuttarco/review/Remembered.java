package tuttarco.review;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFile;

/**
 * What the window remembers from one time to the next: which takes were open, and that the note on filming was read. Each
 * is a file of its own in a folder of the user's, written whole; where there is no folder nothing is remembered.
 */
public final class Remembered {
    /** Takes in the list at the most. */
    public static final int MOST_TAKES = 10;

    private static final String TAKES = "recent-takes.txt";
    private static final String NOTE = "note-on-filming-read.txt";

    /** Ten paths are shorter. */
    private static final int MOST_BYTES = 1 << 20;

    private final Optional<Path> folder;

    public Remembered(Optional<Path> folder) {
        this.folder = folder;
    }

    /**
     * A take or video that was open.
     *
     * @param there whether the file is still where it was
     */
    public record Recent(Path file, boolean there) {}

    /** What was open, the latest first. */
    public List<Recent> recent() {
        return paths().stream().map(p -> new Recent(p, Files.isRegularFile(p))).toList();
    }

    /**
     * Puts a take at the head of the list; its video, if that is in it, goes.
     *
     * @param opened what was opened, the take's file or its video
     */
    public void opened(Path opened, Draft draft) throws OutputException {
        List<Path> paths = new ArrayList<>(paths());
        paths.removeAll(List.of(opened, draft.file(), draft.video()));
        paths.add(0, opened);
        write(paths.subList(0, Math.min(MOST_TAKES, paths.size())));
    }

    /** Takes a line out of the list; the file stays where it is. */
    public void forget(Path file) throws OutputException {
        List<Path> paths = new ArrayList<>(paths());
        paths.remove(file);
        write(paths);
    }

    public boolean noteRead() {
        return folder.map(f -> Files.exists(f.resolve(NOTE))).orElse(false);
    }

    public void readNote() throws OutputException {
        if (folder.isPresent()) {
            WholeFile.write(folder.get().resolve(NOTE), "read\n".getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Paths one a line; what can't be read is as good as not remembered. */
    private List<Path> paths() {
        Optional<Path> file = folder.map(f -> f.resolve(TAKES)).filter(Files::exists);
        if (file.isEmpty()) {
            return List.of();
        }
        try {
            List<Path> paths = new ArrayList<>();
            String text = new String(InputBytes.read(file.get(), MOST_BYTES), StandardCharsets.UTF_8);
            for (String line : text.lines().toList()) {
                path(line).filter(p -> !paths.contains(p)).ifPresent(paths::add);
            }
            return paths.subList(0, Math.min(MOST_TAKES, paths.size()));
        } catch (InputException e) {
            return List.of();
        }
    }

    private static Optional<Path> path(String line) {
        try {
            return Optional.of(line).filter(l -> !l.isBlank()).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void write(List<Path> paths) throws OutputException {
        if (folder.isPresent()) {
            StringBuilder lines = new StringBuilder();
            paths.stream()
                    .map(Path::toString)
                    .filter(p -> p.lines().count() == 1)
                    .forEach(p -> lines.append(p).append('\n'));
            WholeFile.write(folder.get().resolve(TAKES), lines.toString().getBytes(StandardCharsets.UTF_8));
        }
    }
}
