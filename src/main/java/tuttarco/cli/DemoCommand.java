package tuttarco.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tuttarco.demo.Demo;
import tuttarco.files.WholeFolder;

/** Draws a section whose every stroke is known, to try the program on. */
@Command(
        name = "demo",
        description = "Render two takes of a made-up section, one bowed as marked and one freely, into DIR.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class DemoCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Speaking speaking;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path out;

    @Override
    public Integer call() throws Exception {
        List<String> takes = new ArrayList<>();
        try (WorkProgress progress = speaking.progress(spec.commandLine().getErr(), "Drawing the section", "%")) {
            WholeFolder.write(
                    out, folder -> takes.addAll(Demo.write(folder, percent -> progress.reached(percent, 100))));
        }
        for (String take : takes) {
            speaking.say(spec.commandLine().getOut(), "A take to try: " + out.resolve(take));
        }
        return ExitCode.DONE.number();
    }
}
