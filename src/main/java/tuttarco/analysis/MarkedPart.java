package tuttarco.analysis;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.chart.Words;
import tuttarco.files.Plain;
import tuttarco.mark.BowMarks;

/** A take's part with the bow signs that one player's bowing gives it. */
public final class MarkedPart {
    private static final String COMPRESSED = ".mxl";
    private static final List<String> ENDINGS = List.of(".musicxml", ".xml", COMPRESSED);
    private static final String LIST_ENDING = ".marks.txt";

    private final byte[] content;
    private final String who;
    private final BowMarks marks;
    private final List<String> notes;

    /**
     * @param content the part's file
     * @param who what the player is called
     * @param notes things to tell the user about the reading, one sentence each
     */
    MarkedPart(byte[] content, String who, BowMarks marks, List<String> notes) {
        this.content = content.clone();
        this.who = who;
        this.marks = marks;
        this.notes = List.copyOf(notes);
    }

    /** The same of a player who is called otherwise. */
    public MarkedPart as(String other) {
        return new MarkedPart(content, other, marks, notes);
    }

    /** Things to tell the user about the reading, one sentence each. */
    public List<String> notes() {
        return notes;
    }

    /** The name of a MusicXML file without its ending; empty if it has none of those. */
    public static Optional<String> title(Path file) {
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        return ENDINGS.stream()
                .filter(e -> name.toLowerCase(Locale.ROOT).endsWith(e) && name.length() > e.length())
                .findFirst()
                .map(e -> name.substring(0, name.length() - e.length()));
    }

    /** Whether a file is called as a compressed MusicXML file is. */
    public static boolean compressed(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(COMPRESSED);
    }

    /** How many signs there are, and which are not certain, a line each. */
    public List<String> told() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.count(marks.signs(), "sign") + " for "
                + Words.count(marks.marks().size(), "stroke") + " as "
                + Plain.text(who) + " played them, " + Words.count(marks.questions(), "question")
                + "; the part's own bow signs on these strokes were replaced.");
        marks.remarks().forEach(remark -> lines.add(Plain.line(remark) + "."));
        return lines;
    }

    /** Writes the marked part into a folder, and beside it, as {@code NAME.marks.txt}, what is told of it. */
    public void write(Path folder, String fileName) throws IOException {
        Path file = folder.resolve(fileName);
        Files.write(file, content);
        Files.write(folder.resolve(title(file).orElse(fileName) + LIST_ENDING), told(), StandardCharsets.UTF_8);
    }
}
