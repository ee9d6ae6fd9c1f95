package tuttarco.faces;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import tuttarco.video.Shot;

/** The faces in one shot. */
final class FacesInShot {
    private final Shot shot;
    private final List<FaceTrack> tracks = new ArrayList<>();

    FacesInShot(Shot shot) {
        this.shot = shot;
    }

    Shot shot() {
        return shot;
    }

    void add(FaceTrack track) {
        tracks.add(track);
    }

    List<Shape> at(double timeS) {
        return tracks.stream().flatMap(track -> track.at(timeS).stream()).toList();
    }
}
