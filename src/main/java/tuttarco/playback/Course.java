package tuttarco.playback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way through a clip from a place on: straight on, or round a loop for ever. A place on it is told by how much of the
 * clip was run through to reach it, seconds of the clip; at another speed it only takes another time.
 */
final class Course {
    /** Far less than a sample; seconds. */
    private static final double ROUNDING_S = 1e-9;

    private final double fromS;
    private final Optional<Loop> loop;

    private Course(double fromS, Optional<Loop> loop) {
        this.fromS = fromS;
        this.loop = loop;
    }

    /** From a place on, which is the loop's beginning where it lies behind the loop. */
    static Course from(double timeS, Optional<Loop> loop) {
        boolean behind =
                loop.filter(stretch -> timeS >= stretch.toS() - ROUNDING_S).isPresent();
        return new Course(behind ? loop.orElseThrow().fromS() : Math.max(0, timeS), loop);
    }

    /**
     * A part of the course in which the clip's time runs straight on.
     *
     * @param clipS where it begins, in the clip
     * @param fromS where it begins on the course
     * @param toS where it ends on the course
     */
    record Stretch(double clipS, double fromS, double toS) {}

    /** The stretches between two places on the course. */
    List<Stretch> between(double fromRunS, double toRunS) {
        List<Stretch> stretches = new ArrayList<>(1);
        double at = fromRunS;
        while (at < toRunS - ROUNDING_S) {
            double end = Math.min(toRunS, beginS(lap(at) + 1));
            stretches.add(new Stretch(clipS(at), at, end));
            at = end;
        }
        return stretches;
    }

    /** Where in the clip a place on the course is. */
    double clipS(double runS) {
        int lap = lap(runS);
        return clipBeginS(lap) + Math.max(0, runS - beginS(lap));
    }

    /** Where on the course a place in the clip is in a lap, counted from 0; the lap's beginning for places before that. */
    double runS(double clipS, int lap) {
        return beginS(lap) + Math.max(0, clipS - clipBeginS(lap));
    }

    /** Where in the clip a lap begins. */
    double clipBeginS(int lap) {
        return lap == 0 ? fromS : loop.orElseThrow().fromS();
    }

    /** Whether a place in the clip lies behind the end of every lap. */
    boolean behind(double clipS) {
        return loop.filter(stretch -> clipS >= stretch.toS() - ROUNDING_S).isPresent();
    }

    boolean endless() {
        return loop.isPresent();
    }

    private int lap(double runS) {
        if (loop.isEmpty() || runS < beginS(1) - ROUNDING_S) {
            return 0;
        }
        return 1 + (int) Math.floor((runS - beginS(1) + ROUNDING_S) / loop.get().lengthS());
    }

    /** Where on the course a lap begins; the first one begins at 0. */
    private double beginS(int lap) {
        if (lap == 0) {
            return 0;
        }
        return loop.map(stretch -> stretch.toS() - fromS + (lap - 1) * stretch.lengthS())
                .orElse(Double.POSITIVE_INFINITY);
    }
}
