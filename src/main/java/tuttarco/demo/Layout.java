package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.score.Bar;
import tuttarco.score.PartSpan.Position;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/** Where everyone sits and what the camera sees of it. */
record Layout(List<Performer> performers, List<Vec> stands, Camera camera, List<Player> players) {
    /** Distance of two players at a desk and of two desks, metres (common practice). */
    private static final double PAIR_M = 1.20;

    private static final double DESK_M = 1.45;
    /** Depth and height of a riser, metres (chosen so that a row shows above the heads before it). */
    private static final double ROW_M = 2.0;

    private static final double RISER_M = 0.55;
    /** From a player's chair forward to the stand, metres. */
    private static final double STAND_M = 0.95;
    /**
     * A lone stand nearer than this to the player in the picture, metres, would hide a large instrument and the knees, by
     * which a pose model knows a player: it stands on the other side then.
     */
    private static final double CLEAR_M = 0.3;
    /** By how much each player is ahead of the one before in what repeats itself, seconds (chosen: no common period). */
    private static final double AHEAD_S = 1.37;
    /** Room around the figure in its seat box, as a share of the box's height. */
    private static final double SEAT_MARGIN = 0.04;

    static Layout of(Scene scene) {
        List<Performer> performers = new ArrayList<>();
        int rows = Math.max(1, (int) Math.round(Math.sqrt(scene.cast().size() * 0.35)));
        int desksPerRow = Math.max(1, (int) Math.ceil(scene.cast().size() / (2.0 * rows)));
        for (int i = 0; i < scene.cast().size(); i++) {
            performers.add(performer(scene, i, floor(i, scene.cast().size(), desksPerRow)));
        }
        List<Vec> stands = new ArrayList<>();
        for (int i = 0; i < performers.size(); i += 2) {
            stands.add(stand(performers, i));
        }
        Camera camera = framed(performers, scene.picture(), rows);
        List<Player> players =
                performers.stream().map(p -> player(p, camera, scene.picture())).toList();
        return new Layout(performers, stands, camera, players);
    }

    /** The players' seats, as the first frame shows them. */
    List<SeatBox> seats() {
        return players.stream().map(Player::seat).toList();
    }

    private static Performer performer(Scene scene, int index, Vec floor) {
        Cast cast = scene.cast().get(index);
        Random random = new Random(scene.seed() * 1_000_003 + index);
        BowMotion motion = motion(scene, cast.deviations(), random.nextLong());
        return new Performer(
                index,
                cast,
                floor,
                motion,
                doings(scene.tempo(), cast.deviations(), AHEAD_S * index),
                swivels(scene.tempo(), cast.deviations()),
                scene.conditions().swayM(),
                Looks.of(random),
                Performer.Rhythm.of(random));
    }

    private static BowMotion motion(Scene scene, List<Deviation> deviations, long seed) {
        List<Note> notes = new NotePlanner(seed).plan(scene.tempo(), deviations);
        BowMotion motion = BowPlanner.plan(notes, scene.durationS());
        for (Deviation deviation : deviations) {
            if (deviation instanceof Deviation.OtherTake take) {
                List<Note> turned = notes.stream()
                        .map(n -> n.going(n.direction().opposite(), n.retaken()))
                        .toList();
                motion = motion.cutTo(BowPlanner.plan(turned, scene.durationS()), take.fromS());
            } else if (deviation instanceof Deviation.TakesBow takes) {
                Spell spell = spell(scene.tempo(), takes.firstBar(), takes.lastBar(), 0);
                double lagS = Deviation.lagS(deviations);
                motion = motion.drawn(
                        takes.share(),
                        takes.from(),
                        spell.startS() + lagS - NotePlanner.mostUnevenS(),
                        spell.endS() + lagS + NotePlanner.mostUnevenS());
            }
        }
        return motion;
    }

    private static List<Doing> doings(Tempo tempo, List<Deviation> deviations, double aheadS) {
        List<Doing> doings = new ArrayList<>();
        for (Deviation deviation : deviations) {
            if (deviation instanceof Deviation.Does does) {
                Spell spell = spell(tempo, does.firstBar(), does.lastBar(), Doing.WAY_S);
                doings.add(new Doing(does.activity(), spell, aheadS, does.pace()));
            }
        }
        return doings;
    }

    private static List<Swivel> swivels(Tempo tempo, List<Deviation> deviations) {
        List<Swivel> swivels = new ArrayList<>();
        for (Deviation deviation : deviations) {
            if (deviation instanceof Deviation.Swivels s) {
                swivels.add(new Swivel(s.byDeg(), spell(tempo, s.firstBar(), s.lastBar(), Swivel.WAY_S)));
            }
        }
        return swivels;
    }

