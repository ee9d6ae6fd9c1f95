package tuttarco.demo;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import tuttarco.bow.Instrument;

/** Draws a seated player with instrument and bow. */
final class FigurePainter {
    private static final Color STICK = new Color(0x6B3A1E);
    private static final Color HAIR = new Color(0xEDE8DA);
    private static final Color EBONY = new Color(0x241E1C);
    private static final Color CHAIR = new Color(0x4B4F57);
    private static final Color SHOE = new Color(0x1B1B1F);

    private final Performer who;
    private final Figure f;
    private final Axes axes;
    private final Brush brush;
    private final Vec toCamera;

    private FigurePainter(Performer who, double timeS, Brush brush, Camera camera) {
        this.who = who;
        this.f = who.figure(timeS);
        this.axes = who.axes(timeS);
        this.brush = brush;
        this.toCamera = camera.towards(who.floor().plus(new Vec(0, 0, 1)));
    }

    static void paint(Performer who, double timeS, Brush brush, Camera camera) {
        FigurePainter painter = new FigurePainter(who, timeS, brush, camera);
        painter.chair();
        painter.legs();
        painter.trunk();
        painter.head();
        painter.instrument();
        painter.upperArm(painter.f.left());
        painter.foreArm(painter.f.left(), painter.f.leftHand(), brush);
        painter.upperArm(painter.f.right());
        painter.bowArm();
        painter.bow();
        brush.flush();
    }

    /** Nothing but forearm and hand of the bow arm, with the frog it holds. */
    static void paintBowArm(Performer who, double timeS, Brush brush, Camera camera) {
        new FigurePainter(who, timeS, brush, camera).bowArm();
        brush.flush();
    }

    private void bowArm() {
        Brush ofArm = brush.ofBowArm(who.index());
        foreArm(f.right(), f.grip(), ofArm);
        frog(ofArm);
    }

    private Vec at(double x, double y, double z) {
        return axes.room(new Vec(x, y, z));
    }

    private void chair() {
        double seat = f.posture().hipM() - 0.08;
        for (int x = -1; x <= 1; x += 2) {
            brush.limb(at(0.2 * x, 0.2, seat), at(0.22 * x, 0.22, 0), 0.03, 0.03, CHAIR, 0);
            brush.limb(at(0.2 * x, -0.2, seat + 0.38), at(0.22 * x, -0.24, 0), 0.03, 0.03, CHAIR, 0);
        }
        List<Vec> slab =
                List.of(at(-0.22, -0.22, seat), at(0.22, -0.22, seat), at(0.22, 0.24, seat), at(-0.22, 0.24, seat));
        brush.patch(slab, CHAIR, at(0, -0.1, seat));
        List<Vec> back = List.of(
                at(-0.2, -0.23, seat + 0.42),
                at(0.2, -0.23, seat + 0.42),
                at(0.2, -0.22, seat + 0.22),
                at(-0.2, -0.22, seat + 0.22));
        brush.patch(back, CHAIR, at(0, -0.26, seat + 0.3));
    }

    private void legs() {
        double hip = f.posture().hipM();
        double knee = Math.max(0.5, hip - 0.12);
        for (int x = -1; x <= 1; x += 2) {
            double spread = x * f.posture().kneeSpreadM();
            brush.limb(
                    at(0.1 * x, 0.02, hip),
                    at(spread, 0.42, knee),
                    0.19,
                    0.14,
                    who.looks().trousers(),
                    0);
            brush.limb(
                    at(spread, 0.42, knee),
                    at(1.05 * spread, 0.40, 0.09),
                    0.135,
                    0.09,
                    who.looks().trousers(),
                    0);
            brush.limb(at(1.05 * spread, 0.38, 0.05), at(1.15 * spread, 0.55, 0.035), 0.09, 0.07, SHOE, 0);
        }
    }

    private void trunk() {
        Color coat = who.looks().coat();
        double frontal = Math.abs(toCamera.dot(forward()));
        double width = Math.hypot(0.34 * frontal, 0.22 * Math.sqrt(1 - frontal * frontal));
        Vec chest = f.chest().plus(new Vec(0, -0.01, -0.15));
        brush.limb(axes.room(chest), axes.room(f.hips().plus(new Vec(0, 0, 0.04))), width, 0.92 * width, coat, -0.02);
        Vec right = f.right().shoulder();
        Vec left = f.left().shoulder();
        brush.limb(
                axes.room(right.plus(new Vec(-0.03, -0.01, -0.035))),
                axes.room(left.plus(new Vec(0.03, -0.01, -0.035))),
                0.15,
                0.15,
                coat,
                -0.03);
        brush.limb(
                axes.room(f.chest().plus(new Vec(0, 0, 0))),
                axes.room(f.head().plus(new Vec(0, -0.01, -0.06))),
                0.115,
                0.10,
                who.looks().skin(),
                -0.01);
    }

