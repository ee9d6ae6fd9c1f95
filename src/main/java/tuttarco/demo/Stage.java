package tuttarco.demo;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/** Where everybody sits in the room, what the camera sees of it, and how the players move. */
final class Stage {
    private static final double BETWEEN_PARTNERS_M = 0.85;
    private static final double BETWEEN_DESKS_M = 2.1;
    private static final double BETWEEN_ROWS_M = 1.7;
    /** Each row sits this much higher than the one before. */
    private static final double RISER_M = 0.42;

    private static final double CAMERA_DISTANCE_M = 6.5;
    private static final double CAMERA_HEIGHT_M = 2.3;
    private static final double CAMERA_PITCH_RAD = 0.16;
    /** Free room around the section, as a share of the picture. */
    private static final double MARGIN = 0.05;
    /** Free room around a figure in its seat box, as a share of its size. */
    private static final double SEAT_MARGIN = 0.06;

    /** One player in place. */
    private record Seated(Sitter sitter, BowMotion motion, Costume costume, Vec spot, double[] swayPhases) {
        Vec inRoom(Vec own) {
            return own.turned(Math.toRadians(sitter.facing().azimuthDeg())).plus(spot);
        }
    }

    private final Scene scene;
    private final List<Seated> seated = new ArrayList<>();
    private final Camera camera;

    Stage(Scene scene) {
        this.scene = scene;
        for (int i = 0; i < scene.sitters().size(); i++) {
            Sitter sitter = scene.sitters().get(i);
            Random random = new Random(scene.seed() * 77 + i);
            double[] phases = random.doubles(6, 0, 2 * Math.PI).toArray();
            seated.add(
                    new Seated(sitter, scene.motion(sitter), Costume.of(scene.seed() * 100 + i), spot(sitter), phases));
        }
        Camera wide = new Camera(CAMERA_DISTANCE_M, CAMERA_HEIGHT_M, CAMERA_PITCH_RAD, 1000, 0, 0);
        double[] box = box(seated, wide);
        double mx = MARGIN * scene.widthPx();
        double my = MARGIN * scene.heightPx();
        camera = wide.framing(box[0], box[1], box[2], box[3], mx, my, scene.widthPx() - mx, scene.heightPx() - my);
    }

    BowMotion motion(int player) {
        return seated.get(player).motion();
    }

    /** The players with the seat boxes in which they are seen. */
    List<Player> players() {
        List<Player> players = new ArrayList<>();
        for (Seated s : seated) {
            Sitter sitter = s.sitter();
            double[] box = box(List.of(s), camera);
            double mx = SEAT_MARGIN * (box[2] - box[0]);
            double my = SEAT_MARGIN * (box[3] - box[1]);
            int x0 = (int) Math.max(0, box[0] - mx);
            int y0 = (int) Math.max(0, box[1] - my);
            int x1 = (int) Math.min(scene.widthPx(), box[2] + mx);
            int y1 = (int) Math.min(scene.heightPx(), box[3] + my);
            SeatBox seat = new SeatBox(x0, y0, x1 - x0, y1 - y0);
            players.add(new Player(
                    sitter.label(),
                    sitter.desk(),
                    sitter.place(),
                    sitter.instrument(),
                    seat,
                    sitter.facing(),
                    sitter.leader()));
        }
        return players;
    }

    /** Paints the room and everybody in it at a time. */
    void paint(Graphics2D g, double timeS) {
        g.setPaint(new GradientPaint(0, 0, new Color(0xB9AE9C), 0, scene.heightPx(), new Color(0x8D7F6B)));
        g.fillRect(0, 0, scene.widthPx(), scene.heightPx());
        wall(g);
        Pieces pieces = new Pieces(camera);
        for (Seated s : seated) {
            FigurePainter.draw(pieces, s.sitter().instrument(), s.costume(), figure(s, timeS), s::inRoom);
            if (s.sitter().place() == Place.OUTSIDE) {
                stand(pieces, s);
            }
        }
        if (scene.conditions().passingHead()) {
            passer(pieces, timeS);
        }
        pieces.paint(g);
    }

    /** Planks, so that the ground has something to hold on to. */
    private void wall(Graphics2D g) {
        Random random = new Random(scene.seed());
        int plankPx = Math.max(8, scene.widthPx() / 24);
        for (int x = 0; x < scene.widthPx(); x += plankPx) {
            int grey = 110 + random.nextInt(50);
            g.setColor(new Color(grey, grey - 8, grey - 20, 90));
            g.fillRect(x, 0, plankPx - 1, scene.heightPx());
        }
    }

