package tuttarco.report;

import java.util.List;
import java.util.Optional;
import tuttarco.chart.PlayedBars;
import tuttarco.chart.SignSample;

/**
 * One player's sheet in words and pictures, whatever it is written as.
 *
 * @param sections in the order they stand, what went well first
 * @param signs what the signs in the pictures mean, those that occur
 * @param care how much weight to give it all
 */
public record SheetModel(Head head, List<Section> sections, List<SignSample> signs, List<String> care) {
    public SheetModel {
        sections = List.copyOf(sections);
        signs = List.copyOf(signs);
        care = List.copyOf(care);
    }

    /**
     * What stands over the sheet.
     *
     * @param take what was played, and the day where it is known
     * @param seat instrument and place, as far as the label doesn't say it already
     * @param opening what the sheet is about, a sentence each
     */
    public record Head(String take, String player, String seat, List<String> opening) {}

    /**
     * One question.
     *
     * @param key names it in a page: lower-case letters
     * @param said its answer, a sentence or a paragraph each
     * @param places bars with their picture
     * @param closing said below them
     */
    public record Section(String key, String heading, List<String> said, List<Place> places, Optional<String> closing) {
        public Section {
            said = List.copyOf(said);
            places = List.copyOf(places);
        }

        Section(String key, String heading, List<String> said) {
            this(key, heading, said, List.of(), Optional.empty());
        }
    }

    /**
     * Some bars.
     *
     * @param where bars and beats
     * @param clock when they were played in the film
     */
    public record Place(String where, String clock, List<String> said, PlayedBars picture) {
        public Place {
            said = List.copyOf(said);
        }
    }
}
