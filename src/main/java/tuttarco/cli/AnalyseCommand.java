package tuttarco.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.Analysis;
import tuttarco.files.WholeFolder;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Output;
import tuttarco.report.Outputs;
import tuttarco.report.ResultsJson;

/** The main job: a take in, a report out. */
@Command(
        name = "analyse",
        description = "Read a take and write the report, its charts and its data to DIR.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class AnalyseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "TAKE", description = "The take file, NAME.take.json.")
    private Path take;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path out;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        WholeFolder.requireNoFile(out);
        AnalysedTake analysed;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            analysed = Analysis.standard(Version.number(), kept.cache()).of(take, progress.ofReading());
        }
        WholeFolder.write(out, ResultsJson.filesNotedIn(out), folder -> {
            for (Output output : Outputs.all()) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("writing was stopped");
                }
                output.write(analysed, folder);
            }
        });
        analysed.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        speaking.say(spec.commandLine().getOut(), "The report lies at " + out.resolve("report.html"));
        return ExitCode.DONE.number();
    }
}
