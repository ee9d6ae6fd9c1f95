package tuttarco.beats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Part;

/**
 * Beats that somebody tapped along with the sound, from a bar on without a stop. What is tapped beyond the part's end is left
 * out. Where a tap was given for each bar, its beats lie evenly between, and those after the last tap are not there.
 *
 * @param firstBar index of the bar whose first beat the first tap means
 * @param tapsS times of the taps, seconds from the clip's start, in time order
 * @param lateS so much the taps come after the beats they mean, seconds; it is taken off
 */
public record TappedBeats(Part part, int firstBar, Every every, List<Double> tapsS, double lateS)
        implements BeatSource {
    /** What a tap is given for. */
    public enum Every {
        BEAT,
        BAR
    }

    /** Beats within a bar are this uneven, as the spread of the logarithm of their length (chosen). */
    private static final double UNEVENNESS = 0.1;

    public TappedBeats {
        tapsS = List.copyOf(tapsS);
    }

    /**
     * What a tap would mean, as people say it: {@code bar 3 beat 1}.
     *
     * @param tap its number, from 0
     * @return empty where the part has ended
     */
    public static Optional<String> meant(Part part, int firstBar, Every every, int tap) {
        List<PartRuler.Mark> marks = marks(part, firstBar);
        List<Integer> tapped = tapped(marks, every);
        return tap < tapped.size()
                ? Optional.of(beat(part, marks.get(tapped.get(tap)), 0, 0).spoken())
                : Optional.empty();
    }

    private static List<PartRuler.Mark> marks(Part part, int firstBar) {
        return new PartRuler(part)
                .beats().stream()
                        .filter(mark -> mark.position().barIndex() >= firstBar)
                        .toList();
    }

    /** The marks a tap is given for, by their numbers. */
    private static List<Integer> tapped(List<PartRuler.Mark> marks, Every every) {
        return IntStream.range(0, marks.size())
                .filter(i -> every == Every.BEAT || i == 0 || begins(marks, i))
                .boxed()
                .toList();
    }

    @Override
    public BeatMap beats() throws InputException {
        List<PartRuler.Mark> marks = marks(part, firstBar);
        List<Integer> all = tapped(marks, every);
        List<Integer> tapped = all.subList(0, Math.min(all.size(), tapsS.size()));
        if (tapped.size() < 2) {
            throw new InputException("From bar "
                    + Plain.text(part.bars().get(firstBar).number()) + " on fewer than two beats were tapped; tap at"
                    + " least two.");
        }
        List<Beat> beats = new ArrayList<>();
        for (int tap = 0; tap < tapped.size(); tap++) {
            beats.add(beat(part, marks.get(tapped.get(tap)), tapS(tap), Beat.TAPPED_S));
            if (tap + 1 < tapped.size()) {
                between(marks.subList(tapped.get(tap), tapped.get(tap + 1) + 1), tap, beats);
            }
        }
        return new BeatMap(beats);
    }

    private static boolean begins(List<PartRuler.Mark> marks, int index) {
        return marks.get(index).position().barIndex()
                != marks.get(index - 1).position().barIndex();
    }

    private double tapS(int tap) {
        return tapsS.get(tap) - lateS;
    }

    /** The beats between two taps, the first and the last of the marks. */
    private void between(List<PartRuler.Mark> marks, int tap, List<Beat> beats) {
        double gapS = tapS(tap + 1) - tapS(tap);
        double from = marks.get(0).quarters();
        double quarters = marks.get(marks.size() - 1).quarters() - from;
        for (PartRuler.Mark mark : marks.subList(1, marks.size() - 1)) {
            double share = (mark.quarters() - from) / quarters;
            double tapped = Math.hypot((1 - share) * Beat.TAPPED_S, share * Beat.TAPPED_S);
            double uneven = share * (1 - share) * Math.sqrt(2) * UNEVENNESS * gapS;
            beats.add(beat(part, mark, tapS(tap) + share * gapS, Math.hypot(tapped, uneven)));
        }
    }

    private static Beat beat(Part part, PartRuler.Mark mark, double timeS, double stderrS) {
        return new Beat(
                part.bars().get(mark.position().barIndex()).number(),
                (int) mark.position().beat(),
                timeS,
                OptionalDouble.of(stderrS),
                Beat.TAPPED);
    }
}
