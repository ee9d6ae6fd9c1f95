package tuttarco.faces;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.files.InputException;
import tuttarco.pose.FaceSpotter;
import tuttarco.pose.PoseModel;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;
import tuttarco.video.Clip;
import tuttarco.video.ClipFacts;
import tuttarco.video.Frame;
import tuttarco.video.Shot;
import tuttarco.video.Shots;

/**
 * Where the faces in a clip are: those of the players, and of whoever else is found in the picture.
 *
 * <p>The pose model looks at each person now and then. At each cut everybody is looked for anew, and again in growing
 * intervals. Without the model nobody can be found, and the whole picture counts as faces.
 */
public final class FacesInClip {
    private final List<FacesInShot> shots;
    private final Optional<Shape> everywhere;

    private FacesInClip(List<FacesInShot> shots, Optional<Shape> everywhere) {
        this.shots = List.copyOf(shots);
        this.everywhere = everywhere;
    }

    /** Told how far the looking has come. */
    @FunctionalInterface
    public interface Progress {
        /** @param clipTimeS seconds of the clip looked through so far */
        void reached(double clipTimeS);
    }

    /**
     * Looks through a clip.
     *
     * @param when at which pictures it looks
     * @throws InputException if the clip can't be read
     * @throws InterruptedException if the thread was interrupted
     */
    public static FacesInClip of(Path video, List<Player> players, Looks when, Progress progress)
            throws InputException, InterruptedException {
        try (Clip clip = Clip.open(video)) {
            Optional<PoseModel> model = PoseModel.installed();
            if (model.isEmpty()) {
                return everywhere(clip.facts());
            }
            try (PoseNets nets = new PoseNets(model.get());
                    FaceSpotter spotter = new FaceSpotter();
                    Shots frames = new Shots(clip)) {
                return new FacesInClip(
                        shots(frames, clip.facts(), new Looking(nets, spotter, players, clip.facts(), when), progress),
                        Optional.empty());
            }
        }
    }

    private static FacesInClip everywhere(ClipFacts clip) {
        return new FacesInClip(List.of(), Optional.of(new Rectangle2D.Double(0, 0, clip.widthPx(), clip.heightPx())));
    }

    private static List<FacesInShot> shots(Shots frames, ClipFacts clip, Looking looking, Progress progress)
            throws InterruptedException {
        List<FacesInShot> shots = new ArrayList<>();
        Optional<Shot> shot = Optional.empty();
        for (Optional<Frame> next = frames.next(); next.isPresent(); next = frames.next()) {
            if (Thread.interrupted()) {
                throw new InterruptedException("looking for faces was stopped");
            }
            Frame frame = next.get();
            if (!shot.equals(Optional.of(frame.shot()))) {
                shot = Optional.of(frame.shot());
                shots.add(looking.begin(frame));
            }
            looking.at(frame);
            progress.reached(frame.timeS());
        }
        return shots;
    }

    /** What to blur at a time, in pixels of the upright picture. */
    public List<Shape> at(double timeS) {
        List<Shape> shapes = new ArrayList<>();
        everywhere.ifPresent(shapes::add);
        int at = lastBegun(timeS);
        for (int i = at - 1; i <= at + 1; i++) {
            // while one shot dissolves into the next, the faces of both are seen
            if (i >= 0 && i < shots.size() && (i == at || dissolves(at))) {
                shapes.addAll(shots.get(i).at(timeS));
            }
        }
        return List.copyOf(shapes);
    }

    private boolean dissolves(int shot) {
        return shot >= 0 && shots.get(shot).shot().view() == Shot.View.DISSOLVE;
    }

    private int lastBegun(double timeS) {
        int last = shots.isEmpty() ? -1 : 0;
        while (last + 1 < shots.size() && shots.get(last + 1).shot().startS() <= timeS) {
            last++;
        }
        return last;
    }
}
