package tuttarco.analysis;

import java.util.Optional;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatMap;
import tuttarco.beats.SteadyTempo;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.score.Part;
import tuttarco.score.Parts;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;

/** What a take says was on the stand, and when. */
final class TakeParts {
    private TakeParts() {}

    static Optional<Part> part(Take take) throws InputException {
        return take.part().isPresent()
                ? Optional.of(Parts.read(take.part().get(), instrument(take), take.partChoice()))
                : Optional.empty();
    }

    /** Whose part it is. */
    static Instrument instrument(Take take) {
        return take.leader().orElse(take.players().get(0)).instrument();
    }

    /** The beats; nothing where the take has neither part nor beats, so that its leader's strokes are all there is to go by. */
    static Optional<BeatMap> beatsUnlessLed(Take take, Optional<Part> part) throws InputException {
        boolean led = part.isEmpty() && take.leader().isPresent();
        return led && take.beats() instanceof BeatsGiven.Missing ? Optional.empty() : Optional.of(beats(take, part));
    }

    static BeatMap beats(Take take, Optional<Part> part) throws InputException {
        if (take.beats() instanceof BeatsGiven.Listed listed) {
            return new BeatList(listed.file()).beats();
        }
        if (!(take.beats() instanceof BeatsGiven.Steady steady)) {
            throw new InputException(
                    InputBytes.name(take.file())
                            + " does not say where the beats lie; add beats, or without a part say who leads, to compare with.");
        }
        Part inMetre = part.orElseThrow(() -> new InputException("A tempo counts the beats of a part; add the part to "
                + InputBytes.name(take.file()) + ", or give the beats as a list."));
        return new SteadyTempo(inMetre, steady.tempoBpm(), steady.startS()).beats();
    }
}
