package tuttarco.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.chart.Words;
import tuttarco.strokes.Bow;
import tuttarco.strokes.BowPart;
import tuttarco.strokes.BowUse;
import tuttarco.strokes.Bows;

/** Says how much bow a player used, and where. */
final class BowWords {
    /** Of fewer measured strokes nothing is said: a mean of so few tells little. */
    private static final int LEAST_STROKES = 5;

    private BowWords() {}

    /** One sentence or two, empty where too little is known. */
    static Optional<String> of(Bows bows) {
        List<BowUse.Measured> measured = bows.bows().stream()
                .map(Bow::use)
                .filter(BowUse.Measured.class::isInstance)
                .map(BowUse.Measured.class::cast)
                .toList();
        if (measured.size() < LEAST_STROKES) {
            return Optional.empty();
        }
        double share = measured.stream()
                .mapToDouble(BowUse.Measured::lengthShare)
                .average()
                .orElseThrow();
        return Optional.of("On average a stroke took " + Words.percent(share) + " of the bow of the longest one ("
                + Words.count(measured.size(), "stroke") + " measured)." + where(measured));
    }

    private static String where(List<BowUse.Measured> measured) {
        Map<BowPart, Integer> counts = new EnumMap<>(BowPart.class);
        for (BowUse.Measured use : measured) {
            if (use instanceof BowUse.Placed placed) {
                counts.merge(placed.part(), 1, Integer::sum);
            }
        }
        int placed = counts.values().stream().mapToInt(Integer::intValue).sum();
        if (placed == 0) {
            return "";
        }
        return " In the bow: " + counts.getOrDefault(BowPart.FROG, 0) + " near the frog, "
                + counts.getOrDefault(BowPart.MIDDLE, 0) + " in the middle, " + counts.getOrDefault(BowPart.TIP, 0)
                + " near the tip, " + (measured.size() - placed) + " not certain.";
    }
}
