package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.compare.Unity;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.strokes.Reading;

/** The sample takes, against the truth that was drawn: the readings that users see first. */
class SampleClipsTest {
    private static final Path SAMPLES = Path.of("sample-clips");

    @ParameterizedTest
    @ValueSource(strings = {"unified", "free"})
    void whatIsClaimedOfEachPlayerIsRightAndMostIsClaimed(String name) throws Exception {
        PackedModel.orSkip();
        AnalysedTake take = Analysis.standard("test").of(SAMPLES.resolve(name + ".take.json"), (timeS, lengthS) -> {});
        List<Score> scores = new ArrayList<>();
        for (Reading reading : take.readings()) {
            String player = reading.player().label();
            Score score = Score.of(reading.strokes(), TruthSpan.read(SAMPLES.resolve(name + ".truth.csv"), player));
            assertTrue(score.agreement() >= 0.97, name + ", " + player + ": " + score);
            scores.add(score);
        }
        assertTrue(Score.mean(scores).coverage() >= 0.95, name + ": " + Score.mean(scores));
        assertEquals(name, ((Unity.Told) take.unity()).kind().word());
    }
}
