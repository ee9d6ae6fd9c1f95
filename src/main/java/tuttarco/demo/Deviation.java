package tuttarco.demo;

import java.util.List;

/** What a player does otherwise than the part says. Bars count from 1; both ends belong to the range. */
sealed interface Deviation {
    /** Plays the opposite direction, then recovers. */
    record Turned(int firstBar, int lastBar) implements Deviation {}

    /** Lifts the bow nowhere: each stroke goes the other way than the one before, whatever is marked. */
    record AsItComes(int firstBar, int lastBar) implements Deviation {}

    /** Does not play. */
    record Silent(int firstBar, int lastBar) implements Deviation {}

    /**
     * Does something else with the bow arm.
     *
     * @param pace how quickly, as a multiple of what is usual
     */
    record Does(Activity activity, int firstBar, int lastBar, double pace) implements Deviation {
        Does(Activity activity, int firstBar, int lastBar) {
            this(activity, firstBar, lastBar, 1);
        }
    }

    /** Turns aside with chest and instrument by an angle, clockwise from above, degrees, and back, playing on. */
    record Swivels(double byDeg, int firstBar, int lastBar) implements Deviation {}

    /** Plays short strokes to and fro as fast as the arm goes. */
    record Tremolo(int firstBar, int lastBar, double strokesPerS) implements Deviation {
        /** Strokes a second (chosen; common practice is eight to twelve, no source). */
        private static final double USUAL_PER_S = 11;

        Tremolo(int firstBar, int lastBar) {
            this(firstBar, lastBar, USUAL_PER_S);
        }
    }

    /** From a time on, the clip shows another take, in which the bow went the other way all along; seconds. */
    record OtherTake(double fromS) implements Deviation {}

    /**
     * Takes a share of the bow that others would take, elsewhere in it.
     *
     * @param from the place taken for the frog: 0 is the frog itself, 1 the tip; below 0 where others are not near the frog
     */
    record TakesBow(double share, double from, int firstBar, int lastBar) implements Deviation {}

    /** Changes the bow later than the part by this time; negative is earlier. */
    record Lags(double lagMs) implements Deviation {}

    /** By how much all of them together come later than the part, seconds. */
    static double lagS(List<Deviation> deviations) {
        double lagS = 0;
        for (Deviation deviation : deviations) {
            lagS += deviation instanceof Lags lags ? lags.lagMs() / 1000 : 0;
        }
        return lagS;
    }

    /** Changes the bow wherever he or she likes. */
    record Free() implements Deviation {}
}
