package tuttarco.analysis;

import java.util.Map;
import java.util.Optional;
import tuttarco.beats.BeatSource;
import tuttarco.score.Part;
import tuttarco.take.Take;

/**
 * What was read of a take from picture, sound and part, before anybody corrects it: all that takes long.
 *
 * @param told the beats, empty where the leader's strokes are all there is to go by
 * @param sha256 of every input file by its role, lower-case hex; without the log of corrections
 */
public record Uncorrected(
        Take take,
        Optional<Part> part,
        Optional<BeatSource.Told> told,
        SectionReading section,
        HeardLevel heard,
        Map<String, String> sha256) {}
