package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.beats.PartRuler;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Part;

/**
 * The clicks of a metronome heard in a recording, one a beat, numbered through the part.
 *
 * @param firstBar the bar on whose first beat the first click falls
 * @param anchors beats whose clicks are known by their times; with them or the first bar the clicks are numbered
 */
public record ClickBeats(Part part, Path recording, Optional<String> firstBar, List<Beat> anchors)
        implements BeatSource {
    /** How far an anchor may lie from its click, as a share of the time between two: nearer to it than to its neighbours. */
    private static final double FURTHEST = 0.4;

    public ClickBeats {
        anchors = List.copyOf(anchors);
        if (firstBar.isEmpty() && anchors.isEmpty()) {
            throw new IllegalArgumentException("clicks are numbered from a first bar or by an anchor");
        }
    }

    @Override
    public BeatMap beats() throws InputException {
        try {
            return numbered(ClickTrack.in(Ticks.of(recording))
                    .orElseThrow(() -> new InputException("No regular clicks can be heard in "
                            + InputBytes.name(recording)
                            + "; check that a metronome sounds in it, or give the beats in another way.")));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InputException("Stopped while listening for clicks.", e);
        }
    }

    private BeatMap numbered(ClickTrack clicks) throws InputException {
        List<Beat> counted = counted();
        int shift = shift(clicks, counted);
        List<Beat> beats = new ArrayList<>();
        double[] timesS = clicks.timesS();
        for (int i = Math.max(0, -shift); i < Math.min(timesS.length, counted.size() - shift); i++) {
            Beat beat = counted.get(i + shift);
            beats.add(new Beat(beat.bar(), beat.beat(), timesS[i], OptionalDouble.of(clicks.jitterS()), Beat.CLICKS));
        }
        if (beats.size() < 2) {
            throw new InputException("Fewer than two of the clicks in " + InputBytes.name(recording)
                    + " fall into the part; correct the first bar or the anchors.");
        }
        return new BeatMap(beats);
    }

    /** All beats of the part, each at a second more than the one before. */
    private List<Beat> counted() {
        List<Beat> counted = new ArrayList<>();
        for (PartRuler.Mark mark : new PartRuler(part).beats()) {
            String bar = part.bars().get(mark.position().barIndex()).number();
            counted.add(new Beat(bar, (int) mark.position().beat(), counted.size()));
        }
        return counted;
    }

    /** The number of the part's beat on which the first click falls; negative if the part begins later. */
    private int shift(ClickTrack clicks, List<Beat> counted) throws InputException {
        Set<Integer> shifts = null;
        if (firstBar.isPresent()) {
            int first = IntStream.range(0, counted.size())
                    .filter(i -> counted.get(i).bar().equals(firstBar.get()))
                    .findFirst()
                    .orElseThrow(() -> new InputException("The part has no bar " + Plain.text(firstBar.get())
                            + " for the first click; number it as printed in the part."));
            shifts = new HashSet<>(Set.of(first));
        }
        for (Beat anchor : anchors) {
            int click = click(clicks, anchor);
            Set<Integer> fitting = IntStream.range(0, counted.size())
                    .filter(i -> counted.get(i).bar().equals(anchor.bar())
                            && counted.get(i).beat() == anchor.beat())
                    .mapToObj(i -> i - click)
                    .collect(Collectors.toCollection(HashSet::new));
            if (fitting.isEmpty()) {
                throw new InputException("The part has no " + Plain.text(anchor.spoken())
                        + ", which an anchor names; number its bar as printed in the part.");
            }
            if (shifts != null) {
                fitting.retainAll(shifts);
            }
            if (fitting.isEmpty()) {
                throw new InputException("The anchor " + Plain.text(anchor.spoken()) + " at " + anchor.timeS()
                        + " s does not fit the first bar or the anchors before it, by the number of clicks between;"
                        + " correct one of them.");
            }
            shifts = fitting;
        }
        return shifts.stream().min(Integer::compare).orElseThrow();
    }

    private int click(ClickTrack clicks, Beat anchor) throws InputException {
        double[] timesS = clicks.timesS();
        int nearest = 0;
        for (int i = 1; i < timesS.length; i++) {
            if (Math.abs(timesS[i] - anchor.timeS()) < Math.abs(timesS[nearest] - anchor.timeS())) {
                nearest = i;
            }
        }
        int next = Math.min(nearest + 1, timesS.length - 1);
        double periodS = timesS[next] - timesS[next - 1];
        if (Math.abs(timesS[nearest] - anchor.timeS()) > FURTHEST * periodS) {
            throw new InputException("There is no click near the anchor " + Plain.text(anchor.spoken()) + " at "
                    + anchor.timeS() + " s; correct its time to that of a click.");
        }
        return nearest;
    }
}
