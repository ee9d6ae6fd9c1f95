package tuttarco.analysis;

import java.io.IOException;
import java.nio.file.Files;
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
        return part(Stand.of(take));
    }

    static Optional<Part> part(Stand stand) throws InputException {
        Optional<Part> under = partUnder(stand);
        return under.isPresent() && stand.over().isPresent()
                ? Optional.of(Parts.over(under.get(), stand.over().get(), Practice.of(stand.instrument())))
                : under;
    }

    /** The part on the stand without what is written over it. */
    static Optional<Part> partUnder(Stand stand) throws InputException {
        return stand.part().isPresent()
                ? Optional.of(Parts.read(stand.part().get(), stand.instrument(), stand.partChoice()))
                : Optional.empty();
    }

    /** Whose part it is. */
    static Instrument instrument(Take take) {
        return Stand.of(take).instrument();
    }

    /** The beats; nothing where the take has neither part nor beats, so that its leader's strokes are all there is to go by. */
    static Optional<BeatSource.Told> toldUnlessLed(Take take, Optional<Part> part) throws InputException {
        boolean led = part.isEmpty() && take.leader().isPresent();
        return led && take.beats() instanceof BeatsGiven.Missing
                ? Optional.empty()
                : Optional.of(beats(Stand.of(take), part).told());
    }

    /**
     * The source of a take's beats, with those moved that somebody moved.
     *
     * @throws InputException if the take names neither beats nor a part to hear them by
     */
    public static BeatSource beats(Take take, Optional<Part> part) throws InputException {
        return moved(Stand.of(take), part, List.of(real(take.file())));
    }

    private static BeatSource moved(Stand stand, Optional<Part> part, List<Path> asked) throws InputException {
        return new MovedBeats(beats(stand.beats(), stand, part, asked), stand.takeFile());
    }

    /** The same before anybody moved one. */
    static BeatSource beats(Stand stand, Optional<Part> part) throws InputException {
        return beats(stand.beats(), stand, part, List.of(real(stand.takeFile())));
    }

    /** @param asked the takes that want these beats, this one last, as real paths */
    private static BeatSource beats(BeatsGiven given, Stand stand, Optional<Part> part, List<Path> asked)
            throws InputException {
        if (given instanceof BeatsGiven.Anchored anchored
                && anchored.source() instanceof BeatsGiven.HeardClicks clicks) {
            // clicks need no correction: anchors only say which they are
            return clicks(clicks, anchored.anchors(), stand, part);
        }
        if (given instanceof BeatsGiven.HeardClicks clicks) {
            return clicks(clicks, List.of(), stand, part);
        }
        if (given instanceof BeatsGiven.Anchored anchored) {
            return new AnchoredBeats(beats(anchored.source(), stand, part, asked), anchored.anchors());
        }
        if (given instanceof BeatsGiven.Carried carried) {
            return carried(carried.take(), stand, asked);
        }
        if (given instanceof BeatsGiven.Listed listed) {
            return new BeatList(listed.list());
        }
        if (given instanceof BeatsGiven.Steady steady) {
            return new SteadyTempo(counted(stand, part), steady.tempoBpm(), steady.startS());
        }
        Part heard = part.orElseThrow(() -> new InputException(InputBytes.name(stand.takeFile())
                + " does not say where the beats lie; add beats, or the part to hear them by, or say who leads, to"
                + " compare with."));
        return new HeardBeats(heard, stand.video());
    }

    private static BeatSource carried(Path otherFile, Stand stand, List<Path> asked) throws InputException {
        if (asked.contains(real(otherFile))) {
            throw new InputException(
                    InputBytes.name(stand.takeFile()) + " takes its beats from " + InputBytes.name(otherFile)
                            + ", which in the end takes them from there again; give one of the takes its beats in another way.");
        }
        Take other = TakeFile.read(otherFile);
        if (other.beats() instanceof BeatsGiven.Missing && other.part().isEmpty()) {
            throw new InputException(
                    InputBytes.name(stand.takeFile()) + " takes its beats from " + InputBytes.name(otherFile)
                            + ", which does not say where they lie; add beats there, or the part to hear them by.");
        }
        List<Path> all = new ArrayList<>(asked);
        all.add(real(otherFile));
        return new CarriedBeats(moved(Stand.of(other), part(other), all), other.video(), stand.video());
    }

    /** A take that is not written yet is where it will be written. */
    private static Path real(Path file) throws InputException {
        try {
            return Files.exists(file)
                    ? file.toRealPath()
                    : file.toAbsolutePath().normalize();
        } catch (IOException e) {
            throw new InputException(InputBytes.name(file) + " can't be opened; check the file and its folder.", e);
        }
    }

    private static BeatSource clicks(
            BeatsGiven.HeardClicks clicks, List<Beat> anchors, Stand stand, Optional<Part> part) throws InputException {
        return new ClickBeats(counted(stand, part), stand.video(), clicks.firstBar(), anchors);
    }

    private static Part counted(Stand stand, Optional<Part> part) throws InputException {
        return part.orElseThrow(() -> new InputException("Tempo and clicks count the beats of a part; add the part to "
                + InputBytes.name(stand.takeFile()) + ", or give the beats as a list."));
    }
}
