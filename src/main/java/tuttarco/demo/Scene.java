package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tuttarco.score.Part;
import tuttarco.take.Bowing;

/**
 * Everything a rendered clip depends on; the same scene always gives the same frames.
 *
 * @param name file name without ending: letters, digits and hyphens
 * @param cast the players in seating order, two to a desk, the leader first
 * @param stops where they stop and go on, in the order played
 */
record Scene(
        String name,
        String title,
        List<Cast> cast,
        Part part,
        double tempoBpm,
        Bowing bowing,
        Picture picture,
        Conditions conditions,
        Sound sound,
        Acoustics acoustics,
        List<Stop> stops,
        long seed) {
    /** What is heard. */
    enum Sound {
        NONE,
        CLICKS,
        TONES
    }

    static final int MOST_PLAYERS = 60;
    /** Time before the first beat, and after the last bar, in which the bows are still, seconds. */
    static final double LEAD_IN_S = 1.0;

    static final double TAIL_S = 0.8;
    /** By how much a frame may come early or late where the rate varies, as a share of the mean interval. */
    private static final double RATE_VARIES = 0.45;

    Scene {
        cast = List.copyOf(cast);
        stops = List.copyOf(stops);
        if (!name.matches("[a-z0-9-]+")) {
            throw new IllegalArgumentException("a scene is named in small letters, digits and hyphens, not " + name);
        }
        if (cast.isEmpty() || cast.size() > MOST_PLAYERS) {
            throw new IllegalArgumentException("a section has 1 to " + MOST_PLAYERS + " players, not " + cast.size());
        }
        if (!(tempoBpm >= 20 && tempoBpm <= 300)) {
            throw new IllegalArgumentException("a tempo lies between 20 and 300 beats a minute, not " + tempoBpm);
        }
    }

    /** A scene in a quiet room, played through once. */
    Scene(
            String name,
            String title,
            List<Cast> cast,
            Part part,
            double tempoBpm,
            Bowing bowing,
            Picture picture,
            Conditions conditions,
            Sound sound,
            long seed) {
        this(
                name,
                title,
                cast,
                part,
                tempoBpm,
                bowing,
                picture,
                conditions,
                sound,
                Acoustics.QUIET_ROOM,
                List.of(),
                seed);
    }

    Tempo tempo() {
        return new Tempo(part, tempoBpm, LEAD_IN_S, stops);
    }

    /** Presentation time of each frame, seconds, from 0 on. */
    List<Double> frameTimesS() {
        int frames = (int) Math.round((tempo().endS() + TAIL_S) * picture.framesPerS());
        Random random = new Random(seed * 31 + 7);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < frames; i++) {
            boolean moved = picture.varying() && i > 0;
            double late = moved ? RATE_VARIES * (2 * random.nextDouble() - 1) : 0;
            times.add((i + late) / picture.framesPerS());
        }
        return times;
    }

    /** Length of the clip, seconds. */
    double durationS() {
        return frameTimesS().size() / picture.framesPerS();
    }

    Scene with(Conditions newConditions) {
        return new Scene(
                name, title, cast, part, tempoBpm, bowing, picture, newConditions, sound, acoustics, stops, seed);
    }

    Scene atTempo(double newTempoBpm) {
        return new Scene(
                name, title, cast, part, newTempoBpm, bowing, picture, conditions, sound, acoustics, stops, seed);
    }

    Scene with(Picture newPicture) {
        return new Scene(
                name, title, cast, part, tempoBpm, bowing, newPicture, conditions, sound, acoustics, stops, seed);
    }

    /** With everyone's tones, heard so. */
    Scene sounding(Acoustics newAcoustics) {
        return new Scene(
                name, title, cast, part, tempoBpm, bowing, picture, conditions, Sound.TONES, newAcoustics, stops, seed);
    }

    Scene stopping(Stop... newStops) {
        return new Scene(
                name,
                title,
                cast,
                part,
                tempoBpm,
                bowing,
                picture,
                conditions,
                sound,
                acoustics,
                List.of(newStops),
                seed);
    }
}
