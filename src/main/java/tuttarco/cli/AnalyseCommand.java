package tuttarco.cli;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.HandOut;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.faces.Faces;
import tuttarco.files.WholeFolder;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Outputs;
import tuttarco.season.SeasonLog;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

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
    private NamesOption names;

    @Option(
            names = "--show-faces",
            description = "Show faces in the pictures of the report and the video; if not given, they are blurred.")
    private boolean faces;

    @Option(
            names = "--video",
            description = "Also write the take as a video with the bow signs on the players; takes about as long as the"
                    + " clip.")
    private boolean video;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        WholeFolder.requireNoFile(out);
        if (season.isPresent()) {
            WholeFolder.requireNoFile(season.get());
        }
        Take given = TakeFile.read(take);
        CorrectionLog log = CorrectionLog.of(take);
        Analysis analysis = Analysis.standard(Version.number(), kept.cache());
        Uncorrected read;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            read = analysis.read(given, progress.ofReading());
        }
        HandOut.Handed handed = handedOut(new HandOut(analysis), read, log);
        if (season.isPresent()) {
            AnalysedTake named = analysis.judged(read, log);
            SeasonLog.append(season.get(), named.onRecord(named.day(ZoneId.systemDefault())));
        }
        handed.take().notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        handed.warning().ifPresent(warning -> speaking.say(spec.commandLine().getErr(), warning));
        speaking.say(spec.commandLine().getOut(), "The report lies at " + out.resolve("report.html"));
        return ExitCode.DONE.number();
    }

    private HandOut.Handed handedOut(HandOut handOut, Uncorrected read, CorrectionLog log) throws Exception {
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Making pictures", "%")) {
            return handOut.write(read, log, wanted(), out, share -> progress.reached(100 * share, 100));
        }
    }

    private HandOut.Wanted wanted() {
        Set<Outputs.Kind> kinds = EnumSet.allOf(Outputs.Kind.class);
        if (!video) {
            kinds.remove(Outputs.Kind.VIDEO);
        }
        return new HandOut.Wanted(kinds, List.of(), false, names.names(), faces ? Faces.SHOWN : Faces.BLURRED);
    }
}
