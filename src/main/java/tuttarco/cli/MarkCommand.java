package tuttarco.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.MarkedPart;
import tuttarco.analysis.PartMarking;
import tuttarco.analysis.SectionReader;
import tuttarco.chart.Words;
import tuttarco.compare.CompareSettings;
import tuttarco.files.Plain;
import tuttarco.files.WholeFolder;
import tuttarco.mark.BowMarks;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Writes what a player did into the part. */
@Command(
        name = "mark",
        description = {
            "Write the bowing of one player of a take into the take's MusicXML part, as a new file.",
            "The bow signs of the strokes that were played are replaced; everything else of the part stays as it is,"
                    + " compressed (.mxl) or not.",
            "Strokes that are not certain bear a coloured question mark; they are listed, and in PART.marks.txt beside."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class MarkCommand implements Callable<Integer> {
    private static final String COMPRESSED = ".mxl";
    private static final List<String> PART_ENDINGS = List.of(".musicxml", ".xml", COMPRESSED);
    private static final String LIST_ENDING = ".marks.txt";

    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "TAKE", description = "The take file, NAME.take.json.")
    private Path take;

    @Option(names = "--player", required = true, paramLabel = "NAME", description = "The player's label in the take.")
    private String player;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "PART.musicxml",
            description = "The file to write; a list of what is not certain, PART.marks.txt, goes beside it.")
    private Path out;

    @Option(
            names = "--every",
            description = "Write a sign on every stroke; if not given, only where a reader needs one: at the start,"
                    + " after rests, and where the bow does not simply turn.")
    private boolean every;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        String title = title();
        Path target = out.toAbsolutePath().normalize();
        Take given = TakeFile.read(take);
        requireNotItsOwn(given, target);
        requireOfItsKind(given);
        WholeFolder.requireNoFile(target.getParent());
        MarkedPart marked;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            marked = new PartMarking(SectionReader.standard(kept.cache()), CompareSettings.DEFAULT)
                    .of(given, player, every, progress.ofReading());
        }
        BowMarks marks = marked.marks();
        byte[] part = marked.document().marked(marked.part(), marks.marks());
        List<String> lines = lines(marks);
        WholeFolder.write(target.getParent(), folder -> {
            Files.write(folder.resolve(target.getFileName()), part);
            Files.write(folder.resolve(title + LIST_ENDING), lines, StandardCharsets.UTF_8);
        });
        marked.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        lines.forEach(line -> speaking.say(spec.commandLine().getOut(), line));
        speaking.say(spec.commandLine().getOut(), "The part lies at " + out);
        return ExitCode.DONE.number();
    }

    /** The part on the stand is the user's own and is never written over. */
    private void requireNotItsOwn(Take given, Path target) throws IOException {
        if (given.part().isPresent()
                && Files.exists(target)
                && Files.isSameFile(given.part().get(), target)) {
            throw new ParameterException(
                    spec.commandLine(), "'" + out + "' is the take's own part; name another file, so that it stays");
        }
    }

    /** A compressed part stays compressed. */
    private void requireOfItsKind(Take given) {
        boolean compressed = compressed(out);
        if (given.part().isPresent() && compressed(given.part().get()) != compressed) {
            throw new ParameterException(
                    spec.commandLine(),
                    "'" + out + "' would be " + (compressed ? "" : "un") + "compressed MusicXML, but the take's part is"
                            + " not; let it end in " + (compressed ? "NAME.musicxml" : "NAME.mxl"));
        }
    }

    private static boolean compressed(Path part) {
        return part.toString().toLowerCase(Locale.ROOT).endsWith(COMPRESSED);
    }

    private String title() {
        String name = out.getFileName() == null ? "" : out.getFileName().toString();
        String ending = PART_ENDINGS.stream()
                .filter(e -> name.toLowerCase(Locale.ROOT).endsWith(e) && name.length() > e.length())
                .findFirst()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "'" + out + "' does not end in NAME.musicxml, NAME.xml or NAME.mxl"));
        return name.substring(0, name.length() - ending.length());
    }

    private List<String> lines(BowMarks marks) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.count(marks.signs(), "sign") + " for "
                + Words.count(marks.marks().size(), "stroke") + " as "
                + Plain.text(player) + " played them, " + Words.count(marks.questions(), "question")
                + "; the part's own bow signs on these strokes were replaced.");
        marks.remarks().forEach(remark -> lines.add(Plain.line(remark) + "."));
        return lines;
    }
}
