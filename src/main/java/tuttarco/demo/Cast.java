package tuttarco.demo;

import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;

/**
 * Who sits on a chair of the rendered section and what he or she does otherwise than the part.
 *
 * @param leftHanded whether the left hand holds the bow, and all else is the other way too
 */
record Cast(Instrument instrument, Facing facing, boolean leftHanded, List<Deviation> deviations) {
    Cast {
        deviations = List.copyOf(deviations);
    }

    Cast(Instrument instrument, Facing facing, Deviation... deviations) {
        this(instrument, facing, false, List.of(deviations));
    }
}
