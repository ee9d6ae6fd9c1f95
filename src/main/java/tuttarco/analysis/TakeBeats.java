package tuttarco.analysis;

import java.util.Optional;
import tuttarco.align.HeardBeats;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatSource;
import tuttarco.beats.SteadyTempo;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.Parts;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;

/** Where the beats of a take come from: as it says itself, or else heard in its sound by its part. */
public final class TakeBeats {
    private TakeBeats() {}

    /** The part on the stand, if the take names one. */
    public static Optional<Part> part(Take take) throws InputException {
        Instrument instrument = take.leader().orElse(take.players().get(0)).instrument();
        return take.part().isPresent() ? Optional.of(Parts.read(take.part().get(), instrument)) : Optional.empty();
    }

    /**
     * The source of a take's beats.
     *
     * @throws InputException if the take names neither beats nor a part to hear them by
     */
    public static BeatSource of(Take take, Optional<Part> part) throws InputException {
        if (take.beats() instanceof BeatsGiven.Listed listed) {
            return new BeatList(listed.file());
        }
        if (take.beats() instanceof BeatsGiven.Steady steady) {
            Part inMetre =
                    part.orElseThrow(() -> new InputException("A tempo counts the beats of a part; add the part to "
                            + InputBytes.name(take.file()) + ", or give the beats as a list."));
            return new SteadyTempo(inMetre, steady.tempoBpm(), steady.startS());
        }
        Part heard = part.orElseThrow(() -> new InputException(InputBytes.name(take.file())
                + " does not say where the beats lie; add beats, and the part if there is one, to compare with."));
        return new HeardBeats(heard, take.video());
    }

    /** What a list of beats calls their source. */
    public static String word(Take take) {
        if (take.beats() instanceof BeatsGiven.Listed) {
            return "list";
        }
        return take.beats() instanceof BeatsGiven.Steady ? "tempo" : "sound";
    }
}
