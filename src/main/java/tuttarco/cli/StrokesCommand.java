package tuttarco.cli;

import java.io.Writer;
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
import tuttarco.analysis.SectionReader;
import tuttarco.analysis.SectionReading;
import tuttarco.files.WholeFolder;
import tuttarco.report.BowsCsv;
import tuttarco.report.StrokesCsv;
import tuttarco.seats.Player;

/** Reads strokes alone, without a part. */
@Command(
        name = "strokes",
        description = "Read the strokes of the named players from a video and write them to DIR/strokes.csv,"
                + " and how much bow each took to DIR/bows.csv.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class StrokesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "VIDEO", description = "The video.")
    private Path video;

    @Option(
            names = "--player",
            required = true,
            paramLabel = "NAME:x,y,w,h:INSTRUMENT[:FACING]",
            converter = PlayerOption.class,
            description = {
                "A player and the seat box in pixels of the upright picture. May be given several times.",
                "INSTRUMENT: violin, viola, cello, bass, viol.",
                "FACING, where the chest points in the picture: camera, camera-left, left, away-left, away,"
                        + " away-right, right, camera-right; auto, or left out, where the program is to see for itself."
            })
    private List<Player> players;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path out;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        if (players.stream().map(Player::label).distinct().count() < players.size()) {
            throw new ParameterException(spec.commandLine(), "Each player needs a name of his or her own");
        }
        WholeFolder.requireNoFile(out);
        SectionReading reading;
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            reading = SectionReader.standard(kept.cache()).read(video, players, progress.ofReading());
        }
        WholeFolder.write(out, folder -> {
            try (Writer csv = Files.newBufferedWriter(folder.resolve("strokes.csv"))) {
                StrokesCsv.write(reading.readings(), csv);
            }
            new BowsCsv().write(reading.bows(), folder);
        });
        reading.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        speaking.say(spec.commandLine().getOut(), "Strokes written to " + out.resolve("strokes.csv"));
        return ExitCode.DONE.number();
    }
}
