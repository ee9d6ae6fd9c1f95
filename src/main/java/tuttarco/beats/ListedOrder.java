package tuttarco.beats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tuttarco.files.InputException;

/**
 * The runs of a list of beats whose part is not known: its bars are taken to stand in the order of their numbers, {@code
 * 12a} after {@code 12}, and each listed beat to be one step from the next. A repeat that was played as written therefore
 * begins a run too.
 */
public final class ListedOrder {
    private static final Pattern NUMBER = Pattern.compile("([0-9]{1,9})(.*)");

    private static final Comparator<Beat> ORDER = Comparator.comparingInt(ListedOrder::number)
            .thenComparing(ListedOrder::suffix)
            .thenComparingInt(Beat::beat);

    private ListedOrder() {}

    /**
     * The beats, with runs ended where the list goes back or its pace shows a stop.
     *
     * @throws InputException if a beat stands alone between two stops
     */
    public static BeatMap withRuns(BeatMap map) throws InputException {
        TreeMap<Beat, Integer> steps = new TreeMap<>(ORDER);
        map.beats().forEach(beat -> steps.put(beat, 0));
        int next = 0;
        for (var step : steps.entrySet()) {
            step.setValue(next++);
        }
        List<double[]> places = new ArrayList<>();
        map.beats().forEach(beat -> places.add(new double[] {steps.get(beat)}));
        return Laid.of(map, places).map();
    }

    /** Bars without a number come first. */
    private static int number(Beat beat) {
        Matcher matcher = NUMBER.matcher(beat.bar());
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : -1;
    }

    private static String suffix(Beat beat) {
        Matcher matcher = NUMBER.matcher(beat.bar());
        return matcher.matches() ? matcher.group(2) : beat.bar();
    }
}