    private Vec forward() {
        return axes.direction(new Vec(0, 1, 0));
    }

    private void head() {
        Vec ahead = new Vec(0, 1, 0).turned(f.headTurnRad());
        double facing = toCamera.dot(axes.direction(ahead));
        Color skin = who.looks().skin();
        Color hair = who.looks().hair();
        Vec crown = f.head().plus(new Vec(0, 0, 0.025)).plus(ahead.times(-0.035));
        brush.ball(axes.room(f.head()), 0.078 + 0.012 * (1 - Math.abs(facing)), 0.112, skin, 0);
        brush.ball(axes.room(crown), 0.096, 0.112, hair, facing > 0.25 ? -0.10 : 0.02);
        if (who.looks().longHair()) {
            Vec nape = crown.plus(ahead.times(-0.03));
            brush.limb(
                    axes.room(nape),
                    axes.room(nape.plus(new Vec(0, -0.02, -0.17))),
                    0.17,
                    0.12,
                    hair,
                    facing > 0 ? -0.12 : 0.03);
        }
        if (facing > -0.15) {
            face(ahead, skin, facing);
        }
    }

    private void face(Vec ahead, Color skin, double facing) {
        Vec side = new Vec(ahead.y(), -ahead.x(), 0);
        for (int x = -1; x <= 1; x += 2) {
            Vec out = ahead.times(0.09).plus(side.times(0.034 * x));
            if (visible(out)) {
                Vec eye = f.head()
                        .plus(ahead.times(0.075))
                        .plus(side.times(0.034 * x))
                        .plus(new Vec(0, 0, 0.012));
                Vec brow = eye.plus(new Vec(0, 0, 0.026));
                brush.ball(axes.room(eye), 0.013, 0.009, new Color(0xF4F0EA), 0.10);
                brush.ball(axes.room(eye), 0.007, 0.008, new Color(0x2A221E), 0.11);
                brush.line(
                        axes.room(brow.plus(side.times(-0.016))),
                        axes.room(brow.plus(side.times(0.016))),
                        0.008,
                        who.looks().hair(),
                        0.11);
            }
        }
        Vec bridge = f.head().plus(ahead.times(0.082)).plus(new Vec(0, 0, 0.008));
        Vec nose = f.head().plus(ahead.times(0.105)).plus(new Vec(0, 0, -0.028));
        brush.limb(axes.room(bridge), axes.room(nose), 0.014, 0.026, Brush.shade(skin, 0.94), 0.10);
        if (facing > 0) {
            Vec mouth = f.head().plus(ahead.times(0.078)).plus(new Vec(0, 0, -0.062));
            brush.line(
                    axes.room(mouth.plus(side.times(-0.022))),
                    axes.room(mouth.plus(side.times(0.022))),
                    0.011,
                    new Color(0x9A4B45),
                    0.10);
        }
        Vec fringe = f.head().plus(ahead.times(0.02)).plus(new Vec(0, 0, 0.092));
        brush.ball(axes.room(fringe), 0.078, 0.034, who.looks().hair(), 0.08);
    }

    private boolean visible(Vec own) {
        return toCamera.dot(axes.direction(own)) > 0.01;
    }

    private void upperArm(Limb arm) {
        brush.limb(axes.room(arm.shoulder()), axes.room(arm.elbow()), 0.125, 0.092, sleeve(), 0.02);
    }

    private void foreArm(Limb arm, Vec hand, Brush with) {
        Color skin = who.looks().skin();
        Vec cuff = arm.elbow().towards(arm.wrist(), 0.9);
        with.limb(axes.room(arm.elbow()), axes.room(cuff), 0.092, 0.066, sleeve(), 0.04);
        with.limb(axes.room(cuff), axes.room(arm.wrist()), 0.052, 0.050, skin, 0.045);
        with.limb(axes.room(arm.wrist()), axes.room(hand), 0.062, 0.054, skin, 0.06);
    }

    private Color sleeve() {
        return Brush.shade(who.looks().coat(), 1.12);
    }

