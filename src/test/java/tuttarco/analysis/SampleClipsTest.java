package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.compare.Standing;
import tuttarco.compare.Unity;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.strokes.Reading;

/** The sample takes, against the truth that was drawn: the readings that users see first. */
class SampleClipsTest {
    private static final Path SAMPLES = Path.of("sample-clips");

    private static final Map<String, AnalysedTake> TAKES = new HashMap<>();

    @BeforeAll
    static void readAll() throws Exception {
        PackedModel.orSkip();
        for (String name : List.of("unified", "free")) {
            TAKES.put(name, Analysis.standard("test").of(SAMPLES.resolve(name + ".take.json"), (t, l) -> {}));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"unified", "free"})
    void whatIsClaimedOfEachPlayerIsRightAndMostIsClaimed(String name) throws Exception {
        List<Score> scores = new ArrayList<>();
        for (Reading reading : TAKES.get(name).readings()) {
            String player = reading.player().label();
            Score score = Score.of(reading.strokes(), TruthSpan.read(SAMPLES.resolve(name + ".truth.csv"), player));
            assertTrue(score.agreement() >= 0.97, name + ", " + player + ": " + score);
            scores.add(score);
        }
        assertTrue(Score.mean(scores).coverage() >= 0.95, name + ": " + Score.mean(scores));
    }

    /** Planted: one player turned in bars 3 and 4, another 150 ms late. */
    @Test
    void theUnifiedTakeSaysWhatWasPlantedAndNothingElse() {
        assertEquals(
                new Told(
                        List.of("turned against the marking: Desk 2 inside 3/1 to 4/4"),
                        List.of("Desk 4 outside late"),
                        List.of(),
                        Unity.Kind.UNIFIED,
                        List.of()),
                Told.of(TAKES.get("unified")));
    }

    /** Planted: all eight bow the same passage as they like. Whoever does so goes against the marking for a while, too. */
    @Test
    void theFreeTakeIsFreeAndNobodyIsLateInIt() {
        AnalysedTake free = TAKES.get("free");
        Told told = Told.of(free);
        assertEquals(Unity.Kind.FREE, told.unity());
        assertEquals(List.of(), told.timing());
        assertEquals(List.of(), told.notes());
        Spot first = RehearsalList.of(free.comparison()).get(0);
        assertEquals(Standing.FREE, first.standing());
        assertEquals(free.comparison().players(), first.players());
    }
}
