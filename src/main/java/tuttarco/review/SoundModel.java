package tuttarco.review;

import java.nio.file.Path;
import java.util.Optional;
import tuttarco.analysis.Music;
import tuttarco.sound.Outline;

/** The outline of a take's sound, read once for each video. */
public final class SoundModel {
    private final Session session;
    private final Listeners onChange = new Listeners();
    private Optional<Path> video = Optional.empty();
    private Optional<Outline> outline = Optional.empty();
    private Optional<String> trouble = Optional.empty();
    private Background.Going reading = new Background.Going();
    private boolean wanted;

    SoundModel(Session session) {
        this.session = session;
        session.onDraft().add(this::readAnew);
    }

    /** From now on the outline is wanted; a long clip's is not read before. */
    void want() {
        wanted = true;
        readAnew();
    }

    public Listeners onChange() {
        return onChange;
    }

    /** The outline, once it is read. */
    public Optional<Outline> outline() {
        return outline;
    }

    /** Why there is none, and what to do. */
    public Optional<String> trouble() {
        return trouble;
    }

    private void readAnew() {
        Optional<Path> now = session.draft().map(Draft::video);
        if (!wanted || now.equals(video)) {
            return;
        }
        video = now;
        reading.stop();
        show(Optional.empty(), Optional.empty());
        now.ifPresent(clip -> reading = session.background()
                .run(
                        () -> Music.outline(clip),
                        read -> show(Optional.of(read), Optional.empty()),
                        sentence -> show(Optional.empty(), Optional.of(sentence))));
    }

    private void show(Optional<Outline> read, Optional<String> sentence) {
        outline = read;
        trouble = sentence;
        onChange.tell();
    }
}
