package tuttarco.cli;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
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
import tuttarco.report.Outputs;
import tuttarco.season.SeasonLog;

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

    @Option(
            names = "--season",
            paramLabel = "SEASONDIR",
            description = {
                "Also add the take to the season log in this folder, SEASONDIR/season.jsonl; 'season SEASONDIR' shows it.",
                "One folder for one section and one piece. The log holds the players' labels."
            })
    private Optional<Path> season;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        WholeFolder.requireNoFile(out);
        if (season.isPresent()) {
            WholeFolder.requireNoFile(season.get());
        }
        AnalysedTake analysed;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            analysed = Analysis.standard(Version.number(), kept.cache()).of(take, progress.ofReading());
        }
        Outputs.write(analysed, out);
        if (season.isPresent()) {
            SeasonLog.append(season.get(), analysed.onRecord(analysed.day(ZoneId.systemDefault())));
        }
        analysed.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        speaking.say(spec.commandLine().getOut(), "The report lies at " + out.resolve("report.html"));
        return ExitCode.DONE.number();
    }
}
