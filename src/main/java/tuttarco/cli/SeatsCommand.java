package tuttarco.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.NothingSeenException;
import tuttarco.analysis.SeatSearch;
import tuttarco.bow.Instrument;
import tuttarco.chart.SeatPicture;
import tuttarco.files.Plain;
import tuttarco.files.WholeFolder;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Proposal;
import tuttarco.seats.SeatBox;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** Finds who sits where, so that nobody has to draw boxes. */
@Command(
        name = "seats",
        description = {
            "Find the players who bow in a video and write their seats to a take file, and a picture of them beside it.",
            "The take has no part and no beats yet; until you add them it is compared with its leader stroke by stroke."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SeatsCommand implements Callable<Integer> {
    private static final String TAKE_ENDING = ".take.json";
    private static final String PICTURE_ENDING = ".seats.png";

    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "VIDEO", description = "The video, in the folder of the take file or below.")
    private Path video;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "TAKE.take.json",
            description = "The take file to write; a picture of the seats, TAKE.seats.png, goes beside it.")
    private Path out;

    @Option(
            names = "--instrument",
            paramLabel = "INSTRUMENT",
            converter = InstrumentOption.class,
            description = "What they all play: violin (if not given), viola, cello, bass or viol.")
    private Instrument instrument = Instrument.VIOLIN;

    @Option(
            names = "--leader",
            paramLabel = "SIDE",
            description = "The side of the picture on which the leader sits, left (if not given) or right.")
    private LeaderSide leaderSide = LeaderSide.LEFT;

    @Override
    public Integer call() throws Exception {
        String name = out.getFileName() == null ? "" : out.getFileName().toString();
        if (!name.endsWith(TAKE_ENDING) || name.equals(TAKE_ENDING)) {
            throw new ParameterException(spec.commandLine(), "'" + out + "' does not end in NAME" + TAKE_ENDING);
        }
        String title = name.substring(0, name.length() - TAKE_ENDING.length());
        Path takeFile = out.toAbsolutePath().normalize();
        TakeFile.requireInside(video, takeFile);
        WholeFolder.requireNoFile(takeFile.getParent());
        Proposal found = find();

        Take take = new Take(
                takeFile,
                Plain.text(title),
                video,
                found.players(),
                Optional.empty(),
                new BeatsGiven.Missing(),
                Bowing.UNIFIED);
        byte[] picture = SeatPicture.png(found.picture(), found.players(), found.unsure());
        WholeFolder.write(takeFile.getParent(), folder -> {
            TakeFile.write(take, takeFile.getParent(), folder.resolve(name));
            Files.write(folder.resolve(title + PICTURE_ENDING), picture);
        });
        found.notes().forEach(note -> speaking.say(spec.commandLine().getErr(), note));
        doubts(found.unsure()).forEach(doubt -> speaking.say(spec.commandLine().getOut(), doubt));
        int seats = found.players().size();
        speaking.say(
                spec.commandLine().getOut(),
                String.format(
                        Locale.ROOT,
                        "%s written to %s; check them in %s",
                        seats == 1 ? "1 seat" : seats + " seats",
                        out,
                        out.resolveSibling(title + PICTURE_ENDING)));
        return ExitCode.DONE.number();
    }

    private Proposal find() throws Exception {
        Proposal found;
        speaking.say(spec.commandLine().getErr(), "Looking for people");
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Reading bow arms", "s")) {
            found = SeatSearch.in(video, instrument, leaderSide, progress.ofReading());
        }
        if (found.players().isEmpty()) {
            throw new NothingSeenException(SeatSearch.nobody(video, found));
        }
        return found;
    }

    private static List<String> doubts(List<SeatBox> unsure) {
        return IntStream.range(0, unsure.size())
                .mapToObj(i -> "Left out, for it is not certain that he or she bows: the person at " + unsure.get(i)
                        + ", dashed and numbered ? " + (i + 1) + " in the picture.")
                .toList();
    }
}
