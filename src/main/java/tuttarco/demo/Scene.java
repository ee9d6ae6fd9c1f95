package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.score.Part;
import tuttarco.take.Bowing;

/**
 * Everything a rendered take is made of.
 *
 * @param name file name of the take, without ending
 * @param title what the take is called
 * @param desksPerRow desks side by side
 * @param part the part as marked for the whole section
 */
record Scene(
        String name,
        String title,
        long seed,
        int widthPx,
        int heightPx,
        double framesPerS,
        Tempo tempo,
        Bowing bowing,
        int desksPerRow,
        List<Sitter> sitters,
        Conditions conditions,
        Sound sound) {
    /** More players than an orchestra has strings. */
    private static final int MOST_PLAYERS = 60;

    /** Silence after the last note, seconds. */
    private static final double TAIL_S = 1.0;

    /** How unevenly an uneven camera takes its frames: share of the frame length, and share of frames left out. */
    private static final double UNEVENNESS = 0.25;

    private static final double LEFT_OUT = 0.06;

    Scene {
        if (sitters.isEmpty() || sitters.size() > MOST_PLAYERS) {
            throw new IllegalArgumentException(
                    "a section has 1 to " + MOST_PLAYERS + " players, not " + sitters.size());
        }
        if (widthPx % 2 != 0 || heightPx % 2 != 0 || widthPx < 64 || heightPx < 64) {
            throw new IllegalArgumentException("a picture has an even size of at least 64 pixels");
        }
        if (!(framesPerS >= 10 && framesPerS <= 120)) {
            throw new IllegalArgumentException("frames a second lie in 10 to 120, not " + framesPerS);
        }
        sitters = List.copyOf(sitters);
    }

    Part part() {
        return tempo.part();
    }

    double endS() {
        return tempo.endS() + TAIL_S;
    }

    /** Presentation times of the frames, seconds. */
    List<Double> frameTimesS() {
        Random random = new Random(seed + 1);
        List<Double> times = new ArrayList<>();
        int frames = (int) Math.floor(endS() * framesPerS);
        for (int i = 0; i < frames; i++) {
            double offset = conditions.unevenRate() ? UNEVENNESS * (2 * random.nextDouble() - 1) : 0;
            boolean leftOut = conditions.unevenRate() && random.nextDouble() < LEFT_OUT;
            if (i == 0) {
                times.add(0.0);
            } else if (!leftOut) {
                times.add((i + offset) / framesPerS);
            }
        }
        return times;
    }

    BowMotion motion(Sitter sitter) {
        long own = seed * 1000 + sitters.indexOf(sitter);
        return BowPlanner.plan(new NotePlanner(own).plan(tempo, sitter.deviations()), endS());
    }

    Scene under(Conditions other) {
        return new Scene(
                name, title, seed, widthPx, heightPx, framesPerS, tempo, bowing, desksPerRow, sitters, other, sound);
    }

    Scene at(double otherFramesPerS) {
        return new Scene(
                name,
                title,
                seed,
                widthPx,
                heightPx,
                otherFramesPerS,
                tempo,
                bowing,
                desksPerRow,
                sitters,
                conditions,
                sound);
    }
}
