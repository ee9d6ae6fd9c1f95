package tuttarco.report;

import tuttarco.chart.Words;
import tuttarco.compare.Unity;
import tuttarco.compare.Unity.Agreement;

/** Whether the section bowed as one, in a sentence. */
final class UnityWords {
    private UnityWords() {}

    /** @param unit what is counted: beat, or stroke */
    static String of(Unity unity, String unit) {
        if (unity instanceof Unity.NotTold notTold) {
            return "Whether the section bowed as one or freely can't be told: "
                    + notTold.reason().words() + ".";
        }
        Unity.Told told = (Unity.Told) unity;
        String pairs = "two players went the same way on "
                + Words.percent(told.section().agreement()) + " of the " + unit + "s";
        return switch (told.kind()) {
            case UNIFIED ->
                "The section bowed as one: " + pairs + "; by chance it would be "
                        + Words.percent(told.section().byChance()) + ", and chance does as much in "
                        + seldom(told.section()) + ".";
            case FREE ->
                "The section bowed freely: " + pairs + ", as by chance ("
                        + Words.percent(told.section().byChance()) + ").";
            case BETWEEN ->
                "The section bowed neither as one nor freely: " + pairs + "; by chance it would be "
                        + Words.percent(told.section().byChance()) + ", and chance does as much in "
                        + seldom(told.section()) + ".";
            case UNCERTAIN ->
                "Whether the section bowed as one or freely is not certain: " + pairs
                        + ", but it is too little, or repeats too evenly, to be told from chance, which does as much in "
                        + seldom(told.section()) + ".";
            case BY_DESK -> {
                Unity.Desks desks = told.desks().orElseThrow();
                yield "Each desk bowed as one, but not with the others: partners went the same way on "
                        + Words.percent(desks.partners().agreement()) + " of the " + unit
                        + "s, players of different desks on "
                        + Words.percent(desks.apart().agreement())
                        + ", as by chance.";
            }
        };
    }

    /** The share of takes in which chance does as much; never less than the shifts can show. */
    private static String seldom(Agreement agreement) {
        return "at most " + Math.round(1000 * agreement.pValue()) + " of 1000 takes";
    }
}
