package tuttarco.film;

import java.util.List;
import java.util.Optional;
import tuttarco.faces.FacesInClip;
import tuttarco.faces.Looks;
import tuttarco.files.InputException;
import tuttarco.seats.Player;
import tuttarco.video.ClipFacts;

/** The faces to blur in the pictures of a clip: looked for when the first of these is made, and once for all of them. */
public final class FacesToBlur {
    /** Takes the clip's faces from where they are. */
    private interface Source {
        Optional<FacesInClip> looked() throws InputException, InterruptedException;
    }

    private final Source source;
    private Optional<FacesInClip> found = Optional.empty();

    private FacesToBlur(Source source) {
        this.source = source;
    }

    /** Faces are shown as they were filmed. */
    public static FacesToBlur none() {
        return new FacesToBlur(Optional::empty);
    }

    /**
     * All that are found.
     *
     * @param players where they sit; others in the picture are looked for
     * @param when at which pictures of the clip it is looked
     */
    public static FacesToBlur in(ClipFacts clip, List<Player> players, Looks when, Progress progress) {
        List<Player> seated = List.copyOf(players);
        double lengthS = clip.durationS().orElse(Double.POSITIVE_INFINITY);
        return new FacesToBlur(() -> Optional.of(
                FacesInClip.of(clip.file(), seated, when, timeS -> progress.reached(Math.min(1, timeS / lengthS)))));
    }

    /**
     * They, looked for if they were not yet; empty where faces are shown.
     *
     * @throws InputException if the clip can't be read
     * @throws InterruptedException if the thread was interrupted
     */
    Optional<FacesInClip> found() throws InputException, InterruptedException {
        if (found.isEmpty()) {
            found = source.looked();
        }
        return found;
    }
}
