package tuttarco.compare;

import java.util.Locale;

/** Everything that is measured of a section, defined once: files, charts and pages take the words from here. */
public enum Metric {
    WITH_MARKING(
            "With the marking",
            Unit.SHARE,
            "judged beat",
            "Of the beats of all players that could be judged, the share bowed as marked.",
            "interval: Wilson 1927, J. Am. Stat. Assoc. 22:209; beats are taken to be independent of each other"),
    WITH_LEADER(
            "With the leader",
            Unit.SHARE,
            "judged beat",
            "Of the beats of all players but the leader that could be judged, the share bowed as the leader did.",
            "interval: Wilson 1927, J. Am. Stat. Assoc. 22:209; beats are taken to be independent of each other"),
    WITH_MAJORITY(
            "With the majority",
            Unit.SHARE,
            "beat read",
            "Of the beats of all players that were read as down or up, the share in the direction most of the section took. "
                    + "Beats without a majority, or read of fewer than three players, don't count. Half of a large section "
                    + "is with the majority by chance, and more of a small one.",
            "interval: Wilson 1927, J. Am. Stat. Assoc. 22:209; beats are taken to be independent of each other"),
    ALPHA(
            "Agreement beyond chance",
            Unit.NUMBER,
            "beat read of two players or more",
            "How far the players took the same direction on the same beat, beyond chance: 1 always, 0 as chance would have it, "
                    + "below 0 less. Beats not read are left out player by player.",
            "Krippendorff's alpha, nominal: Krippendorff 2011, Computing Krippendorff's Alpha-Reliability"),
    KAPPA(
            "Agreement beyond chance, beats read of all",
            Unit.NUMBER,
            "beat read of all",
            "The same figure by another rule, on the beats that were read of every player only.",
            "Fleiss' kappa: Fleiss 1971, Psychol. Bull. 76:378"),
    CHANGE_SPREAD(
            "Spread of changes",
            Unit.MILLISECONDS,
            "change seen of four players or more",
            "How far apart the players change bow: the range that holds the middle half of them, median over the changes. "
                    + "The errors of reading are in it.",
            "interquartile range, type 7 of Hyndman & Fan 1996, Am. Stat. 50:361"),
    PHASE_ORDER(
            "Order of long strokes",
            Unit.NUMBER,
            "look",
            "How closely the players are at the same point of the bow's way to and fro in strokes of half a second or more: 1 "
                    + "all together, by chance about 0.9 over the square root of their number. Looked at four times a beat.",
            "order parameter: Kuramoto 1984, Chemical Oscillations, Waves, and Turbulence; phase linear between changes"),
    LAG(
            "Lag",
            Unit.MILLISECONDS,
            "change",
            "How much later than the leader's, or without a leader than the other players' median, a player's changes come; "
                    + "median, negative where earlier.",
            "interval: bootstrap of the median, Efron 1979, Ann. Stat. 7:1; changes are taken to be independent"),
    LAG_SPREAD(
            "Spread of lags",
            Unit.MILLISECONDS,
            "change",
            "The range that holds the middle half of a player's lags.",
            "interquartile range, type 7 of Hyndman & Fan 1996, Am. Stat. 50:361"),
    SMALLEST_LAG(
            "Smallest lag to be seen",
            Unit.MILLISECONDS,
            "change",
            "Nothing is claimed of less: the larger of one standard error of a single lag, which the spacing of the frames is "
                    + "part of, and of three standard deviations of what all changes of a player may be off by alike, which "
                    + "grows as players get smaller in the picture.",
            "standard errors of the change times; shared errors as measured on rendered scenes, see the method page"),
    LOUDNESS_SPREAD(
            "Spread of loudness",
            Unit.LOUDNESS,
            "bar",
            "How far the loudness spreads within a bar: the standard deviation of momentary loudness, mean over the bars.",
            "momentary loudness: ITU-R BS.1770-4"),
    DIP(
            "Dips at bow changes",
            Unit.LOUDNESS,
            "bar",
            "How far the level dips at the bow changes of all players, mean over the bars.",
            "own; see the method page"),
    BOW_AMOUNT(
            "Bow beside the leader's",
            Unit.NUMBER,
            "stroke of both measured",
            "How much bow a player takes for the strokes played at the same time as the leader's and the same way: 1 as much, "
                    + "0.5 half of it; median. Lengths are shares of the longest of these strokes, each player's own, since in "
                    + "the picture a bow is shortened as it points; so half as much in all strokes, the longest too, shows as "
                    + "as much.",
            "interval: bootstrap of the median, Efron 1979, Ann. Stat. 7:1; strokes are taken to be independent"),
    OTHER_END(
            "At the other end of the bow",
            Unit.SHARE,
            "stroke of both placed",
            "Of the strokes played at the same time as the leader's and the same way, and the leader's near frog or tip, the "
                    + "share in which the player's was at the other end. Strokes whose part of the bow is not certain don't "
                    + "count.",
            "interval: Wilson 1927, J. Am. Stat. Assoc. 22:209; strokes are taken to be independent of each other");

    /** What a figure counts in. */
    public enum Unit {
        /** From 0 to 1. */
        SHARE("share"),
        MILLISECONDS("ms"),
        /** Loudness units, as large as decibels. */
        LOUDNESS("LU"),
        NUMBER("1");

        private final String word;

        Unit(String word) {
            this.word = word;
        }

        /** The unit as files name it; {@code 1} where there is none. */
        public String word() {
            return word;
        }
    }

    private final String title;
    private final Unit unit;
    private final String counted;
    private final String help;
    private final String reference;

    Metric(String title, Unit unit, String counted, String help, String reference) {
        this.title = title;
        this.unit = unit;
        this.counted = counted;
        this.help = help;
        this.reference = reference;
    }

    /** The name in files: lower-case letters and hyphens. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String title() {
        return title;
    }

    public Unit unit() {
        return unit;
    }

    /** What a figure's count is of, in the singular. */
    public String counted() {
        return counted;
    }

    /** What it means and how to read it, in a sentence or more. */
    public String help() {
        return help;
    }

    /** Where the method comes from. */
    public String reference() {
        return reference;
    }
}
