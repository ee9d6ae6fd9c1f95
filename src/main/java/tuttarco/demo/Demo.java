package tuttarco.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import tuttarco.bow.Instrument;
import tuttarco.files.OutputException;
import tuttarco.score.Part;
import tuttarco.seats.Facing;
import tuttarco.take.Bowing;

/** The two takes that come with the program: one section bowing together, one bowing freely. */
public final class Demo {
    private static final double TEMPO_BPM = 112;
    private static final Picture PICTURE = Picture.of(960, 540).bitrate(1000);

    private Demo() {}

    /**
     * Renders {@code unified} and {@code free}, each with its clip, take, part, beats and truth, into an existing folder.
     *
     * @param percentDone is told how far it is, 0 to 100
     * @return file names of the two takes
     * @throws IOException if something can't be written
     * @throws InterruptedException if the thread was interrupted
     */
    public static List<String> write(Path dir, IntConsumer percentDone)
            throws IOException, OutputException, InterruptedException {
        String unified = writeUnified(dir, percent -> percentDone.accept(percent / 2));
        Path free = Rendering.write(free(), dir, percent -> percentDone.accept(50 + percent / 2));
        return List.of(unified, free.getFileName().toString());
    }

    /**
     * Renders {@code unified} alone; see {@link #write}.
     *
     * @return file name of the take
     */
    public static String writeUnified(Path dir, IntConsumer percentDone)
            throws IOException, OutputException, InterruptedException {
        return Rendering.write(unified(), dir, percentDone).getFileName().toString();
    }

    static Scene unified() {
        List<Cast> cast = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            cast.add(new Cast(Instrument.VIOLIN, Facing.CAMERA));
        }
        cast.set(3, new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Turned(3, 4)));
        cast.set(6, new Cast(Instrument.VIOLIN, Facing.CAMERA, new Deviation.Lags(150)));
        return scene("unified", "Lantern Street Strings, first violins: Violet Hour", cast, Bowing.UNIFIED, 11);
    }

    static Scene free() {
        List<Cast> cast = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            cast.add(new Cast(Instrument.CELLO, Facing.CAMERA, new Deviation.Free()));
        }
        return scene("free", "Lantern Street Strings, cellos: Violet Hour", cast, Bowing.FREE, 12);
    }

    private static Scene scene(String name, String title, List<Cast> cast, Bowing bowing, long seed) {
        Part part = Passage.of("Violet Hour", Passage.MIXED);
        return new Scene(name, title, cast, part, TEMPO_BPM, bowing, PICTURE, Conditions.EASY, Scene.Sound.TONES, seed);
    }
}
