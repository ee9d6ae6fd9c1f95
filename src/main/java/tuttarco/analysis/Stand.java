package tuttarco.analysis;

import java.nio.file.Path;
import java.util.Optional;
import tuttarco.bow.Instrument;
import tuttarco.score.PartChoice;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;

/**
 * What of a take its music is: what was on the stand, and when. It can be asked for before anybody sits in the take.
 *
 * @param takeFile the take's file, for messages and for takes that carry their beats over; it may not be written yet
 * @param instrument whose part it is
 */
public record Stand(
        Path takeFile,
        Path video,
        Optional<Path> part,
        PartChoice partChoice,
        Optional<Path> over,
        BeatsGiven beats,
        Instrument instrument) {
    static Stand of(Take take) {
        return new Stand(
                take.file(),
                take.video(),
                take.part(),
                take.partChoice(),
                take.over(),
                take.beats(),
                take.leader().orElse(take.players().get(0)).instrument());
    }

    Stand withBeats(BeatsGiven others) {
        return new Stand(takeFile, video, part, partChoice, over, others, instrument);
    }
}
