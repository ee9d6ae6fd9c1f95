package tuttarco.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tuttarco.beats.BeatList;
import tuttarco.files.OutputException;
import tuttarco.score.BowTextWriter;
import tuttarco.score.MusicXmlPartWriter;
import tuttarco.seats.Player;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;
import tuttarco.video.ClipWriter;

/** Renders a scene: the clip, its take file, the part twice, the beats and the truth of every stroke. */
final class Rendering {
    private final Scene scene;
    private final Stage stage;

    Rendering(Scene scene) {
        this.scene = scene;
        stage = new Stage(scene);
    }

    /** Told how far the rendering has come. */
    @FunctionalInterface
    interface Progress {
        void reached(double clipTimeS) throws InterruptedException;
    }

    List<Player> players() {
        return stage.players();
    }

    /** The truth of one player: spans that cover the clip. Down and up are strokes, all else is still. */
    List<Stroke> truth(int player) {
        List<Stroke> truth = new ArrayList<>();
        for (Travel travel : stage.motion(player).travels()) {
            int last = truth.size() - 1;
            boolean goesOn = last >= 0
                    && travel.kind() == StrokeKind.STILL
                    && truth.get(last).kind() == StrokeKind.STILL;
            if (goesOn) {
                Stroke before = truth.remove(last);
                truth.add(new Stroke(before.startS(), travel.endS(), StrokeKind.STILL, 1));
            } else {
                truth.add(new Stroke(travel.startS(), travel.endS(), travel.kind(), 1));
            }
        }
        return truth;
    }

    /** Writes everything into a folder that exists; returns the take file. */
    Path write(Path folder, Progress progress) throws IOException, OutputException, InterruptedException {
        Path video = folder.resolve(scene.name() + ".mp4");
        film(video, progress);
        Path part = folder.resolve(scene.name() + ".musicxml");
        Files.writeString(part, new MusicXmlPartWriter(scene.sitters().get(0).instrument()).text(scene.part()));
        Files.writeString(folder.resolve(scene.name() + ".bowing.txt"), BowTextWriter.text(scene.part()));
        Path beats = folder.resolve(scene.name() + ".beats.csv");
        Files.writeString(beats, BeatList.csv(scene.tempo().beats()));
        Files.write(folder.resolve(scene.name() + ".truth.csv"), truthCsv().getBytes(StandardCharsets.UTF_8));
        Path take = folder.resolve(scene.name() + ".take.json");
        TakeFile.write(
                new Take(
                        take,
                        scene.title(),
                        video,
                        players(),
                        Optional.of(part),
                        new BeatsGiven.Listed(beats),
                        scene.bowing()),
                take);
        return take;
    }

    private void film(Path video, Progress progress) throws OutputException, InterruptedException {
        FrameMaker frames = new FrameMaker(scene, stage);
        double bitsPerS = scene.conditions().bitsPerPixel() * scene.widthPx() * scene.heightPx() * scene.framesPerS();
        Optional<Soundtrack> sound = Soundtrack.of(scene, stage);
        try (ClipWriter writer = ClipWriter.open(
                video,
                scene.widthPx(),
                scene.heightPx(),
                scene.framesPerS(),
                (int) bitsPerS,
                sound.map(Soundtrack::format))) {
            for (double timeS : scene.frameTimesS()) {
                progress.reached(timeS);
                writer.frame(timeS, frames.at(timeS));
                if (sound.isPresent()) {
                    writer.sound(sound.get().until(timeS));
                }
            }
        }
    }

    private String truthCsv() {
        StringBuilder csv = new StringBuilder("player,start_s,end_s,direction,confidence\n");
        List<Player> players = players();
        for (int i = 0; i < players.size(); i++) {
            for (Stroke stroke : truth(i)) {
                csv.append(String.format(
                        Locale.ROOT,
                        "%s,%.4f,%.4f,%s,1\n",
                        players.get(i).label(),
                        stroke.startS(),
                        stroke.endS(),
                        stroke.kind().word()));
            }
        }
        return csv.toString();
    }
}
