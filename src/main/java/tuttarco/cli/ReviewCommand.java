package tuttarco.cli;

import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.HandOut;
import tuttarco.files.UserFolders;
import tuttarco.review.Background;
import tuttarco.review.Correcting;
import tuttarco.review.HandingOut;
import tuttarco.review.Opening;
import tuttarco.review.Remembered;
import tuttarco.review.Session;
import tuttarco.review.TakeKeeping;
import tuttarco.review.TakeReading;
import tuttarco.window.ReviewWindow;
import tuttarco.window.Theme;

/** Opens the window. */
@Command(
        name = "review",
        description = {
            "Open the window: set up a take, read it, watch it with the readings on the picture, and correct them.",
            "Everything is saved as you go."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ReviewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "TAKE or VIDEO",
            arity = "0..1",
            description = "What to open; it can be chosen there, too.")
    private Optional<Path> opened;

    @Option(names = "--night", description = "Dark, for a dark room.")
    private boolean night;

    @Mixin
    private CacheOption kept;

    @Override
    public Integer call() throws Exception {
        if (GraphicsEnvironment.isHeadless()) {
            throw new ParameterException(
                    spec.commandLine(), "The window needs a screen, and there is none here; use analyse instead");
        }
        Optional<Opening.Found> first = opened.isPresent() ? Optional.of(Opening.find(opened.get())) : Optional.empty();
        CountDownLatch closed = new CountDownLatch(1);
        try (Background background = new Background(EventQueue::invokeLater)) {
            TakeKeeping keeping = new TakeKeeping();
            Session session = new Session(background, keeping);
            Analysis analysis = Analysis.standard(Version.number(), kept.cache());
            EventQueue.invokeAndWait(() -> {
                (night ? Theme.NIGHT : Theme.PAPER).apply();
                TakeReading reading = new TakeReading(session, TakeReading.by(analysis), System::nanoTime);
                Opening opening = new Opening(session, new Remembered(UserFolders.state()));
                ReviewWindow window = new ReviewWindow(
                        session,
                        opening,
                        reading,
                        new Correcting(session, analysis),
                        new HandingOut(session, new HandOut(analysis)),
                        closed::countDown);
                window.show();
                first.ifPresent(opening::take);
            });
            closed.await();
        }
        return ExitCode.DONE.number();
    }
}
