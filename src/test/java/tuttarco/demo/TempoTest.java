package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.beats.Beat;
import tuttarco.beats.Run;
import tuttarco.bow.Instrument;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;
import tuttarco.seats.Facing;
import tuttarco.strokes.StrokeKind;

/** Three bars of four beats, half a second each, from 1 s on: bars 1 and 2, three seconds of nothing, bars 2 and 3. */
class TempoTest {
    private static final Part PART = Passage.of("study", "d2 u2 | d1 u1 d1 u1 | d2 u2");
    private static final Tempo TEMPO = new Tempo(PART, 120, 1, List.of(new Stop(2, 3, 2)));

    private static Beat exact(String bar, int beat, double timeS) {
        return new Beat(bar, beat, timeS, OptionalDouble.of(0), Beat.TEMPO);
    }

    @Test
    void afterAStopTheBeatsGoOnFromTheEarlierBar() {
        List<Beat> beats = TEMPO.beats().beats();
        assertEquals(16, beats.size());
        assertEquals(List.of(new Run(0, 7), new Run(8, 15)), TEMPO.beats().runs());
        assertEquals(exact("1", 1, 1), beats.get(0));
        assertEquals(exact("2", 4, 4.5), beats.get(7));
        assertEquals(exact("2", 1, 8), beats.get(8));
        assertEquals(exact("3", 4, 11.5), beats.get(15));
        assertEquals(12, TEMPO.endS());
        assertEquals(List.of(new Spell(5, 8, 0)), TEMPO.pauses());
    }

    @Test
    void aPlaceLiesWhereItIsPlayedFirst() {
        assertEquals(3, TEMPO.timeS(new Position(1, 1)));
        assertEquals(10, TEMPO.timeS(new Position(2, 1)));
    }

    @Test
    void strokesPlayedAgainAreTheSame() {
        List<Tempo.Played> strokes = TEMPO.strokes();
        assertEquals(
                List.of(0, 1, 2, 3, 4, 5, 2, 3, 4, 5, 6, 7),
                strokes.stream().map(Tempo.Played::number).toList());
        assertEquals(8, strokes.get(6).startS());
        assertEquals(8.5, strokes.get(6).endS());
    }

    /** The part's last stroke before the stop goes up and the first after it down, so nothing is retaken either. */
    @Test
    void theBowRestsMeanwhile() {
        Scene scene = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)))
                .stopping(new Stop(2, 3, 2));
        double fromS = scene.tempo().pauses().get(0).startS() + 0.1;
        double toS = scene.tempo().pauses().get(0).endS() - 0.1;
        List<Travel> during = Layout.of(scene).performers().get(0).motion().travels().stream()
                .filter(t -> t.endS() > fromS && t.startS() < toS)
                .toList();
        assertTrue(!during.isEmpty() && during.stream().allMatch(t -> t.kind() == StrokeKind.STILL));
        assertEquals(scene.durationS(), SceneFixture.of(scene.cast()).durationS() + 3 + 4 * 60 / scene.tempoBpm(), 0.1);
    }

    @ParameterizedTest
    @CsvSource({"0,1,1", "2,0,1", "2,NaN,1", "2,1,0"})
    void refusesStopsThatCannotBe(int afterBar, double pauseS, int fromBar) {
        assertThrows(IllegalArgumentException.class, () -> new Stop(afterBar, pauseS, fromBar));
    }

    @ParameterizedTest
    @CsvSource({"4,1", "3,4"})
    void refusesStopsThatThePartDoesNotHave(int afterBar, int fromBar) {
        Tempo tempo = new Tempo(PART, 120, 1, List.of(new Stop(afterBar, 1, fromBar)));
        assertThrows(IllegalArgumentException.class, tempo::beats);
    }
}
