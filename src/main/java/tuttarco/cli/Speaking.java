package tuttarco.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** How much a command says while it works; the same for all commands. */
final class Speaking {
    @Option(
            names = {"-q", "--quiet"},
            description = "Say nothing but what went wrong.")
    private boolean quiet;

    /** Says a line to the user, unless all should be quiet. */
    void say(PrintWriter to, String line) {
        if (!quiet) {
            to.println(line);
            to.flush();
        }
    }

    /** Shows how far a piece of work has come: a bar on a terminal, a plain line now and then otherwise. */
    WorkProgress progress(PrintWriter err, String task, String unit) {
        if (quiet) {
            return new WorkProgress.Silent();
        }
        return System.console() == null ? new WorkProgress.Lines(err, task, unit) : new WorkProgress.Bar(task, unit);
    }
}
