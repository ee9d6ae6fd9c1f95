package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.align.CarriedBeats;
import tuttarco.align.ClickBeats;
import tuttarco.align.HeardBeats;
import tuttarco.beats.AnchoredBeats;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatList;
import tuttarco.beats.BeatSource;
import tuttarco.beats.SteadyTempo;
import tuttarco.bow.Instrument;
import tuttarco.corrections.MovedBeats;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.parts.Parts;
import tuttarco.score.Part;
import tuttarco.score.Practice;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Take;
import tuttarco.take.TakeFile;

/** What a take says was on the stand, and when: as it says itself, or else heard in its sound by its part. */
public final class TakeParts {
    private TakeParts() {}

    /** The part on the stand, with what is written over it, if the take names one. */
    public static Optional<Part> part(Take take) throws InputException {
        if (take.part().isEmpty()) {
            return Optional.empty();
        }
        Instrument instrument = instrument(take);
        Part part = Parts.read(take.part().get(), instrument, take.partChoice());
        return Optional.of(
                take.over().isPresent() ? Parts.over(part, take.over().get(), Practice.of(instrument)) : part);
    }

    /** Whose part it is. */
    static Instrument instrument(Take take) {
        return take.leader().orElse(take.players().get(0)).instrument();
    }

    /** The beats; nothing where the take has neither part nor beats, so that its leader's strokes are all there is to go by. */
    static Optional<BeatSource.Told> toldUnlessLed(Take take, Optional<Part> part) throws InputException {
        boolean led = part.isEmpty() && take.leader().isPresent();
        return led && take.beats() instanceof BeatsGiven.Missing
                ? Optional.empty()
                : Optional.of(beats(take.beats(), take, part, List.of(real(take.file())))
                        .told());
    }

    /**
     * The source of a take's beats, with those moved that somebody moved.
     *
     * @throws InputException if the take names neither beats nor a part to hear them by
     */
    public static BeatSource beats(Take take, Optional<Part> part) throws InputException {
        return beats(take, part, List.of(real(take.file())));
    }

    private static BeatSource beats(Take take, Optional<Part> part, List<Path> asked) throws InputException {
        return new MovedBeats(beats(take.beats(), take, part, asked), take.file());
    }

    /** @param asked the takes that want these beats, this one last, as real paths */
    private static BeatSource beats(BeatsGiven given, Take take, Optional<Part> part, List<Path> asked)
            throws InputException {
        if (given instanceof BeatsGiven.Anchored anchored
                && anchored.source() instanceof BeatsGiven.HeardClicks clicks) {
            // clicks need no correction: anchors only say which they are
            return clicks(clicks, anchored.anchors(), take, part);
        }
        if (given instanceof BeatsGiven.HeardClicks clicks) {
            return clicks(clicks, List.of(), take, part);
        }
        if (given instanceof BeatsGiven.Anchored anchored) {
            return new AnchoredBeats(beats(anchored.source(), take, part, asked), anchored.anchors());
        }
        if (given instanceof BeatsGiven.Carried carried) {
            return carried(carried.take(), take, asked);
        }
        if (given instanceof BeatsGiven.Listed listed) {
            return new BeatList(listed.list());
        }
        if (given instanceof BeatsGiven.Steady steady) {
            return new SteadyTempo(counted(take, part), steady.tempoBpm(), steady.startS());
        }
        Part heard = part.orElseThrow(() -> new InputException(InputBytes.name(take.file())
                + " does not say where the beats lie; add beats, or the part to hear them by, or say who leads, to"
                + " compare with."));
        return new HeardBeats(heard, take.video());
    }

    private static BeatSource carried(Path otherFile, Take take, List<Path> asked) throws InputException {
        if (asked.contains(real(otherFile))) {
            throw new InputException(
                    InputBytes.name(take.file()) + " takes its beats from " + InputBytes.name(otherFile)
                            + ", which in the end takes them from there again; give one of the takes its beats in another way.");
        }
        Take other = TakeFile.read(otherFile);
        if (other.beats() instanceof BeatsGiven.Missing && other.part().isEmpty()) {
            throw new InputException(
                    InputBytes.name(take.file()) + " takes its beats from " + InputBytes.name(otherFile)
                            + ", which does not say where they lie; add beats there, or the part to hear them by.");
        }
        List<Path> all = new ArrayList<>(asked);
        all.add(real(otherFile));
        return new CarriedBeats(beats(other, part(other), all), other.video(), take.video());
    }

    private static Path real(Path file) throws InputException {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            throw new InputException(InputBytes.name(file) + " can't be opened; check the file and its folder.", e);
        }
    }

    private static BeatSource clicks(BeatsGiven.HeardClicks clicks, List<Beat> anchors, Take take, Optional<Part> part)
            throws InputException {
        return new ClickBeats(counted(take, part), take.video(), clicks.firstBar(), anchors);
    }

    private static Part counted(Take take, Optional<Part> part) throws InputException {
        return part.orElseThrow(() -> new InputException("Tempo and clicks count the beats of a part; add the part to "
                + InputBytes.name(take.file()) + ", or give the beats as a list."));
    }
}
