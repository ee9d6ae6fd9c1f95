package tuttarco.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.score.Bar;
import tuttarco.score.Hints;
import tuttarco.score.Part;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.Position;

/**
 * The measures of a part's strip: its bars broken into systems, each beat as wide as its closest notes need. Lengths are
 * pixels.
 *
 * @param systems first bar's index of each system
 */
record StripLayout(List<Bar> bars, List<Integer> systems, double beatPx) {
    static final int BAR_NUMBER_PX = 20;
    static final int SLUR_PX = 12;
    static final int SIGN_PX = 22;
    static final int LENGTH_PX = 10;
    static final int REASON_PX = 16;
    static final int AWKWARD_PX = 18;
    static final int SYSTEM_PX = BAR_NUMBER_PX + SLUR_PX + SIGN_PX + LENGTH_PX + REASON_PX + AWKWARD_PX;
    static final int GAP_PX = 20;

    /** From one system to the next. */
    static final int PITCH_PX = SYSTEM_PX + GAP_PX;

    /** A note's sign stands so far right of its beat, so that bar lines stay clear of it. */
    static final double INSIDE_PX = 9;

    /** Room one note's sign needs. */
    private static final double NOTE_PX = 19;

    private static final double LEAST_BEAT_PX = 28;
    private static final double MOST_BEAT_PX = 64;

    /** Bars in a system (common practice in printed parts). */
    private static final int BARS = 8;

    /** @param widthPx room for a system's bars */
    static StripLayout of(Part part, double widthPx) {
        double widest = part.bars().stream().mapToDouble(Bar::lengthBeats).max().orElse(1);
        double beatPx = Math.max(LEAST_BEAT_PX, Math.min(MOST_BEAT_PX, NOTE_PX / closestBeats(part)));
        double fitting = Math.min(beatPx, widthPx / widest);
        return new StripLayout(part.bars(), broken(part.bars(), fitting, widthPx), fitting);
    }

    private static double closestBeats(Part part) {
        List<Position> notes = Stream.concat(
                        part.spans().stream().map(PartSpan::start),
                        part.hints().joined().stream().map(Hints.Joined::at))
                .sorted()
                .toList();
        return IntStream.range(1, notes.size())
                .filter(i -> notes.get(i).barIndex() == notes.get(i - 1).barIndex())
                .mapToDouble(i -> notes.get(i).beat() - notes.get(i - 1).beat())
                .filter(beats -> beats > 0)
                .min()
                .orElse(1);
    }

    private static List<Integer> broken(List<Bar> bars, double beatPx, double roomPx) {
        List<Integer> systems = new ArrayList<>();
        double widthPx = 0;
        for (int i = 0; i < bars.size(); i++) {
            double barPx = bars.get(i).lengthBeats() * beatPx;
            boolean full =
                    systems.isEmpty() || widthPx + barPx > roomPx + 0.5 || i - systems.get(systems.size() - 1) == BARS;
            if (full) {
                systems.add(i);
                widthPx = 0;
            }
            widthPx += barPx;
        }
        return systems;
    }

    int heightPx() {
        return systems.size() * PITCH_PX;
    }

    /** The bar after the system's last. */
    int endBar(int system) {
        return system + 1 < systems.size() ? systems.get(system + 1) : bars.size();
    }

    /** How far from the system's left a place lies; a place in an earlier or later system lies at its edge. */
    double xPx(int system, Position place) {
        if (place.barIndex() < systems.get(system)) {
            return 0;
        }
        double xPx = 0;
        for (int i = systems.get(system); i < Math.min(place.barIndex(), endBar(system)); i++) {
            xPx += bars.get(i).lengthBeats() * beatPx;
        }
        return place.barIndex() < endBar(system)
                ? xPx + (place.beat() - bars.get(place.barIndex()).firstBeat()) * beatPx
                : xPx;
    }

    boolean holds(int system, Position place) {
        return place.barIndex() >= systems.get(system) && place.barIndex() < endBar(system);
    }
}
