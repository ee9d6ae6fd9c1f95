package tuttarco.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.TakeParts;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatSource;
import tuttarco.files.WholeFile;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Writes where the beats of a take lie. */
@Command(
        name = "beats",
        description =
                "Find where the bars and beats of a take lie, in its sound unless it says so itself, and write them"
                        + " to a CSV file.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class BeatsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "TAKE", description = "The take file.")
    private Path takeFile;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The CSV file to write.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        Take take = TakeFile.read(takeFile);
        BeatSource source = TakeParts.beats(take, TakeParts.part(take));
        BeatSource.Told told = source.told();
        told.notes().forEach(note -> speaking.say(spec.commandLine().getOut(), note));
        WholeFile.write(out, BeatList.csv(told.beats()).getBytes(StandardCharsets.UTF_8));
        speaking.say(spec.commandLine().getOut(), "Beats written to " + out);
        return ExitCode.DONE.number();
    }
}
