package tuttarco.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tuttarco.beats.BeatMap;
import tuttarco.compare.CompareSettings;
import tuttarco.compare.Comparing;
import tuttarco.compare.Evenness;
import tuttarco.compare.EvennessComparing;
import tuttarco.compare.Listening;
import tuttarco.compare.Unity;
import tuttarco.compare.UnityByShifts;
import tuttarco.seats.Player;
import tuttarco.stats.PairedDifference;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** The sample takes by the strokes that were drawn: the same passage bowed as one and freely, with its sound. */
class SampleClipsHeardTest {
    private static final Path SAMPLES = Path.of("sample-clips");

    private record Sample(List<Reading> readings, BeatMap beats, Evenness evenness) {
        static Sample of(String name) throws Exception {
            Take take = TakeFile.read(SAMPLES.resolve(name + ".take.json"));
            BeatMap beats = TakeParts.toldUnlessLed(take, TakeParts.part(take))
                    .orElseThrow()
                    .beats();
            List<Reading> readings = new ArrayList<>();
            for (Player player : take.players()) {
                List<Stroke> strokes = TruthSpan.read(SAMPLES.resolve(name + ".truth.csv"), player.label()).stream()
                        .map(s -> new Stroke(s.startS(), s.endS(), s.kind(), 1))
                        .toList();
                readings.add(new Reading(player, strokes));
            }
            Evenness evenness = Listening.to(HeardLevel.of(take.video()).curve().orElseThrow(), readings, beats);
            return new Sample(readings, beats, evenness);
        }

        Unity.Told unity() {
            return (Unity.Told)
                    UnityByShifts.of(Comparing.compare(readings, beats, List.of(), CompareSettings.DEFAULT));
        }
    }

    @Test
    void oneIsUnifiedAndOneFree() throws Exception {
        assertEquals(Unity.Kind.UNIFIED, Sample.of("unified").unity().kind());
        assertEquals(Unity.Kind.FREE, Sample.of("free").unity().kind());
    }

    @Test
    void freeBowingHidesItsChanges() throws Exception {
        Sample unified = Sample.of("unified");
        Sample free = Sample.of("free");
        assertEquals(8, unified.evenness().bars().size());
        PairedDifference dips = EvennessComparing.dips(
                        unified.evenness().bars(), free.evenness().bars())
                .orElseThrow();
        assertEquals(8, dips.pairs());
        assertTrue(dips.mean() < 0, dips.toString());
        double unifiedLu = unified.evenness().dipLu().orElseThrow();
        assertTrue(unifiedLu > free.evenness().dipLu().orElseThrow() + 1);
        assertTrue(unifiedLu > unified.evenness().amidStrokesLu().orElseThrow() + 1);
    }
}