    private void instrument() {
        Posture p = f.posture();
        Vec axis = p.axis();
        Vec across = axis.cross(p.front()).unit();
        Vec tail = p.tail().plus(f.sway());
        Vec scroll = p.scroll().plus(f.sway());
        Vec shoulder = tail.plus(axis.times(p.bodyLengthM()));
        double rib = p.bodyWidthM() * 0.14;
        Vec behind = axes.room(tail.towards(shoulder, 0.5).plus(p.front().times(-rib - 0.03)));
        brush.patch(
                outline(p, tail.plus(p.front().times(-rib)), axis, across),
                Brush.shade(who.looks().varnish(), 0.7),
                behind);
        boolean frontSeen = toCamera.dot(axes.direction(p.front())) > 0;
        Vec belly = axes.room(tail.towards(shoulder, 0.5).plus(p.front().times(frontSeen ? -0.02 : -rib - 0.04)));
        brush.patch(outline(p, tail, axis, across), who.looks().varnish(), belly);
        double neckWidth = p.bodyWidthM() * 0.14;
        Vec lift = p.front().times(p.bodyWidthM() * 0.08);
        brush.limb(
                axes.room(shoulder.towards(scroll, -0.5).plus(lift)),
                axes.room(scroll),
                neckWidth,
                neckWidth * 0.8,
                EBONY,
                frontSeen ? 0.0 : -0.06);
        brush.ball(
                axes.room(scroll), neckWidth * 0.7, neckWidth * 0.8, who.looks().varnish(), 0);
        if (frontSeen) {
            Vec bridge = tail.plus(axis.times(p.bodyLengthM() * 0.44));
            Vec top = bridge.plus(p.front().times(p.bodyWidthM() * 0.13));
            brush.line(axes.room(tail.plus(lift)), axes.room(top), 0.022 * p.bodyWidthM() / 0.21, EBONY, 0.01);
            brush.line(axes.room(top), axes.room(scroll), 0.006, HAIR, 0.015);
            Vec half = across.times(p.bodyWidthM() * 0.1);
            brush.line(axes.room(top.minus(half)), axes.room(top.plus(half)), 0.012, new Color(0xD9B98A), 0.02);
        }
        if (who.instrument() == Instrument.CELLO || who.instrument() == Instrument.BASS) {
            brush.line(axes.room(tail), axes.room(new Vec(tail.x(), tail.y() + 0.1, 0)), 0.012, EBONY, 0);
        }
    }

    /** The body's outline: lower bout, waist, upper bout. */
    private List<Vec> outline(Posture p, Vec tail, Vec axis, Vec across) {
        double[] along = {0, 0.03, 0.12, 0.24, 0.36, 0.46, 0.56, 0.66, 0.78, 0.90, 0.97, 1};
        double[] half = {0.10, 0.30, 0.47, 0.48, 0.40, 0.27, 0.25, 0.33, 0.41, 0.36, 0.20, 0.06};
        List<Vec> points = new ArrayList<>();
        for (int i = 0; i < along.length; i++) {
            points.add(axes.room(
                    tail.plus(axis.times(along[i] * p.bodyLengthM())).plus(across.times(half[i] * p.bodyWidthM()))));
        }
        for (int i = along.length - 1; i >= 0; i--) {
            points.add(axes.room(
                    tail.plus(axis.times(along[i] * p.bodyLengthM())).plus(across.times(-half[i] * p.bodyWidthM()))));
        }
        return points;
    }

    private void bow() {
        Vec frog = f.frog();
        Vec tip = f.tip();
        Vec off = f.posture().front().times(0.022);
        int pieces = 6;
        for (int i = 0; i < pieces; i++) {
            Vec a = frog.towards(tip, i / (double) pieces);
            Vec b = frog.towards(tip, (i + 1) / (double) pieces);
            brush.line(axes.room(a), axes.room(b), 0.006, HAIR, 0.05);
            brush.line(axes.room(a.plus(off)), axes.room(b.plus(off)), 0.010, STICK, 0.055);
        }
        brush.line(axes.room(tip), axes.room(tip.plus(off)), 0.012, HAIR, 0.055);
    }

    private void frog(Brush with) {
        Vec middle = f.posture().front().times(0.011);
        Vec back = f.frog().towards(f.tip(), 0.03).plus(middle);
        Vec front = f.frog().towards(f.tip(), 0.09).plus(middle);
        with.limb(axes.room(back), axes.room(front), 0.03, 0.03, EBONY, 0.057);
    }
}
