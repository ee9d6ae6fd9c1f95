package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.BeatSource;
import tuttarco.beats.Run;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;

/**
 * The beats of another recording carried over to where the same music sounds in this one. What of it was played again is
 * there twice, what was not played is missing, and where this recording stops, the beats do.
 *
 * <p>A beat's error is that of the other recording's beat, in this one's tempo, and that of finding its moment here; the two
 * are taken for independent.
 *
 * @param other the other recording's beats
 */
public record CarriedBeats(BeatSource other, Path otherRecording, Path recording) implements Listening {
    /** A beat may lie this much outside of what was found, as ends are cut to what fits well; seconds (chosen). */
    private static final double BEYOND_S = 0.25;

    /** From one passage to the next nobody stopped if it takes at most so many times as long as in the other recording. */
    private static final double ON_TIME = 1.5;

    /** At most so many beats are lost where one passage goes over into the next (chosen: a bar). */
    private static final int MOST_LOST = 4;

    @Override
    public Heard heard() throws InputException {
        BeatMap known = other.beats();
        try {
            return listened(known);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InputException("Stopped while listening for the other take.", e);
        }
    }

    private Heard listened(BeatMap known) throws InputException, InterruptedException {
        SoundFeatures from = SoundFeatures.of(otherRecording);
        SoundFeatures to = SoundFeatures.of(recording);
        RecordedGuide guide = RecordedGuide.of(from, known);
        RecordedGuide coarse = guide.coarse();
        PassageJudge judge = PassageJudge.of(coarse, to);
        PassageTimer timer = new PassageTimer(guide, to);
        CarryTimer carry = new CarryTimer(from, to, guide);
        List<List<Beat>> stretches = new ArrayList<>();
        List<HeardPassage> passages = new ArrayList<>();
        List<Passage> leftOut = new ArrayList<>();
        double afterS = Double.NEGATIVE_INFINITY;
        for (Passage passage : new PassageFinder(coarse).passages(to)) {
            double doubt = judge.doubt(passage);
            if (!(doubt < 1)) {
                leftOut.add(passage);
                continue;
            }
            List<Beat> beats = carried(known, timer.timed(passage), carry, afterS);
            if (beats.size() >= 2) {
                stretches.add(beats);
                afterS = last(beats).timeS();
                passages.add(new HeardPassage(
                        beats.get(0).bar(), last(beats).bar(), passage.startS(), passage.endS(), doubt));
            }
        }
        if (stretches.isEmpty()) {
            throw new InputException("The sound of " + InputBytes.name(recording) + " does not fit that of "
                    + InputBytes.name(otherRecording)
                    + ", whose beats it should take over; check that both play the same, or give the beats as a list.");
        }
        return new Heard(
                BeatMap.ofStretches(joined(known, stretches)), passages, LeftOut.told(leftOut, "the other take"));
    }

    /** The beats of a passage, as far as they come after {@code afterS} and after each other. */
    private static List<Beat> carried(BeatMap known, Passage passage, CarryTimer carry, double afterS) {
        double fromS = passage.places()[0] - BEYOND_S;
        double toS = passage.places()[passage.places().length - 1];
        Run run = runAt(known, (fromS + toS) / 2);
        List<Integer> numbers = new ArrayList<>();
        for (int i = run.firstIndex(); i <= run.lastIndex(); i++) {
            double timeS = known.beats().get(i).timeS();
            if (fromS <= timeS && timeS <= toS) {
                numbers.add(i);
            }
        }
        List<Beat> beats = new ArrayList<>();
        if (numbers.isEmpty()) {
            return beats;
        }
        double[] momentsS =
                numbers.stream().mapToDouble(i -> known.beats().get(i).timeS()).toArray();
        double endS = Math.min(toS, known.endS(numbers.get(numbers.size() - 1)));
        Passage even = passage.smooth(PassageTimer.SMOOTH_S);
        List<CarryTimer.Carried> found = carry.carried(passage, momentsS, endS);
        double lastS = afterS;
        for (int k = 0; k < momentsS.length; k++) {
            CarryTimer.Carried at = found.get(k);
            if (at.timeS() > lastS) {
                lastS = at.timeS();
                Beat beat = known.beats().get(numbers.get(k));
                double slower = even.timeS(momentsS[k] + 0.5) - even.timeS(momentsS[k] - 0.5);
                beats.add(new Beat(beat.bar(), beat.beat(), at.timeS(), stderrS(beat, slower, at), Beat.CARRIED));
            }
        }
        return beats;
    }

    private static OptionalDouble stderrS(Beat beat, double slower, CarryTimer.Carried at) {
        return beat.stderrS().isPresent()
                ? OptionalDouble.of(Math.hypot(slower * beat.stderrS().getAsDouble(), at.stderrS()))
                : OptionalDouble.empty();
    }

    private static Run runAt(BeatMap known, double timeS) {
        Run at = known.runs().get(0);
        for (Run run : known.runs()) {
            if (known.beats().get(run.firstIndex()).timeS() <= timeS) {
                at = run;
            }
        }
        return at;
    }

    /** Stretches of which one goes over into the next without a stop are one: the other recording stopped there, not this. */
    private static List<List<Beat>> joined(BeatMap known, List<List<Beat>> stretches) {
        List<List<Beat>> joined = new ArrayList<>();
        List<Beat> before = List.of();
        for (List<Beat> stretch : stretches) {
            if (!before.isEmpty() && goesOn(known, last(before), stretch.get(0))) {
                joined.get(joined.size() - 1).addAll(stretch);
            } else {
                joined.add(new ArrayList<>(stretch));
            }
            before = stretch;
        }
        return joined;
    }

    /** Whether somewhere in the other recording, two beats follow each other as here. */
    private static boolean goesOn(BeatMap known, Beat last, Beat first) {
        double tookS = first.timeS() - last.timeS();
        for (int i = 0; i < known.beats().size(); i++) {
            int end = Math.min(known.runOf(i).lastIndex(), i + 1 + MOST_LOST);
            for (int j = i + 1; j <= end && same(known.beats().get(i), last); j++) {
                double knownS =
                        known.beats().get(j).timeS() - known.beats().get(i).timeS();
                if (same(known.beats().get(j), first) && tookS <= ON_TIME * knownS && knownS <= ON_TIME * tookS) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Beat last(List<Beat> beats) {
        return beats.get(beats.size() - 1);
    }

    private static boolean same(Beat a, Beat b) {
        return a.bar().equals(b.bar()) && a.beat() == b.beat();
    }
}