    private static Spell spell(Tempo tempo, int firstBar, int lastBar, double wayS) {
        int last = lastBar - 1;
        Bar bar = tempo.part().bars().get(last);
        return new Spell(
                tempo.timeS(new Position(firstBar - 1, 1)),
                tempo.timeS(new Position(last, bar.firstBeat() + bar.lengthBeats())),
                wayS);
    }

    private static Vec floor(int index, int players, int desksPerRow) {
        if (players == 1) {
            return new Vec(0, 0, 0);
        }
        int desk = index / 2;
        int row = desk / desksPerRow;
        int inRow = Math.min(desksPerRow, (players + 1) / 2 - row * desksPerRow);
        double x = (desk % desksPerRow - (inRow - 1) / 2.0) * (PAIR_M + DESK_M)
                + (index % 2 == 0 ? -PAIR_M / 2 : PAIR_M / 2);
        return new Vec(x, row * ROW_M, row * RISER_M);
    }

    private static Vec stand(List<Performer> performers, int first) {
        Performer one = performers.get(first);
        boolean alone = first + 1 == performers.size();
        Performer other = performers.get(alone ? first : first + 1);
        Axes axes = one.axes(0);
        Vec forward = axes.direction(new Vec(alone ? -PAIR_M / 2 : 0, STAND_M, 0));
        if (alone && !one.instrument().onShoulder() && Math.abs(forward.x()) < CLEAR_M) {
            forward = axes.direction(new Vec(PAIR_M / 2, STAND_M, 0));
        }
        return one.floor().towards(other.floor(), 0.5).plus(forward);
    }

    private static Camera framed(List<Performer> performers, Picture picture, int rows) {
        Camera plain = new Camera(5.0 + 1.5 * rows, 1.7 + 0.35 * rows, Math.toRadians(6 + 4 * rows), 1, 0, 0);
        double[] box = {1e9, 1e9, -1e9, -1e9};
        for (Performer p : performers) {
            extend(box, p, plain, true);
        }
        double marginX = picture.widthPx() * (0.02 + (1 - picture.fill()) / 2);
        double marginY = picture.heightPx() * (0.03 + (1 - picture.fill()) / 2);
        return plain.framing(
                box[0],
                box[1],
                box[2],
                box[3],
                marginX,
                marginY,
                picture.widthPx() - marginX,
                picture.heightPx() - marginY);
    }

    private static Player player(Performer performer, Camera camera, Picture picture) {
        SeatBox seat = seat(performer, camera, picture);
        return picture.mirrored()
                ? performer.player(
                        seat.mirrored(picture.widthPx()), performer.facing().mirrored())
                : performer.player(seat, performer.facing());
    }

    /** The whole figure with the bow arm's reach, clipped to the picture. */
    private static SeatBox seat(Performer performer, Camera camera, Picture picture) {
        double[] box = {1e9, 1e9, -1e9, -1e9};
        extend(box, performer, camera, false);
        double margin = SEAT_MARGIN * (box[3] - box[1]);
        int x0 = (int) Math.max(0, Math.floor(box[0] - margin));
        int y0 = (int) Math.max(0, Math.floor(box[1] - margin));
        int x1 = (int) Math.min(picture.widthPx(), Math.ceil(box[2] + margin));
        int y1 = (int) Math.min(picture.heightPx(), Math.ceil(box[3] + margin));
        return new SeatBox(x0, y0, x1 - x0, y1 - y0);
    }

    private static void extend(double[] box, Performer p, Camera camera, boolean withBow) {
        for (int place = 0; place <= 4; place++) {
            Figure f = p.figure(place / 4.0, 0, 0);
            List<Vec> points = new ArrayList<>(List.of(
                    f.head().plus(new Vec(0, 0, 0.16)),
                    f.right().elbow().plus(new Vec(0.06, 0, 0)),
                    f.grip().plus(new Vec(0.08, 0, -0.05)),
                    f.left().elbow().plus(new Vec(-0.06, 0, 0)),
                    f.leftHand(),
                    f.posture().scroll(),
                    new Vec(-f.posture().kneeSpreadM() - 0.1, 0.5, 0),
                    new Vec(f.posture().kneeSpreadM() + 0.1, 0.5, 0)));
            if (withBow) {
                points.add(f.tip());
            }
            for (Vec point : points) {
                Camera.Spot spot = camera.see(p.axes(0).room(point));
                box[0] = Math.min(box[0], spot.xPx());
                box[1] = Math.min(box[1], spot.yPx());
                box[2] = Math.max(box[2], spot.xPx());
                box[3] = Math.max(box[3], spot.yPx());
            }
        }
    }
}
