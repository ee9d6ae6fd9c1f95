package tuttarco.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.Called;
import tuttarco.analysis.NothingSeenException;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.files.WholeFolder;
import tuttarco.report.AnalysedTake;
import tuttarco.report.ComparedTakes;
import tuttarco.season.TakeAgainstTake;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Takes beside each other: what got better, what got worse. */
@Command(
        name = "compare",
        description = "Set takes of the same passage beside each other, and write what changed to DIR.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(
            arity = "2..*",
            paramLabel = "TAKE",
            description = "The take files, NAME.take.json, in the order they were played.")
    private List<Path> files;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path out;

    @Mixin
    private NamesOption names;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        WholeFolder.requireNoFile(out);
        List<Read> read = new ArrayList<>();
        for (Path file : files) {
            read.add(read(file));
        }
        ComparedTakes compared = compared(read);
        for (TakeAgainstTake pair : compared.pairs()) {
            requireCommon(pair);
        }
        WholeFolder.write(out, folder -> {
            if (Thread.interrupted()) {
                throw new InterruptedException("writing was stopped");
            }
            compared.write(folder);
        });
        compared.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        speaking.say(spec.commandLine().getOut(), "What changed lies at " + out.resolve(ComparedTakes.PAGE));
        return ExitCode.DONE.number();
    }

    /** One of the takes, before anybody corrects it, and what was corrected. */
    private record Read(Uncorrected take, CorrectionLog log) {}

    private Read read(Path file) throws Exception {
        Take take = TakeFile.read(file);
        CorrectionLog log = CorrectionLog.of(file);
        try (WorkProgress progress =
                speaking.progress(spec.commandLine().getErr(), "Reading " + InputBytes.name(file), "s")) {
            Uncorrected read = analysis().read(take, progress.ofReading());
            if (read.told().filter(told -> told.beats().inBars()).isEmpty()) {
                throw new InputException(InputBytes.name(file)
                        + " says nothing of bars, so it can't be lined up with another take; give it beats.");
            }
            return new Read(read, log);
        }
    }

    private ComparedTakes compared(List<Read> read) throws InputException, NothingSeenException {
        Called called = new Called(
                names.names(), read.stream().map(r -> r.take().take()).toList());
        List<AnalysedTake> takes = new ArrayList<>();
        for (Read one : read) {
            takes.add(analysis().judged(called.read(one.take()), called.log(one.log())));
        }
        return ComparedTakes.of(takes, called.note());
    }

    private Analysis analysis() {
        return Analysis.standard(Version.number(), kept.cache());
    }

    private static void requireCommon(TakeAgainstTake pair) throws InputException {
        if (!pair.common().anything()) {
            String what = pair.common().bars().isEmpty() ? "bar" : "player of the same label";
            throw new InputException("The takes '" + Plain.text(pair.first().title()) + "' and '"
                    + Plain.text(pair.second().title()) + "' have no " + what
                    + " in common, so there is nothing to compare.");
        }
    }
}
