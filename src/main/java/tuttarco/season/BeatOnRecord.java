package tuttarco.season;

import java.util.Optional;
import tuttarco.bow.BowDirection;

/**
 * A beat of a take.
 *
 * @param bar as printed; empty where no bars are known
 * @param beat within the bar, from 1
 * @param beginsBar whether a bar begins to be played here: a bar that is played again begins again
 * @param timeS seconds from the clip's start
 * @param marked the part's direction; empty where it rests or says nothing
 */
public record BeatOnRecord(String bar, int beat, boolean beginsBar, double timeS, Optional<BowDirection> marked) {}
