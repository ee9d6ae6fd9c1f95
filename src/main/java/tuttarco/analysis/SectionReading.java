package tuttarco.analysis;

import java.util.List;
import java.util.Optional;
import tuttarco.strokes.Bows;
import tuttarco.strokes.Reading;
import tuttarco.tracks.ArmTrack;
import tuttarco.video.ClipFacts;

/**
 * What was read from a clip alone, before any marking is known.
 *
 * @param endS end of what could be read, seconds from the clip's start
 * @param tracks one a player, in the order given; {@code readings} and {@code bows} likewise
 * @param trouble what kept the clip from being read as a whole, a sentence; mostly nothing
 */
public record SectionReading(
        ClipFacts clip,
        double endS,
        List<ArmTrack> tracks,
        List<Reading> readings,
        List<Bows> bows,
        Optional<String> trouble) {
    public SectionReading {
        tracks = List.copyOf(tracks);
        readings = List.copyOf(readings);
        bows = List.copyOf(bows);
    }

    /** Things to tell the user, one sentence each. */
    public List<String> notes() {
        return ReadingNotes.of(trouble, tracks);
    }
}
