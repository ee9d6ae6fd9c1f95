package tuttarco.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tuttarco.analysis.NothingSeenException;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.files.Plain;

/** The command line: reads the arguments, runs a command, turns what went wrong into one sentence and an exit code. */
@Command(
        name = "tuttarco",
        description = "Reads the bow arms of a string section from a video and compares them with the marked bowing.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            AnalyseCommand.class,
            ReviewCommand.class,
            CompareCommand.class,
            BeatsCommand.class,
            SeatsCommand.class,
            StrokesCommand.class,
            BowingCommand.class,
            MarkCommand.class,
            SeasonCommand.class,
            DemoCommand.class
        },
        footerHeading = "%nExit codes%n",
        footer = {
            "  0    done",
            "  1    a defect of Tuttarco's own",
            "  2    the command line is not understood",
            "  3    something given can't be read or is not valid",
            "  4    nothing could be read from the picture",
            "  5    the output could not be written",
            "  130  interrupted; nothing was written"
        })
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code;
        try (Interruption interruption = new Interruption()) {
            code = runUntilStopped(out, err, args);
        }
        System.exit(code);
    }

    private static int runUntilStopped(PrintWriter out, PrintWriter err, String... args) {
        try {
            return run(out, err, args);
        } catch (LinkageError e) {
            // a class that registers for the program's end can't be set up once that has come
            if (!Interruption.programIsEnding()) {
                throw e;
            }
            return interrupted(err);
        }
    }

    /** Runs a command line and returns its exit code; writes nothing but to the two writers and the named output. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Main::misunderstood)
                .setExecutionExceptionHandler((e, command, parsed) -> failed(e, command.getErr()))
                .execute(args);
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "Say what to do: analyse, review, compare, season, beats, seats, strokes, bowing, mark or demo");
    }

    private static int misunderstood(ParameterException e, String[] args) {
        PrintWriter err = e.getCommandLine().getErr();
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        err.println(Plain.line(e.getMessage()) + "; see '" + name + " --help'.");
        return ExitCode.USAGE.number();
    }

    private static int failed(Exception e, PrintWriter err) {
        // an interrupted thread can't read or write files either, and fails in whatever it does next
        if (Thread.interrupted() || e instanceof InterruptedException || Interruption.programIsEnding()) {
            return interrupted(err);
        }
        if (e instanceof InputException) {
            return say(err, e.getMessage(), ExitCode.INPUT);
        }
        if (e instanceof NothingSeenException) {
            return say(err, e.getMessage(), ExitCode.NOTHING_READ);
        }
        if (e instanceof OutputException) {
            return say(err, e.getMessage(), ExitCode.OUTPUT);
        }
        return say(
                err,
                "Tuttarco itself went wrong (" + Plain.text(e.toString())
                        + "); please report it with the command you gave.",
                ExitCode.DEFECT);
    }

    private static int interrupted(PrintWriter err) {
        return say(err, "Interrupted; nothing was written.", ExitCode.INTERRUPTED);
    }

    private static int say(PrintWriter err, String sentence, ExitCode code) {
        err.println(sentence);
        return code.number();
    }
}
