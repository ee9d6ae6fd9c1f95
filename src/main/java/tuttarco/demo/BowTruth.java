package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.StrokeKind;

/**
 * Where in the bow and how long each stroke really was, whether or not the camera sees it.
 *
 * @param from place of the bow on the strings at the start, share of the usable bow: 0 at the frog, 1 at the tip
 * @param to the same at the end
 * @param lengthShoulderWidths bow drawn, in distances between the player's shoulder joints
 */
record BowTruth(
        double startS, double endS, BowDirection direction, double from, double to, double lengthShoulderWidths) {
    static final String HEADER = "player,start_s,end_s,direction,from,to,length_shoulder_widths";

    /** One player's strokes; neighbours in one direction are one stroke, as in {@link Truth}. */
    static List<BowTruth> of(Performer performer) {
        Posture posture = Posture.of(performer.instrument());
        double usable = (posture.farthestM() - Posture.FROG_M) / (2 * Posture.HALF_SHOULDERS_M);
        List<BowTruth> bows = new ArrayList<>();
        StrokeKind before = StrokeKind.STILL;
        Travel first = performer.motion().travels().get(0);
        for (Travel t : performer.motion().travels()) {
            boolean goesOn = t.kind() == before;
            first = goesOn ? first : t;
            if (t.kind().direction().isPresent()) {
                if (goesOn) {
                    bows.remove(bows.size() - 1);
                }
                bows.add(new BowTruth(
                        first.startS(),
                        t.endS(),
                        t.kind().direction().get(),
                        first.from(),
                        t.to(),
                        usable * Math.abs(t.to() - first.from())));
            }
            before = t.kind();
        }
        return bows;
    }

    /** Lines of a file of all players, the header first. */
    static List<String> lines(Layout layout) {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        for (Performer performer : layout.performers()) {
            for (BowTruth b : of(performer)) {
                lines.add(String.format(
                        Locale.ROOT,
                        "%s,%.3f,%.3f,%s,%.3f,%.3f,%.3f",
                        performer.label(),
                        b.startS(),
                        b.endS(),
                        b.direction().word(),
                        b.from(),
                        b.to(),
                        b.lengthShoulderWidths()));
            }
        }
        return lines;
    }
}
