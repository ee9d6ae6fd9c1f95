package tuttarco.cli;

import picocli.CommandLine.Option;
import tuttarco.seats.Names;

/** How players are called in what is written; the same for all commands that write what is handed out. */
final class NamesOption {
    @Option(
            names = "--show-names",
            description = "Call players by their labels in what is written; if not given, by their desk and place.")
    private boolean shown;

    Names names() {
        return shown ? Names.SHOWN : Names.BY_DESK;
    }
}
