package tuttarco.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import tuttarco.beats.AnchoredBeats;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.beats.ListedOrder;
import tuttarco.beats.PartTimes;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.parts.Parts;
import tuttarco.score.Part;
import tuttarco.score.Practice;
import tuttarco.score.Typed;
import tuttarco.sound.Outline;
import tuttarco.take.BeatsGiven;
import tuttarco.video.SoundTrack;

/** What of a take's music has to be computed while it is set up. */
public final class Music {
    /** Samples read at a time: about a fifth of a second. */
    private static final int BLOCK = 4096;

    /** A tap means a beat heard elsewhere if it lies no further from it; seconds (chosen: half a quick beat). */
    private static final double MEANT_S = 0.3;

    /** Fewer taps say nothing of how late they come (chosen). */
    private static final int FEWEST_TAPS = 6;

    private Music() {}

    /**
     * The part on the stand, its bowing completed.
     *
     * @param under without what is written over it; {@code whole} with that
     */
    public record OnStand(Part under, Part whole) {}

    /** The part on the stand, if there is one. */
    public static Optional<OnStand> part(Stand stand) throws InputException {
        Optional<Part> under = TakeParts.partUnder(stand);
        if (under.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new OnStand(under.get(), TakeParts.part(stand).orElseThrow()));
    }

    /** What the parts in a file are called; see {@link Parts#names}. */
    public static List<String> partNames(Path file) throws InputException {
        return Parts.names(file);
    }

    /** A part as bow text to be edited. */
    public static String bowText(Part part) throws InputException {
        return Parts.bowText(part);
    }

    /**
     * Bow text as it is typed.
     *
     * @param under the part whose bars it is written over, if it is
     */
    public static Typed typed(String bowText, Instrument instrument, Optional<Part> under) {
        return under.isPresent()
                ? Parts.typedOver(under.get(), bowText, Practice.of(instrument))
                : Parts.typed(bowText, instrument);
    }

    /**
     * The beats as they are given, without anchors (but those that say which clicks they are), in their runs. This may mean
     * listening to the sound, which takes a while.
     *
     * @throws InputException if they can't be read, or heard, or do not fit the part
     */
    public static BeatSource.Told source(Stand stand, Optional<Part> part) throws InputException {
        BeatsGiven given = stand.beats();
        BeatsGiven bare =
                given instanceof BeatsGiven.Anchored anchored && !(anchored.source() instanceof BeatsGiven.HeardClicks)
                        ? anchored.source()
                        : given;
        BeatSource.Told told = TakeParts.beats(stand.withBeats(bare), part).told();
        BeatMap inRuns =
                part.isPresent() ? PartTimes.of(part.get(), told.beats()).beats() : ListedOrder.withRuns(told.beats());
        return new BeatSource.Told(inRuns, told.notes());
    }

    /**
     * Beats corrected by anchors; quick.
     *
     * @throws InputException if the anchors don't fit the beats or each other
     */
    public static BeatMap anchored(BeatMap source, List<Beat> anchors) throws InputException {
        return anchors.isEmpty() ? source : new AnchoredBeats(() -> source, anchors).beats();
    }

    /**
     * How late taps came, seconds, by the median of how far they lie after the beats they mean.
     *
     * @param tapped with nothing taken off
     * @param heard the same beats from another source
     * @return empty where too few of them lie near each other to say
     */
    public static OptionalDouble lateS(BeatMap tapped, BeatMap heard) {
        List<Double> late = new ArrayList<>();
        for (Beat tap : tapped.beats()) {
            heard.beats().stream()
                    .filter(beat -> beat.bar().equals(tap.bar()) && beat.beat() == tap.beat())
                    .map(beat -> tap.timeS() - beat.timeS())
                    .min((a, b) -> Double.compare(Math.abs(a), Math.abs(b)))
                    .filter(lateS -> Math.abs(lateS) <= MEANT_S)
                    .ifPresent(late::add);
        }
        return late.size() < FEWEST_TAPS
                ? OptionalDouble.empty()
                : OptionalDouble.of(new Median()
                        .evaluate(late.stream().mapToDouble(Double::doubleValue).toArray()));
    }

    /**
     * The outline of a clip's sound, read once from beginning to end.
     *
     * @throws InputException if it has no sound that can be read
     */
    public static Outline outline(Path video) throws InputException, InterruptedException {
        try (SoundTrack track = SoundTrack.open(video)) {
            Outline.Gathering outline = new Outline.Gathering(SoundTrack.SAMPLES_PER_S, track.startS());
            float[] block = new float[BLOCK];
            for (int count = track.read(block); count > 0; count = track.read(block)) {
                outline.add(block, count);
                if (Thread.interrupted()) {
                    throw new InterruptedException();
                }
            }
            return outline.outline();
        }
    }
}
