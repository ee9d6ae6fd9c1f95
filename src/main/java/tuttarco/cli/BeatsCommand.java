package tuttarco.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.align.HeardPassage;
import tuttarco.align.Listening;
import tuttarco.analysis.TakeParts;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatMap;
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
        BeatMap beats = source instanceof Listening listening ? told(listening.heard()) : source.beats();
        WholeFile.write(out, BeatList.csv(beats).getBytes(StandardCharsets.UTF_8));
        speaking.say(spec.commandLine().getOut(), "Beats written to " + out);
        return ExitCode.DONE.number();
    }

    /** Says which bars were heard when, and what was left out. */
    private BeatMap told(Listening.Heard heard) {
        PrintWriter to = spec.commandLine().getOut();
        for (HeardPassage passage : heard.passages()) {
            speaking.say(to, passage.spoken());
        }
        heard.leftOut().ifPresent(leftOut -> speaking.say(to, leftOut));
        return heard.beats();
    }
}
