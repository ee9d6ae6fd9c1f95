package tuttarco.align;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.PartRuler;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Part;

/**
 * The beats of a part as they are heard in a recording. Where it is played in several passages, after a stop or from an
 * earlier bar again, each passage's beats are there, in the order of the recording.
 *
 * <p>A beat is where its note is heard to begin: where the tone has come to half its loudness (6 dB below it; J. Vos and R.
 * Rasch, The perceptual onset of musical tones, 1981, from memory).
 */
public record HeardBeats(Part part, Path recording) implements Listening {
    /**
     * In this share of the beats, per cent, the tempo changes from one beat to the next by no more than a third (natural
     * logarithm). On rendered sound the 75th percentile was 0.07 at most by the right part and 0.36 at least where the same
     * pitches were looked for in another rhythm.
     */
    private static final double QUIET_PERCENT = 75;

    private static final double MOST_JUMPING = 0.3;

    /** Places nearer than this are the same but for rounding, quarter notes. */
    private static final double ROUNDING = 1e-6;

    @Override
    public Heard heard() throws InputException {
        if (part.notes().isEmpty()) {
            throw new InputException(Plain.text(part.name())
                    + " holds no notes to listen for; give the part as MusicXML, or the beats as a list.");
        }
        try {
            return listened();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InputException("Stopped while listening for the part.", e);
        }
    }

    private Heard listened() throws InputException, InterruptedException {
        PartChords chords = PartChords.of(part);
        SoundFeatures sound = SoundFeatures.of(recording);
        PassageJudge judge = PassageJudge.of(chords, sound);
        List<Passage> leftOut = new ArrayList<>();
        List<Passage> played = new ArrayList<>();
        for (Passage passage : new PassageFinder(chords).passages(sound)) {
            (judge.doubt(passage) < 1 ? played : leftOut).add(passage);
        }
        List<Timed> timed = played.parallelStream()
                .map(passage -> Timed.of(passage, judge.doubt(passage), chords, sound))
                .toList();
        List<List<Beat>> stretches = new ArrayList<>();
        List<HeardPassage> passages = new ArrayList<>();
        double afterS = Double.NEGATIVE_INFINITY;
        for (Timed close : timed) {
            List<Beat> beats = beats(close.onsets(), close.passage(), afterS);
            if (jumps(beats)) {
                leftOut.add(close.passage());
            } else if (beats.size() >= 2) {
                stretches.add(beats);
                afterS = beats.get(beats.size() - 1).timeS();
                passages.add(heard(close.passage(), close.doubt()));
            }
        }
        if (stretches.isEmpty()) {
            throw unlike();
        }
        return new Heard(BeatMap.ofStretches(stretches), passages, LeftOut.told(leftOut, "the part"));
    }

    /** A passage timed closely, with its notes' beginnings. */
    private record Timed(Passage passage, double doubt, List<Onset> onsets) {
        static Timed of(Passage coarse, double doubt, PartChords chords, SoundFeatures sound) {
            Passage close = new PassageTimer(chords, sound).timed(coarse);
            return new Timed(close, doubt, new OnsetTimer(chords, sound).onsets(close));
        }
    }

    /** Whether the tempo jumps so often that the notes may be the part's, but not its rhythm. */
    private static boolean jumps(List<Beat> beats) {
        double[] changes = IntStream.range(2, beats.size())
                .mapToDouble(i -> Math.abs(
                        Math.log((beats.get(i).timeS() - beats.get(i - 1).timeS())
                                / (beats.get(i - 1).timeS() - beats.get(i - 2).timeS()))))
                .toArray();
        return changes.length > 0 && StatUtils.percentile(changes, QUIET_PERCENT) > MOST_JUMPING;
    }

    private HeardPassage heard(Passage passage, double doubt) {
        double[] quarters = passage.places();
        return new HeardPassage(
                barAt(quarters[0]), barAt(quarters[quarters.length - 1]), passage.startS(), passage.endS(), doubt);
    }

    private String barAt(double quarters) {
        String bar = part.bars().get(0).number();
        for (PartRuler.Mark mark : new PartRuler(part).beats()) {
            if (mark.quarters() <= quarters) {
                bar = part.bars().get(mark.position().barIndex()).number();
            }
        }
        return bar;
    }

    private InputException unlike() {
        return new InputException("The sound of " + InputBytes.name(recording) + " does not fit the part "
                + Plain.text(part.name()) + "; check that it is the right part, or give the beats as a list.");
    }

    /** A passage's beats, as far as they come after {@code afterS} and after each other. */
    private List<Beat> beats(List<Onset> onsets, Passage passage, double afterS) {
        List<Beat> beats = new ArrayList<>();
        if (onsets.size() < 2) {
            return beats;
        }
        double lastS = afterS;
        double lastQuarters = passage.places()[passage.places().length - 1];
        int next = 1;
        for (PartRuler.Mark mark : new PartRuler(part).beats()) {
            if (mark.quarters() < onsets.get(0).quarters() - ROUNDING || mark.quarters() > lastQuarters) {
                continue;
            }
            while (next < onsets.size() - 1 && onsets.get(next).quarters() < mark.quarters()) {
                next++;
            }
            Onset found = between(onsets.get(next - 1), onsets.get(next), mark.quarters());
            if (found.timeS() > lastS) {
                lastS = found.timeS();
                beats.add(new Beat(
                        part.bars().get(mark.position().barIndex()).number(),
                        (int) mark.position().beat(),
                        found.timeS(),
                        OptionalDouble.of(found.stderrS()),
                        Beat.SOUND));
            }
        }
        return beats;
    }

    /**
     * A place between two notes, or after both: as sure as they are and as evenly as notes follow each other, by {@link
     * OnsetTimer#UNEVENNESS}.
     */
    private static Onset between(Onset before, Onset after, double quarters) {
        double share = (quarters - before.quarters()) / (after.quarters() - before.quarters());
        double gapS = after.timeS() - before.timeS();
        double uneven = Math.abs(share * (1 - share)) * Math.sqrt(2) * OnsetTimer.UNEVENNESS * gapS;
        double stderrS =
                Math.sqrt(square((1 - share) * before.stderrS()) + square(share * after.stderrS()) + square(uneven));
        return new Onset(quarters, before.timeS() + share * gapS, stderrS);
    }

    private static double square(double x) {
        return x * x;
    }
}
