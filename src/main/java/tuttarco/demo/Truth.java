package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** What really happened: each player's strokes, covering the clip without gaps. */
final class Truth {
    static final String HEADER = "player,start_s,end_s,direction,confidence";

    private Truth() {}

    /**
     * One player's spans, unseen where the camera does not see the arm; neighbours of one kind are one span, unless the
     * bow is elsewhere all at once, which only a cut does.
     */
    static List<Stroke> of(Performer performer, Sight sight) {
        List<Stroke> strokes = new ArrayList<>();
        double place = Double.NaN;
        for (Travel travel : performer.motion().travels()) {
            boolean cut = travel.from() != place;
            place = travel.to();
            for (int look = Sight.nearest(travel.startS()); look <= Sight.nearest(travel.endS()); look++) {
                double startS = Math.max(travel.startS(), Sight.startS(look));
                double endS = Math.min(travel.endS(), Sight.startS(look + 1));
                if (endS > startS) {
                    StrokeKind kind = sight.sees(performer, look) ? travel.kind() : StrokeKind.UNSEEN;
                    add(strokes, new Stroke(startS, endS, kind, 1), cut);
                    cut = false;
                }
            }
        }
        return strokes;
    }

    /** Lines of truth.csv, the header first. */
    static List<String> lines(Scene scene, Layout layout) {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        Sight sight = new Sight(scene, layout);
        for (Performer performer : layout.performers()) {
            for (Stroke s : of(performer, sight)) {
                lines.add(String.format(
                        Locale.ROOT,
                        "%s,%.3f,%.3f,%s,1",
                        performer.label(),
                        s.startS(),
                        s.endS(),
                        s.kind().word()));
            }
        }
        return lines;
    }

    private static void add(List<Stroke> strokes, Stroke next, boolean apart) {
        int last = strokes.size() - 1;
        if (!apart && last >= 0 && strokes.get(last).kind() == next.kind()) {
            strokes.set(last, new Stroke(strokes.get(last).startS(), next.endS(), next.kind(), 1));
        } else {
            strokes.add(next);
        }
    }
}
