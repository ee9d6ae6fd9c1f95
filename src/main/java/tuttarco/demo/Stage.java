package tuttarco.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All that stands before a scene's backdrop, in painting order: the farthest first. */
final class Stage {
    private record Thing(double depthM, PaintsAt painter) {}

    private interface PaintsAt {
        void paint(Brush brush, double timeS);
    }

    private final Scene scene;
    private final Layout layout;
    private final List<Thing> things = new ArrayList<>();

    Stage(Scene scene, Layout layout) {
        this.scene = scene;
        this.layout = layout;
        layout.performers()
                .forEach(p -> things.add(new Thing(
                        layout.camera().see(p.floor()).depthM(),
                        (brush, t) -> FigurePainter.paint(p, t, brush, layout.camera()))));
        for (int i = 0; i < layout.stands().size(); i++) {
            things.add(stand(i));
        }
        if (scene.conditions().obstacle() == Conditions.Obstacle.CONDUCTOR) {
            Conductor conductor = Conductor.of(scene);
            things.add(new Thing(layout.camera().see(conductor.floor()).depthM(), conductor::paint));
        }
        things.sort(Comparator.comparingDouble(Thing::depthM).reversed());
    }

    void paint(Pen pen, double timeS) {
        Brush brush = new Brush(pen, layout.camera());
        things.forEach(thing -> thing.painter().paint(brush, timeS));
        if (scene.conditions().obstacle() == Conditions.Obstacle.PASSING_HEAD) {
            Passer.in(scene).paint(pen, timeS);
        }
    }

    private Thing stand(int i) {
        double azimuthRad =
                Math.toRadians(layout.performers().get(2 * i).facing().azimuthDeg());
        boolean high = scene.conditions().obstacle() == Conditions.Obstacle.HIGH_STANDS;
        Vec foot = layout.stands().get(i);
        return new Thing(
                layout.camera().see(foot).depthM(),
                (brush, t) -> RoomPainter.stand(foot, azimuthRad, high, brush, layout.camera()));
    }
}
