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
        Path part = dir.resolve(scene.name() + ".musicxml");
        Path beats = dir.resolve(scene.name() + ".beats.csv");
        Path take = dir.resolve(scene.name() + ".take.json");
        clip(scene, layout, video, percentDone);
        lines(Truth.lines(scene, layout), dir.resolve(scene.name() + ".truth.csv"));
        lines(BowTruth.lines(layout), dir.resolve(scene.name() + ".truth.bows.csv"));
        Files.writeString(beats, BeatList.csv(scene.tempo().beats()));
        Instrument instrument = scene.cast().get(0).instrument();
        Files.writeString(part, new MusicXmlPartWriter(instrument).text(scene.part()));
        Files.writeString(dir.resolve(scene.name() + ".bowing.txt"), BowTextWriter.text(scene.part()));
        TakeFile.write(
                new Take(
                        take,
                        scene.title(),
                        video,
                        layout.players(),
                        Optional.of(part),
                        new BeatsGiven.Listed(beats),
                        scene.bowing()),
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
        Optional<Soundtrack> soundtrack = Soundtrack.of(scene, layout);
        List<Double> timesS = scene.frameTimesS();
        try (ClipWriter writer = ClipWriter.open(
                file,
                picture.widthPx(),
                picture.heightPx(),
                picture.framesPerS(),
                picture.kbitPerS() * 1000,
                soundtrack.map(s -> Soundtrack.FORMAT))) {
            for (int i = 0; i < timesS.size(); i++) {
                if (Thread.interrupted()) {
                    throw new InterruptedException("rendering was stopped");
                }
                writer.frame(timesS.get(i), painter.frame(timesS.get(i)));
                if (soundtrack.isPresent()) {
                    double endS = i + 1 < timesS.size() ? timesS.get(i + 1) : scene.durationS();
                    writer.sound(soundtrack.get().between(timesS.get(i), endS));
                }
                percentDone.accept(100 * (i + 1) / timesS.size());
            }
            writer.finish();
        }
    }
}