    private Figure figure(Seated s, double timeS) {
        Travel travel = s.motion().at(timeS);
        double[] p = s.swayPhases();
        double amount = scene.conditions().swayM();
        Vec sway = new Vec(
                amount * Math.sin(2 * Math.PI * 0.31 * timeS + p[0]),
                0.6 * amount * Math.sin(2 * Math.PI * 0.23 * timeS + p[1]),
                0.3 * amount * Math.sin(2 * Math.PI * 0.42 * timeS + p[2]));
        double shift =
                0.5 + 0.4 * Math.sin(2 * Math.PI * 0.17 * timeS + p[3]) + 0.06 * Math.sin(2 * Math.PI * 5.5 * timeS);
        double headTurn = -0.25 + 0.12 * Math.sin(2 * Math.PI * 0.12 * timeS + p[4]);
        return Figure.of(s.sitter().instrument(), travel.place(timeS), travel.lift(timeS), shift, sway, headTurn);
    }

    /** The desk's stand, between the partners and before them. */
    private void stand(Pieces pieces, Seated s) {
        double topM = scene.conditions().standM();
        double facing = Math.toRadians(s.sitter().facing().azimuthDeg());
        Vec forward = new Vec(0, 1, 0).turned(facing);
        Vec right = new Vec(1, 0, 0).turned(facing);
        Vec foot = s.spot().plus(new Vec(-BETWEEN_PARTNERS_M / 2, 0, 0)).plus(forward.times(0.95));
        Vec top = foot.plus(new Vec(0, 0, topM));
        Vec low = top.plus(new Vec(0, 0, -0.26)).minus(forward.times(0.1));
        pieces.line(foot, low, 0.025, new Color(0x1E1F22), 0);
        pieces.polygon(
                List.of(
                        top.plus(right.times(0.26)), top.minus(right.times(0.26)),
                        low.minus(right.times(0.26)), low.plus(right.times(0.26))),
                new Color(0x2A2C30),
                0);
    }

    /** Somebody walks past near the camera, from left to right, every eight seconds. */
    private void passer(Pieces pieces, double timeS) {
        double everyS = 8;
        double x = -3.2 + 6.4 * (timeS % everyS) / everyS * 1.6;
        Vec head = new Vec(x, -1.6, 1.45);
        pieces.limb(
                head.plus(new Vec(0, 0, -0.75)), 0.17, head.plus(new Vec(0, 0, -0.25)), 0.19, new Color(0x394150), 0);
        pieces.limb(head, 0.10, head.plus(new Vec(0, 0, -0.08)), 0.08, new Color(0x5A4030), 0);
    }

    private Vec spot(Sitter sitter) {
        int row = (sitter.desk() - 1) / scene.desksPerRow();
        int column = (sitter.desk() - 1) % scene.desksPerRow();
        double x = (column - (scene.desksPerRow() - 1) / 2.0) * BETWEEN_DESKS_M;
        double partner = sitter.place() == Place.OUTSIDE ? 0.5 : -0.5;
        return new Vec(x + partner * BETWEEN_PARTNERS_M, row * BETWEEN_ROWS_M, row * RISER_M);
    }

    /** The box in the picture in which the figures are, whatever they bow: x0, y0, x1, y1 in pixels. */
    private static double[] box(List<Seated> figures, Camera camera) {
        double[] box = {1e9, 1e9, -1e9, -1e9};
        for (Seated s : figures) {
            for (double bow = 0; bow <= 1; bow += 0.25) {
                Figure f = Figure.of(s.sitter().instrument(), bow, 0, 0.5, new Vec(0, 0, 0), 0);
                Vec top = f.head().plus(new Vec(0, 0, 0.17));
                Vec knee = new Vec(0.2, 0.5, 0.35);
                for (Vec own : List.of(
                        f.grip(),
                        f.tip(),
                        f.right().elbow(),
                        f.left().elbow(),
                        top,
                        knee,
                        new Vec(-0.2, 0.5, 0.35),
                        f.posture().scroll(),
                        f.posture().tail(),
                        f.posture().shoulderRight(),
                        f.posture().shoulderLeft())) {
                    Camera.Spot spot = camera.see(s.inRoom(own));
                    box[0] = Math.min(box[0], spot.xPx());
                    box[1] = Math.min(box[1], spot.yPx());
                    box[2] = Math.max(box[2], spot.xPx());
                    box[3] = Math.max(box[3], spot.yPx());
                }
            }
        }
        return box;
    }
}
