package tuttarco.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.bow.Instrument;
import tuttarco.parts.Parts;
import tuttarco.score.Part;
import tuttarco.seats.Facing;
import tuttarco.seats.SeatBox;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

class RenderingTest {
    private static final Scene SCENE = SceneFixture.of(List.of(new Cast(Instrument.VIOLIN, Facing.CAMERA)));

    @TempDir
    Path dir;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theClipHoldsEveryFrameAtItsTime(boolean varying) throws Exception {
        Scene scene = varying ? SCENE.with(SCENE.picture().varyingRate()) : SCENE;
        Rendering.write(scene, dir, percent -> {});
        List<Double> timesS = new ArrayList<>();
        try (FFmpegFrameGrabber grabber =
                new FFmpegFrameGrabber(dir.resolve("small.mp4").toFile())) {
            grabber.start();
            for (Frame f = grabber.grabImage(); f != null; f = grabber.grabImage()) {
                timesS.add(f.timestamp / 1e6);
            }
        }
        assertEquals(scene.frameTimesS().size(), timesS.size());
        for (int i = 0; i < timesS.size(); i++) {
            assertEquals(scene.frameTimesS().get(i), timesS.get(i), 0.001);
        }
        Take take = TakeFile.read(dir.resolve("small.take.json"));
        assertEquals(1, take.players().size());
        assertEquals(scene.part(), strokes(Parts.read(take.part().orElseThrow(), Instrument.VIOLIN)));
        assertEquals(scene.part(), strokes(Parts.read(dir.resolve("small.bowing.txt"), Instrument.VIOLIN)));
        assertEquals(
                "bar,beat,time_s,stderr_s,source",
                Files.readAllLines(dir.resolve("small.beats.csv")).get(0));
    }

    /** A part without its notes: a scene knows only strokes, and the tune is the same for all. */
    private static Part strokes(Part part) {
        return new Part(part.name(), part.bars(), part.spans());
    }

    /** In the part a bass stands an octave higher than it sounds, which its reader knows. */
    @ParameterizedTest
    @EnumSource(Instrument.class)
    void thePartHasTheNotesThatSound(Instrument instrument) throws Exception {
        Scene scene =
                SceneFixture.of(List.of(new Cast(instrument, Facing.CAMERA))).sounding(Acoustics.OPEN_AIR);
        Take take = TakeFile.read(Rendering.writeSound(scene, dir));
        List<Double> written = Parts.read(take.part().orElseThrow(), instrument).notes().stream()
                .map(note -> 440 * Math.pow(2, (note.pitches().get(0) - 69) / 12.0))
                .toList();
        List<Double> sounding = Fingering.tones(scene, Layout.of(scene)).lines().get(0).strokes().stream()
                .map(ToneStroke::pitchHz)
                .toList();
        assertEquals(8, written.size());
        assertEquals(sounding, written);
    }

    @Test
    void theSoundAloneLastsAsLongAsTheClipAndIsAlwaysTheSame() throws Exception {
        Scene scene = SCENE.sounding(Acoustics.HALL);
        Take take = TakeFile.read(Rendering.writeSound(scene, dir));
        assertEquals(dir.resolve("small.wav"), take.video());
        assertEquals(new BeatsGiven.Missing(), take.beats());
        byte[] first = Files.readAllBytes(take.video());
        // a head of 44 bytes, then two for each sample
        assertEquals(44 + 2 * Math.round(44_100 * scene.durationS()), first.length);
        Rendering.writeSound(scene, dir);
        assertArrayEquals(first, Files.readAllBytes(take.video()));
        assertThrows(
                IllegalArgumentException.class,
                () -> Rendering.writeSound(SceneFixture.listed("plain-violin").scene(), dir));
    }

    @Test
    void theSameSceneGivesTheSameFrames() {
        assertArrayEquals(pixels(), pixels());
    }

    @Test
    void everySceneSeatsItsPlayersInsideThePicture() {
        List<SceneCatalogue.Listed> all = SceneCatalogue.all();
        assertTrue(all.size() >= 56);
        for (SceneCatalogue.Listed listed : all) {
            Picture picture = listed.scene().picture();
            Layout layout = Layout.of(listed.scene());
            assertEquals(listed.scene().cast().size(), layout.seats().size());
            layout.seats().forEach(seat -> assertTrue(seat.fitsInto(picture.widthPx(), picture.heightPx())));
        }
    }

    /** A seat has a margin of four hundredths of the figure's height above and below it, up to the next whole pixel. */
    @ParameterizedTest
    @ValueSource(ints = {200, 100, 70, 50})
    void smallFiguresAreAsHighAsTheySay(int heightPx) {
        Scene scene = SceneFixture.listed("small-" + heightPx).scene();
        SeatBox seat = Layout.of(scene).seats().get(0);
        assertEquals(heightPx, (seat.heightPx() - 1) / 1.08, 1.5);
    }

    /** A desk is half a metre wide and a lone player's knees less than a metre. */
    @ParameterizedTest
    @EnumSource(Facing.class)
    void noLoneStandHidesALargeInstrument(Facing facing) {
        Layout layout = Layout.of(SceneFixture.of(List.of(new Cast(Instrument.CELLO, facing))));
        assertEquals(1, layout.stands().size());
        assertTrue(Math.abs(layout.stands().get(0).x()) > 0.5, layout.stands().toString());
    }

    private static byte[] pixels() {
        BufferedImage image = new FramePainter(SCENE, Layout.of(SCENE)).frame(1.4);
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }
}
