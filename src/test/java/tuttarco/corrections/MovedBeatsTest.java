package tuttarco.corrections;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;

class MovedBeatsTest {
    @TempDir
    Path folder;

    @Test
    void whatIsMovedSaysSoAndWhatFindsNoPlaceIsTold() throws Exception {
        Path take = folder.resolve("evening.take.json");
        BeatMap known = new BeatMap(List.of(new Beat("1", 1, 2.5), new Beat("1", 2, 3.5)));
        BeatSource moved = new MovedBeats(() -> known, take);
        assertEquals(known, moved.beats());
        CorrectionLog.append(take, Logged.done(1, new Correction.BeatMoved("1", 1, 2.5, 3)));
        Beat first = moved.beats().beats().get(0);
        assertEquals(3, first.timeS());
        assertEquals(Beat.BY_HAND, first.source());
        assertEquals(known.beats().get(1), moved.beats().beats().get(1));
        assertEquals(List.of(), moved.told().notes());
        CorrectionLog.append(take, Logged.done(2, new Correction.BeatMoved("9", 1, 2.5, 3)));
        assertEquals(1, moved.told().notes().size());
    }
}
