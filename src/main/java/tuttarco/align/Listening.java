package tuttarco.align;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.files.InputException;

/** Beats that are found by listening to a recording, passage by passage. */
public interface Listening extends BeatSource {
    /**
     * What was heard.
     *
     * @param passages which bars were played when, in the order of time
     * @param leftOut one sentence on what resembles what was listened for too little to be it, if there is such a thing
     */
    record Heard(BeatMap beats, List<HeardPassage> passages, Optional<String> leftOut) {
        public Heard {
            passages = List.copyOf(passages);
        }
    }

    /**
     * The beats, and the passages they come from.
     *
     * @throws InputException if there is no sound to hear, or nothing in it fits
     */
    Heard heard() throws InputException;

    @Override
    default BeatMap beats() throws InputException {
        return heard().beats();
    }

    /** Tells which bars were heard when, and what was left out. */
    @Override
    default Told told() throws InputException {
        Heard heard = heard();
        List<String> notes = new ArrayList<>();
        heard.passages().forEach(passage -> notes.add(passage.spoken()));
        heard.leftOut().ifPresent(notes::add);
        return new Told(heard.beats(), notes);
    }
}
