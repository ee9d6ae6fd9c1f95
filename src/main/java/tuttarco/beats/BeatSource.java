package tuttarco.beats;

import tuttarco.files.InputException;

/** Somewhere the beats of a recording come from. */
public interface BeatSource {
    /**
     * The beats, in time order.
     *
     * @throws InputException if the source can't be read or holds no beats that can be used
     */
    BeatMap beats() throws InputException;
}
