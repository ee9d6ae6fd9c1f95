package tuttarco.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextWriter;
import tuttarco.chart.BowingStrip;
import tuttarco.chart.ChartFiles;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.WholeFile;
import tuttarco.parts.Parts;
import tuttarco.score.Awkward;
import tuttarco.score.Part;
import tuttarco.score.Practice;

/** A part in, its bowing out as text to edit. */
@Command(
        name = "bowing",
        description =
                "Complete the bowing of a part, write it to FILE as bow text to edit, and say where it is awkward.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class BowingCommand implements Callable<Integer> {
    private static final String ENDING = ".bowing.txt";

    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Parameters(paramLabel = "PART", description = "The part: MusicXML or bow text.")
    private Path part;

    @Option(
            names = "--over",
            paramLabel = "BOWTEXT",
            description = "Bow text of some bars, which replaces the part's bowing there.")
    private Optional<Path> over = Optional.empty();

    @Option(
            names = "--instrument",
            paramLabel = "INSTRUMENT",
            converter = InstrumentOption.class,
            description = "Whose part it is: violin (unless you say otherwise), viola, cello, bass, viol.")
    private Instrument instrument = Instrument.VIOLIN;

    @Option(
            names = "--practice",
            paramLabel = "PRACTICE",
            converter = PracticeOption.class,
            description = "Strong beats down (violins) or up (viols); unless you say, as the instrument does.")
    private Optional<Practice> practice = Optional.empty();

    @Option(names = "--every", description = "Write every stroke's direction, not only what is marked.")
    private boolean every;

    @Option(names = "--picture", paramLabel = "SVG", description = "Draw the bowing bar by bar to this file, too.")
    private Optional<Path> picture = Optional.empty();

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The bow text, NAME.bowing.txt.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        if (!out.toString().endsWith(ENDING)) {
            throw new ParameterException(spec.commandLine(), "'" + out + "' does not end in " + ENDING);
        }
        Part completed = completed();
        String text = text(completed);
        WholeFile.write(out, text.getBytes(StandardCharsets.UTF_8));
        if (picture.isPresent()) {
            WholeFile.write(
                    picture.get(),
                    ChartFiles.svgFile(new BowingStrip(completed)).getBytes(StandardCharsets.UTF_8));
        }
        for (Awkward place : completed.awkward()) {
            speaking.say(spec.commandLine().getOut(), place.spoken(completed.bars()));
        }
        speaking.say(spec.commandLine().getOut(), "The bowing lies at " + out);
        return ExitCode.DONE.number();
    }

    private Part completed() throws InputException {
        Practice chosen = practice.orElseGet(() -> Practice.of(instrument));
        Part read = Parts.read(part, instrument);
        return over.isPresent() ? Parts.over(read, over.get(), chosen) : read.completed(chosen);
    }

    private String text(Part completed) throws InputException {
        try {
            return BowTextWriter.textToEdit(completed, every);
        } catch (IllegalArgumentException e) {
            throw new InputException(InputBytes.name(part) + ": " + e.getMessage() + ".", e);
        }
    }
}
