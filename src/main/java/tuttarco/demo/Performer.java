package tuttarco.demo;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * A player on a chair: where it stands, how the bow moves, how the body lives.
 *
 * @param floor where the chair stands in the room, metres
 * @param doings what the player does other than bowing, and when
 * @param swivels how the player turns aside, and when
 * @param swayM how far the shoulders sway, metres
 */
record Performer(
        int index,
        Cast cast,
        Vec floor,
        BowMotion motion,
        List<Doing> doings,
        List<Swivel> swivels,
        double swayM,
        Looks looks,
        Rhythm rhythm) {
    /** Phases in radians and rates in hertz of the small movements of a body, one player's unlike another's. */
    record Rhythm(double[] phases, double[] ratesHz) {
        static Rhythm of(Random random) {
            double[] phases = random.doubles(6, 0, 2 * Math.PI).toArray();
            double[] rates = random.doubles(6, 0.12, 0.45).toArray();
            return new Rhythm(phases, rates);
        }

        double wave(int i, double timeS) {
            return Math.sin(phases[i] + 2 * Math.PI * ratesHz[i] * timeS);
        }
    }

    /** Turn of a violinist's head towards the scroll, radians (chosen on rendered scenes). */
    private static final double HEAD_TO_SCROLL_RAD = Math.toRadians(-24);

    int desk() {
        return index / 2 + 1;
    }

    Place place() {
        return index % 2 == 0 ? Place.OUTSIDE : Place.INSIDE;
    }

    String label() {
        return "Desk " + desk() + " " + place().word();
    }

    Instrument instrument() {
        return cast.instrument();
    }

    /** Where the chest points while the player does not turn aside. */
    Facing facing() {
        return cast.facing();
    }

    /** The player in a seat box, facing as seen in the picture. The first player leads. */
    Player player(SeatBox seat, Facing seen) {
        return new Player(label(), desk(), place(), instrument(), seat, Optional.of(seen), index == 0);
    }

    /** Joints at a time, in the player's own axes. */
    Figure figure(double timeS) {
        Travel travel = motion.at(timeS);
        Stance stance = playing(travel.place(timeS), travel.lift(timeS), timeS);
        for (Doing doing : doings) {
            stance = doing.change(stance, timeS);
        }
        return Figure.of(stance);
    }

    /** Joints while playing at a place of the bow, whatever the player does at that time. */
    Figure figure(double bow, double lift, double timeS) {
        return Figure.of(playing(bow, lift, timeS));
    }

    private Stance playing(double bow, double lift, double timeS) {
        Vec sway = new Vec(
                swayM * (rhythm.wave(0, timeS) + 0.4 * rhythm.wave(1, 2 * timeS)),
                0.7 * swayM * rhythm.wave(2, timeS),
                0.25 * swayM * rhythm.wave(3, timeS));
        double shift = 0.5 + 0.4 * rhythm.wave(4, timeS) + 0.05 * Math.sin(2 * Math.PI * 5.5 * timeS);
        double turn = (instrument().onShoulder() ? HEAD_TO_SCROLL_RAD : -0.1) + 0.12 * rhythm.wave(5, timeS);
        return Stance.playing(instrument(), bow, lift, shift, sway, turn);
    }

    /** The player's own axes at a time. */
    Axes axes(double timeS) {
        double asideDeg = swivels.stream().mapToDouble(s -> s.deg(timeS)).sum();
        return new Axes(floor, Math.toRadians(facing().azimuthDeg() + asideDeg), cast.leftHanded());
    }
}
