package tuttarco.demo;

import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;

/** A player of a rendered section, and what he or she does otherwise than marked. */
record Sitter(
        String label,
        int desk,
        Place place,
        Instrument instrument,
        Facing facing,
        boolean leader,
        List<Deviation> deviations) {
    Sitter {
        deviations = List.copyOf(deviations);
    }

    Sitter doing(Deviation... deviations) {
        return new Sitter(label, desk, place, instrument, facing, leader, List.of(deviations));
    }
}
