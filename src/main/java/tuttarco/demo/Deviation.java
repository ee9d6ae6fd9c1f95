package tuttarco.demo;

/** What a player does otherwise than the part says. Bars count from 1; both ends belong to the range. */
sealed interface Deviation {
    /** Plays the opposite direction, then recovers. */
    record Turned(int firstBar, int lastBar) implements Deviation {}

    /** Does not play. */
    record Silent(int firstBar, int lastBar) implements Deviation {}

    /** Does something else with the bow arm. */
    record Does(Activity activity, int firstBar, int lastBar) implements Deviation {}

    /** Turns aside with chest and instrument by an angle, clockwise from above, degrees, and back, playing on. */
    record Swivels(double byDeg, int firstBar, int lastBar) implements Deviation {}

    /** Plays short strokes to and fro as fast as the arm goes, more than ten a second. */
    record Tremolo(int firstBar, int lastBar) implements Deviation {}

    /** From a time on, the clip shows another take, in which the bow went the other way all along; seconds. */
    record OtherTake(double fromS) implements Deviation {}

    /** Changes the bow later than the part by this time; negative is earlier. */
    record Lags(double lagMs) implements Deviation {}

    /** Changes the bow wherever he or she likes. */
    record Free() implements Deviation {}
}
