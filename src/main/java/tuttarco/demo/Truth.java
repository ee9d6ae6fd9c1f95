package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** What really happened: each player's strokes, covering the clip without gaps. */
final class Truth {
    static final String HEADER = "player,start_s,end_s,direction,confidence";
    /** How finely it is looked whether someone stands in front, seconds. */
    private static final double LOOK_S = 0.02;

    private Truth() {}

    /** One player's spans; neighbours of one kind are one span. */
    static List<Stroke> of(Performer performer, Scene scene, Layout layout) {
        List<Stroke> strokes = new ArrayList<>();
        for (Travel travel : performer.motion().travels()) {
            if (scene.conditions().obstacle() == Conditions.Obstacle.PASSING_HEAD) {
                cutBySight(travel, performer, scene, layout, strokes);
            } else {
                add(strokes, travel.startS(), travel.endS(), travel.kind());
            }
        }
        return strokes;
    }

    /** Lines of truth.csv, the header first. */
    static List<String> lines(Scene scene, Layout layout) {
        List<String> lines = new ArrayList<>(List.of(HEADER));
        for (Performer performer : layout.performers()) {
            for (Stroke s : of(performer, scene, layout)) {
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

    private static void cutBySight(
            Travel travel, Performer performer, Scene scene, Layout layout, List<Stroke> strokes) {
        int looks = (int) Math.ceil((travel.endS() - travel.startS()) / LOOK_S);
        double stepS = (travel.endS() - travel.startS()) / looks;
        for (int i = 0; i < looks; i++) {
            double startS = travel.startS() + i * stepS;
            double endS = i == looks - 1 ? travel.endS() : startS + stepS;
            boolean hidden = hidden(performer, scene, layout, (startS + endS) / 2);
            add(strokes, startS, endS, hidden ? StrokeKind.UNSEEN : travel.kind());
        }
    }

    /** Hand and elbow are both behind whoever walks past. */
    private static boolean hidden(Performer performer, Scene scene, Layout layout, double timeS) {
        Passer passer = Passer.in(scene);
        Figure figure = performer.figure(timeS);
        Camera.Spot hand = layout.camera().see(performer.room(figure.grip()));
        Camera.Spot elbow = layout.camera().see(performer.room(figure.right().elbow()));
        return passer.hides(hand.xPx(), hand.yPx(), timeS) && passer.hides(elbow.xPx(), elbow.yPx(), timeS);
    }

    private static void add(List<Stroke> strokes, double startS, double endS, StrokeKind kind) {
        int last = strokes.size() - 1;
        if (last >= 0 && strokes.get(last).kind() == kind) {
            strokes.set(last, new Stroke(strokes.get(last).startS(), endS, kind, 1));
        } else {
            strokes.add(new Stroke(startS, endS, kind, 1));
        }
    }
}
