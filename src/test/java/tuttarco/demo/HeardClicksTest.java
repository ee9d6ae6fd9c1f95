package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.align.ClickBeats;
import tuttarco.beats.Beat;
import tuttarco.bow.Instrument;
import tuttarco.parts.Parts;
import tuttarco.score.Part;
import tuttarco.seats.Facing;

/** The clicks of a rendered clip are heard where they were put. */
class HeardClicksTest {
    /** A frame of the clip's coded sound, seconds: 1024 samples, half of it for what the coder may smear (chosen). */
    private static final double SMEAR_S = 512.0 / 44_100;

    @TempDir
    Path folder;

    @Test
    void clicksOfARenderedClipAreItsBeats() throws Exception {
        Scene scene = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)));
        Rendering.write(scene, folder, percent -> {});
        Part part = Parts.read(folder.resolve("small.musicxml"), Instrument.VIOLIN);
        List<Beat> truth = scene.tempo().beats().beats();
        List<Beat> heard = new ClickBeats(
                        part,
                        folder.resolve("small.mp4"),
                        Optional.of(truth.get(0).bar()),
                        List.of())
                .beats()
                .beats();
        assertEquals(12, truth.size());
        assertEquals(truth.size(), heard.size());
        for (int i = 0; i < truth.size(); i++) {
            assertEquals(truth.get(i).bar(), heard.get(i).bar());
            assertEquals(truth.get(i).beat(), heard.get(i).beat());
            assertEquals(truth.get(i).timeS(), heard.get(i).timeS(), SMEAR_S);
        }
    }
}
