package tuttarco.beats;

import java.util.List;
import tuttarco.files.InputException;

/** Somewhere the beats of a recording come from. */
public interface BeatSource {
    /**
     * The beats, in time order.
     *
     * @throws InputException if the source can't be read or holds no beats that can be used
     */
    BeatMap beats() throws InputException;

    /**
     * The beats, with what whoever uses them should know.
     *
     * @throws InputException as {@link #beats()} does
     */
    default Told told() throws InputException {
        return new Told(beats(), List.of());
    }

    /** Beats, and what is to be told of them, a sentence each. */
    record Told(BeatMap beats, List<String> notes) {
        public Told {
            notes = List.copyOf(notes);
        }
    }
}
