package tuttarco.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.files.WholeFolder;
import tuttarco.report.SeasonReport;
import tuttarco.season.Season;
import tuttarco.season.SeasonLog;
import tuttarco.seats.Names;

/** Shows how a season went. */
@Command(
        name = "season",
        description = {
            "Read the takes that 'analyse --season DIR' logged in DIR and show how they went: trends of the section, its"
                    + " players and passages, and bars that are left again and again.",
            "Writes season.html, season.csv, season-bowings.csv and charts."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SeasonCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "DIR", description = "The folder with season.jsonl.")
    private Path dir;

    @Option(names = "--out", paramLabel = "OUT", description = "The folder to write to; DIR unless you say.")
    private Optional<Path> out;

    @Mixin
    private NamesOption names;

    @Override
    public Integer call() throws Exception {
        Path to = out.orElse(dir);
        WholeFolder.requireNoFile(to);
        SeasonLog kept = SeasonLog.read(dir);
        SeasonLog log = names.names() == Names.BY_DESK ? kept.byDesk() : kept;
        WholeFolder.write(to, folder -> SeasonReport.write(Season.of(log.takes()), log.notes(), folder));
        log.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        speaking.say(spec.commandLine().getOut(), "The season lies at " + to.resolve(SeasonReport.PAGE));
        return ExitCode.DONE.number();
    }
}
