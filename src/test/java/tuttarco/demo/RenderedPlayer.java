package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Player;
import tuttarco.strokes.StrokeKind;
import tuttarco.video.Frame;

/** The grey frames of a rendered player who plays alone, and what the bow did. Closed by whoever asked for it. */
public final class RenderedPlayer implements AutoCloseable {
    private final Performer performer;
    private final Player player;
    private final List<Frame> frames = new ArrayList<>();
    private final double endS;

    private RenderedPlayer(Scene scene) {
        Layout layout = Layout.of(scene);
        performer = layout.performers().get(0);
        player = layout.players().get(0);
        endS = scene.durationS();
        FramePainter painter = new FramePainter(scene, layout);
        for (double timeS : scene.frameTimesS()) {
            frames.add(new Frame(frames.size(), timeS, GreyPicture.of(painter.frame(timeS))));
        }
    }

    /** A player who faces the camera, for about six seconds. */
    public static RenderedPlayer brief(Instrument instrument) {
        return new RenderedPlayer(
                SceneFixture.of(List.of(new Cast(instrument, Facing.CAMERA))).with(Picture.of(480, 400)));
    }

    /** The same in all of the catalogue's plain scene. */
    public static RenderedPlayer plain(Instrument instrument) {
        return new RenderedPlayer(
                SceneFixture.listed("plain-" + instrument.word()).scene());
    }

    /** The player in the seat as drawn; no facing is declared. */
    public Player player() {
        return new Player(
                player.label(),
                player.desk(),
                player.place(),
                player.instrument(),
                player.seat(),
                Optional.empty(),
                player.leader());
    }

    /** Not to be closed one by one. */
    public List<Frame> frames() {
        return frames;
    }

    public double endS() {
        return endS;
    }

    /** Speed towards the tip, usable bows a second; nought where the player does not bow. */
    public double downSpeed(double timeS) {
        Travel travel = performer.motion().at(timeS);
        boolean bows = travel.kind() == StrokeKind.DOWN || travel.kind() == StrokeKind.UP;
        return bows ? travel.speed(timeS) : 0;
    }

    /** The frames as a mirror shows them; the caller closes their pictures. */
    public List<Frame> mirrored() {
        return frames.stream()
                .map(frame -> {
                    Mat flipped = new Mat();
                    opencv_core.flip(frame.grey(), flipped, 1);
                    return new Frame(frame.index(), frame.timeS(), flipped);
                })
                .toList();
    }

    @Override
    public void close() {
        frames.forEach(frame -> frame.grey().close());
    }
}
