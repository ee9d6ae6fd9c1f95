package tuttarco.demo;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import tuttarco.bow.Instrument;

/** Draws a seated player with instrument and bow. */
final class FigurePainter {
    /** Half widths of an instrument's body along its length, as shares of the full width: bouts and waist. */
    private static final double[] OUTLINE = {
        0.16, 0.38, 0.48, 0.50, 0.47, 0.38, 0.31, 0.30, 0.34, 0.40, 0.42, 0.40, 0.32, 0.14
    };

    private static final double HEAD_M = 0.105;
    private static final Color STICK = new Color(0x3A2416);
    private static final Color HAIR_OF_BOW = new Color(0xE9E4D6);
    private static final Color EBONY = new Color(0x17130F);

    private final Pieces pieces;
    private final Instrument instrument;
    private final Costume costume;
    private final Figure figure;
    private final UnaryOperator<Vec> room;

    private FigurePainter(
            Pieces pieces, Instrument instrument, Costume costume, Figure figure, UnaryOperator<Vec> room) {
        this.pieces = pieces;
        this.instrument = instrument;
        this.costume = costume;
        this.figure = figure;
        this.room = room;
    }

    /**
     * Adds a player's pieces.
     *
     * @param room from the player's own axes to the room
     */
    static void draw(Pieces pieces, Instrument instrument, Costume costume, Figure figure, UnaryOperator<Vec> room) {
        FigurePainter painter = new FigurePainter(pieces, instrument, costume, figure, room);
        painter.seat();
        painter.legs();
        painter.trunk();
        painter.head();
        painter.instrument();
        painter.arms();
        painter.bow();
    }

    private void seat() {
        Vec hips = figure.hips();
        Vec under = hips.plus(new Vec(0, -0.02, -0.11));
        pieces.limb(
                at(under.plus(new Vec(-0.18, 0, 0))), 0.035, at(under.plus(new Vec(0.18, 0, 0))), 0.035, EBONY, -0.1);
        for (int side = -1; side <= 1; side += 2) {
            pieces.line(
                    at(under.plus(new Vec(0.17 * side, 0, 0))), at(new Vec(0.19 * side, -0.05, 0)), 0.03, EBONY, -0.1);
        }
    }

    private void legs() {
        Posture p = figure.posture();
        for (int side = -1; side <= 1; side += 2) {
            Vec hip = figure.hips().plus(new Vec(0.09 * side, 0.02, 0));
            Vec knee = new Vec(p.kneeSpreadM() * side, 0.43, Math.min(0.52, p.hipM() - 0.02));
            Vec foot = new Vec((p.kneeSpreadM() + 0.02) * side, 0.44, 0.06);
            pieces.limb(at(hip), 0.085, at(knee), 0.065, costume.trousers(), 0);
            pieces.limb(at(knee), 0.062, at(foot), 0.042, costume.trousers(), 0);
            pieces.limb(at(foot), 0.04, at(foot.plus(new Vec(0, 0.13, -0.02))), 0.03, EBONY, 0);
        }
    }

    private void trunk() {
        Vec hips = figure.hips();
        Vec chest = figure.chest();
        Vec across = new Vec(0.105, 0, 0);
        pieces.limb(at(hips), 0.15, at(chest.plus(new Vec(0, 0, -0.14))), 0.155, costume.clothes(), 0);
        pieces.limb(
                at(chest.minus(across).plus(new Vec(0, 0, -0.06))),
                0.085,
                at(chest.plus(across).plus(new Vec(0, 0, -0.06))),
                0.085,
                costume.clothes(),
                0.01);
        pieces.limb(at(chest), 0.05, at(figure.head().plus(new Vec(0, 0, -0.09))), 0.045, costume.skin(), 0.015);
    }

    private void head() {
        Vec head = figure.head();
        double turn = figure.headTurnRad();
        Vec face = new Vec(0, 1, -0.12).turned(turn).unit();
        Vec right = new Vec(1, 0, 0).turned(turn);
        Vec up = right.cross(face).unit();
        pieces.limb(at(head.plus(up.times(0.035))), HEAD_M, at(head.plus(up.times(-0.05))), 0.08, costume.skin(), 0.02);
        pieces.ball(
                at(head.plus(up.times(0.05)).plus(face.times(-0.03))),
                HEAD_M + 0.004,
                costume.hair(),
                hairNearer(face));
        if (costume.longHair()) {
            pieces.limb(
                    at(head.plus(face.times(-0.06))), 0.09,
                    at(head.plus(face.times(-0.075)).plus(up.times(-0.16))), 0.06,
                    costume.hair(), hairNearer(face));
        }
        if (facesCamera(face) > 0.15) {
            features(head, face, right, up);
        }
    }

    private double hairNearer(Vec face) {
        return facesCamera(face) > 0 ? -0.04 : 0.1;
    }

    private double facesCamera(Vec face) {
        Vec direction = at(figure.head().plus(face)).minus(at(figure.head()));
        return direction.dot(pieces.camera().towards(at(figure.head())));
    }

