package tuttarco.compare;

import java.util.List;
import java.util.OptionalDouble;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * How a player stood to a {@link Reference} during one beat.
 *
 * <p>Time is judged, not points. What counts is the time the reference bows within the beat, less a tolerance at both ends
 * of each of its strokes, so that a change a little early or late is no disagreement. If less than half of that time was
 * read as down or up, the beat is {@link Verdict#UNSEEN} or {@link Verdict#UNSURE}, whichever took longer; an arm that
 * holds still or plays tremolo through a stroke is UNSURE, as a leader would not call it turned; where the player was absent for
 * longer than either, it is REST, which speaks for nothing. Otherwise the longer of agreement and
 * opposition decides, but opposition shorter than {@link CompareSettings#leastAgainstS()} is UNSURE. Where the reference
 * itself is mostly unsure or unseen, so is the verdict; where it doesn't bow, the verdict is {@link Verdict#REST}.
 *
 * @param confidence probability that the verdict is right at a random moment of the judged time, if a wrong direction
 *     means that the other one was bowed; given only for {@link Verdict#WITH} and {@link Verdict#AGAINST}
 */
record Judgement(Verdict verdict, OptionalDouble confidence) {
    /** Less time than this, seconds, is rounding. */
    static final double ROUNDING_S = 0.001;

    static Judgement of(Verdict verdict) {
        return new Judgement(verdict, OptionalDouble.empty());
    }

    static Judgement of(
            Reference reference, List<Stroke> played, double startS, double endS, CompareSettings settings) {
        Time bowed = new Time(Spans.between(reference.strokes(), startS, endS), startS, endS);
        if (bowed.directedS() <= Math.max(ROUNDING_S, bowed.unsureS() + bowed.unseenS())) {
            return of(unclear(bowed.unsureS(), bowed.unseenS()));
        }
        Tally tally = new Tally();
        for (Stroke core : Spans.between(reference.cores(), startS, endS)) {
            tally.add(core, played, Math.max(startS, core.startS()), Math.min(endS, core.endS()));
        }
        return tally.judgement(settings);
    }

    private static Verdict unclear(double unsureS, double unseenS) {
        if (unsureS + unseenS < ROUNDING_S) {
            return Verdict.REST;
        }
        return unseenS > unsureS ? Verdict.UNSEEN : Verdict.UNSURE;
    }

    /** How long the strokes of each kind take between two times, seconds. */
    private record Time(List<Stroke> strokes, double startS, double endS) {
        double directedS() {
            return ofS(StrokeKind.DOWN) + ofS(StrokeKind.UP);
        }

        double unsureS() {
            return ofS(StrokeKind.UNSURE) + ofS(StrokeKind.TREMOLO);
        }

        double unseenS() {
            return ofS(StrokeKind.UNSEEN);
        }

        private double ofS(StrokeKind kind) {
            return strokes.stream()
                    .filter(s -> s.kind() == kind)
                    .mapToDouble(s -> Spans.overlapS(s, startS, endS))
                    .sum();
        }
    }

    /** Adds up one beat. */
    private static final class Tally {
        private double totalS;
        private double agreeS;
        private double opposeS;
        private double notClearS;
        private double absentS;
        /** Expected time in agreement, given how sure both directions are. */
        private double expectedAgreeS;

        void add(Stroke core, List<Stroke> played, double startS, double endS) {
            totalS += endS - startS;
            for (Stroke stroke : Spans.between(played, startS, endS)) {
                double togetherS = Spans.overlapS(stroke, startS, endS);
                switch (stroke.kind()) {
                    case STILL, UNSURE, TREMOLO -> notClearS += togetherS;
                    case UNSEEN -> {}
                    case ABSENT -> absentS += togetherS;
                    case DOWN, UP -> {
                        double clear = bothRightOrBothWrong(stroke, core);
                        boolean agrees = stroke.kind() == core.kind();
                        agreeS += agrees ? togetherS : 0;
                        opposeS += agrees ? 0 : togetherS;
                        expectedAgreeS += togetherS * (agrees ? clear : 1 - clear);
                    }
                }
            }
        }

        private static double bothRightOrBothWrong(Stroke a, Stroke b) {
            return a.confidence() * b.confidence() + (1 - a.confidence()) * (1 - b.confidence());
        }

        Judgement judgement(CompareSettings settings) {
            double judgedS = agreeS + opposeS;
            if (judgedS < settings.judgedShare() * totalS || judgedS < ROUNDING_S) {
                double unseenS = totalS - judgedS - notClearS - absentS;
                if (absentS > Math.max(unseenS, notClearS)) {
                    return of(Verdict.REST);
                }
                return of(unseenS > notClearS ? Verdict.UNSEEN : Verdict.UNSURE);
            }
            if (agreeS > opposeS) {
                return new Judgement(Verdict.WITH, OptionalDouble.of(expectedAgreeS / judgedS));
            }
            if (opposeS > agreeS && opposeS >= settings.leastAgainstS()) {
                return new Judgement(Verdict.AGAINST, OptionalDouble.of(1 - expectedAgreeS / judgedS));
            }
            return of(Verdict.UNSURE);
        }
    }
}
