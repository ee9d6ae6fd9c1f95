package tuttarco.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.Called;
import tuttarco.analysis.MarkedPart;
import tuttarco.analysis.PartMarking;
import tuttarco.analysis.Uncorrected;
import tuttarco.compare.CompareSettings;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.WholeFolder;
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
    private NamesOption names;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        requireTitle();
        Path target = out.toAbsolutePath().normalize();
        Take given = TakeFile.read(take);
        requireNotItsOwn(given, target);
        requireOfItsKind(given);
        WholeFolder.requireNoFile(target.getParent());
        PartMarking marking = PartMarking.of(given, player);
        Uncorrected read;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            read = Analysis.standard(Version.number(), kept.cache()).read(given, progress.ofReading());
        }
        MarkedPart marked = marking.by(read, CorrectionLog.of(take), every, CompareSettings.DEFAULT);
        MarkedPart handed = marked.as(new Called(names.names(), List.of(given)).label(player));
        WholeFolder.write(
                target.getParent(),
                folder -> handed.write(folder, target.getFileName().toString()));
        marked.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        marked.told().forEach(line -> speaking.say(spec.commandLine().getOut(), line));
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
        boolean compressed = MarkedPart.compressed(out);
        if (given.part().isPresent() && MarkedPart.compressed(given.part().get()) != compressed) {
            throw new ParameterException(
                    spec.commandLine(),
                    "'" + out + "' would be " + (compressed ? "" : "un") + "compressed MusicXML, but the take's part is"
                            + " not; let it end in " + (compressed ? "NAME.musicxml" : "NAME.mxl"));
        }
    }

    private void requireTitle() {
        if (MarkedPart.title(out).isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "'" + out + "' does not end in NAME.musicxml, NAME.xml or NAME.mxl");
        }
    }
}
