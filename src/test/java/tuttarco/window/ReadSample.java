package tuttarco.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import tuttarco.analysis.Analysis;
import tuttarco.analysis.Uncorrected;
import tuttarco.corrections.CorrectionLog;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.review.Draft;
import tuttarco.review.Session;
import tuttarco.take.TakeFile;

/** The sample take of a section that bows alike, read once; one player is turned in bars 3 and 4 of it. */
record ReadSample(Path take, Uncorrected read) {
    static final Path SAMPLES = Path.of("sample-clips");
    private static final long LONGEST_MS = 300_000;

    /** Copies it and reads it. */
    static ReadSample in(Path folder) throws Exception {
        PackedModel.orSkip();
        for (String ending : List.of(".take.json", ".mp4", ".musicxml", ".beats.csv")) {
            Files.copy(SAMPLES.resolve("unified" + ending), folder.resolve("unified" + ending));
        }
        Path take = folder.resolve("unified.take.json");
        return new ReadSample(take, Analysis.standard("test").read(TakeFile.read(take), (t, l) -> {}));
    }

    /** Opens it in a window, as nobody has corrected it. */
    void open(Session session) throws Exception {
        Files.deleteIfExists(CorrectionLog.beside(take));
        AnalysedTake judged = Analysis.standard("test").judged(read, CorrectionLog.EMPTY);
        Draft draft = Draft.of(TakeFile.read(take));
        GuiActionRunner.execute(() -> {
            session.open(draft);
            session.read(read, judged);
        });
    }

    /** Waits, with the event thread going on, until something has come true there. */
    static void until(String what, Callable<Boolean> condition) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(condition);
                    }
                },
                LONGEST_MS);
    }

    /** Names of the files in a folder and below. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