    private void features(Vec head, Vec face, Vec right, Vec up) {
        Vec front = head.plus(face.times(0.098));
        for (int side = -1; side <= 1; side += 2) {
            Vec eye =
                    front.plus(right.times(0.036 * side)).plus(up.times(0.012)).plus(face.times(-0.012));
            pieces.ball(at(eye), 0.013, new Color(0xF4F1EC), 0.08);
            pieces.ball(at(eye), 0.008, EBONY, 0.085);
            pieces.line(
                    at(eye.plus(right.times(-0.016)).plus(up.times(0.024))),
                    at(eye.plus(right.times(0.016)).plus(up.times(0.024))),
                    0.007,
                    costume.hair(),
                    0.08);
        }
        pieces.line(
                at(front.plus(up.times(0.004))),
                at(front.plus(up.times(-0.028)).plus(face.times(0.012))),
                0.012,
                Costume.shade(costume.skin(), 0.8),
                0.08);
        pieces.line(
                at(front.plus(up.times(-0.056)).plus(right.times(-0.022))),
                at(front.plus(up.times(-0.056)).plus(right.times(0.022))),
                0.009,
                new Color(0x8E4A44),
                0.08);
    }

    private void instrument() {
        Posture p = figure.posture();
        Vec sway = figure.sway();
        Vec axis = p.axis();
        Vec across = axis.cross(p.front()).unit();
        Vec tail = p.tail().plus(sway);
        double thicknessM = instrument.onShoulder() ? 0.03 : 0.15 * p.bodyWidthM() / 0.44;
        pieces.polygon(
                outline(tail.minus(p.front().times(thicknessM)), axis, across), Costume.shade(costume.wood(), 0.6), 0);
        pieces.polygon(outline(tail, axis, across), costume.wood(), 0.03);
        Vec top = tail.plus(axis.times(p.bodyLengthM()));
        Vec scroll = p.scroll().plus(sway);
        double neckM = instrument.onShoulder() ? 0.022 : 0.04;
        pieces.line(
                at(top.minus(axis.times(0.3 * p.bodyLengthM())).plus(p.front().times(0.012))),
                at(scroll),
                neckM,
                EBONY,
                0.05);
        pieces.ball(at(scroll), neckM, costume.wood(), 0.05);
        Vec bridge = p.contact().plus(sway).plus(axis.times(-0.05 * p.bodyLengthM()));
        pieces.line(
                at(bridge.plus(across.times(0.25 * p.bodyWidthM() * 0.35))),
                at(bridge.minus(across.times(0.25 * p.bodyWidthM() * 0.35))),
                0.008,
                new Color(0xD8BE8A),
                0.06);
        for (int string = -1; string <= 1; string++) {
            Vec aside = across.times(string * 0.02 * p.bodyWidthM() / 0.21);
            pieces.line(
                    at(tail.plus(axis.times(0.12 * p.bodyLengthM()))
                            .plus(aside)
                            .plus(p.front().times(0.02))),
                    at(scroll.plus(aside.times(0.5))),
                    0.002,
                    new Color(0xCFCFCB),
                    0.055);
        }
        if (!instrument.onShoulder() && instrument != Instrument.VIOL) {
            pieces.line(at(tail), at(new Vec(tail.x(), tail.y() + 0.1, 0.0)), 0.012, EBONY, 0);
        }
    }

    private List<Vec> outline(Vec tail, Vec axis, Vec across) {
        Posture p = figure.posture();
        List<Vec> outline = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < OUTLINE.length; i++) {
                int k = side < 0 ? i : OUTLINE.length - 1 - i;
                Vec along = axis.times(p.bodyLengthM() * k / (OUTLINE.length - 1));
                outline.add(at(tail.plus(along).plus(across.times(side * OUTLINE[k] * p.bodyWidthM()))));
            }
        }
        return outline;
    }

    private void arms() {
        Limb left = figure.left();
        pieces.limb(at(left.shoulder()), 0.062, at(left.elbow()), 0.047, costume.clothes(), 0.02);
        pieces.limb(at(left.elbow()), 0.046, at(left.wrist()), 0.032, costume.clothes(), 0.04);
        pieces.limb(at(left.wrist()), 0.03, at(figure.leftHand()), 0.034, costume.skin(), 0.07);
        Limb right = figure.right();
        pieces.limb(at(right.shoulder()), 0.066, at(right.elbow()), 0.05, costume.clothes(), 0.03);
        pieces.limb(at(right.elbow()), 0.048, at(right.wrist()), 0.032, costume.clothes(), 0.06);
        pieces.limb(at(right.wrist()), 0.031, at(figure.grip()), 0.04, costume.skin(), 0.10);
        pieces.ball(at(figure.grip().plus(figure.posture().toHand().times(-0.03))), 0.026, costume.skin(), 0.11);
    }

    private void bow() {
        Vec along = figure.tip().minus(figure.frog()).unit();
        Vec off = figure.posture().front().times(0.022);
        Vec hairStart = figure.frog().plus(along.times(0.06));
        pieces.line(at(hairStart), at(figure.tip()), 0.007, HAIR_OF_BOW, 0.08);
        pieces.line(at(figure.frog().plus(off)), at(figure.tip().plus(off.times(0.6))), 0.011, STICK, 0.085);
        pieces.line(at(figure.frog().plus(off.times(0.4))), at(hairStart.plus(off.times(0.4))), 0.024, EBONY, 0.09);
        pieces.ball(at(figure.tip().plus(off.times(0.3))), 0.009, STICK, 0.09);
    }

    private Vec at(Vec own) {
        return room.apply(own);
    }
}
