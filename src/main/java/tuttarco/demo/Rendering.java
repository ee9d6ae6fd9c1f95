package tuttarco.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import tuttarco.beats.BeatList;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowTextWriter;
import tuttarco.files.OutputException;
import tuttarco.musicxml.MusicXmlPartWriter;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;
import tuttarco.video.ClipWriter;

/** Renders a scene: the clip, its take, part and beats, and the truth of every stroke. */
final class Rendering {
    private Rendering() {}

    /**
     * Writes NAME.mp4, NAME.take.json, the part as NAME.musicxml and NAME.bowing.txt, NAME.beats.csv, NAME.truth.csv and
     * NAME.truth.bows.csv into an existing folder.
     *
     * @param percentDone is told how far it is, 0 to 100
     * @return the take file
     * @throws IOException if something can't be written
     * @throws InterruptedException if the thread was interrupted
     */
    static Path write(Scene scene, Path dir, IntConsumer percentDone)
            throws IOException, OutputException, InterruptedException {
        Layout layout = Layout.of(scene);
        Path video = dir.resolve(scene.name() + ".mp4");
        clip(scene, layout, video, percentDone);
        Path beats = dir.resolve(scene.name() + ".beats.csv");
        return take(scene, layout, video, new BeatsGiven.Listed(beats), dir);
    }

    /**
     * Writes the same without drawing anything: the sound alone as NAME.wav, and a take that leaves the beats to be heard
     * in it.
     *
     * @return the take file
     * @throws IllegalArgumentException if the scene is silent
     * @throws IOException if something can't be written
     */
    static Path writeSound(Scene scene, Path dir) throws IOException, OutputException {
        Layout layout = Layout.of(scene);
        Soundtrack soundtrack = Soundtrack.of(scene, layout)
                .orElseThrow(() -> new IllegalArgumentException(scene.name() + " is silent"));
        Path sound = dir.resolve(scene.name() + ".wav");
        float[] heard = new Microphone(soundtrack, scene.acoustics(), scene.seed()).until(scene.durationS());
        WaveFile.write(heard, Soundtrack.FORMAT, sound);
        return take(scene, layout, sound, new BeatsGiven.Missing(), dir);
    }

    private static Path take(Scene scene, Layout layout, Path recording, BeatsGiven given, Path dir)
            throws IOException, OutputException {
        Path part = dir.resolve(scene.name() + ".musicxml");
        Path take = dir.resolve(scene.name() + ".take.json");
        lines(Truth.lines(scene, layout), dir.resolve(scene.name() + ".truth.csv"));
        lines(BowTruth.lines(layout), dir.resolve(scene.name() + ".truth.bows.csv"));
        Files.writeString(
                dir.resolve(scene.name() + ".beats.csv"),
                BeatList.csv(scene.tempo().beats()));
        Instrument instrument = scene.cast().get(0).instrument();
        Files.writeString(
                part, new MusicXmlPartWriter(instrument, Tune.of(instrument).written()).text(scene.part()));
        Files.writeString(dir.resolve(scene.name() + ".bowing.txt"), BowTextWriter.text(scene.part()));
        TakeFile.write(
                new Take(take, scene.title(), recording, layout.players(), Optional.of(part), given, scene.bowing()),
                take);
        return take;
    }

    private static void lines(List<String> lines, Path file) throws IOException {
        Files.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static void clip(Scene scene, Layout layout, Path file, IntConsumer percentDone)
            throws OutputException, InterruptedException {
        Picture picture = scene.picture();
        FramePainter painter = new FramePainter(scene, layout);
        Optional<Microphone> microphone =
                Soundtrack.of(scene, layout).map(s -> new Microphone(s, scene.acoustics(), scene.seed()));
        List<Double> timesS = scene.frameTimesS();
        try (ClipWriter writer = ClipWriter.open(
                file,
                picture.widthPx(),
                picture.heightPx(),
                picture.framesPerS(),
                picture.kbitPerS() * 1000,
                microphone.map(m -> Soundtrack.FORMAT))) {
            for (int i = 0; i < timesS.size(); i++) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("rendering was stopped");
                }
                writer.frame(timesS.get(i), painter.frame(timesS.get(i)));
                if (microphone.isPresent()) {
                    double endS = i + 1 < timesS.size() ? timesS.get(i + 1) : scene.durationS();
                    writer.sound(microphone.get().until(endS));
                }
                percentDone.accept(100 * (i + 1) / timesS.size());
            }
            writer.finish();
        }
    }
}
