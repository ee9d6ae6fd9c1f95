package tuttarco.video;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells where one shot ends and the next begins, from the thumbnails of frames that come one after another.
 *
 * <p>A cut is a leap from one frame to the next that is much larger than any other about it: a moving camera, a passer-by
 * or a flash make several in turn. In a dissolve every picture is a mixture of the one before and the one after.
 *
 * <p>References: B.-L. Yeo, B. Liu, Rapid scene analysis on compressed video, IEEE Trans. Circuits Syst. Video Technol. 5
 * (1995) 533 (thumbnails, and the leap that stands out); A. Hampapur, R. Jain, T. Weymouth, Production model based digital
 * video segmentation, Multimedia Tools Appl. 1 (1995) 9 (the dissolve as a mixture).
 *
 * <p>Differences from the papers: thumbnails are brought to the same mean and spread; of a leap only the cells count that
 * change most, so that a cut within one view shows too if an arm is elsewhere after it; the mixture is fitted by least
 * squares.
 *
 * <p>Limits: a cut after which hardly anything is elsewhere is not told from motion; neither is a dissolve within one
 * view, or one that takes much longer than two seconds.
 */
final class ShotDetector {
    /** A leap stands out among those within this time, seconds; as the dissolve's window chosen on rendered scenes. */
    private static final double ABOUT_S = 0.2;

    /**
     * A leap at a cut is at least this large, and this many times as large as any other about it. Measured at cuts to
     * another view: 2.4 and 35 times; at a rendered bow that leaps: 0.47, 2.9 times; without a cut, at the quickest arm of a
     * real clip: 0.34, 1.8 times; at a rendered head that turns past its hair: 0.28, 3.6 times.
     */
    private static final double LEAST_LEAP = 0.34;

    private static final double STANDS_OUT = 2.3;

    /** A dissolve is looked for over this time, seconds. */
    private static final double WINDOW_S = 0.8;

    /** Where in the window a picture has to be a mixture of its ends. */
    private static final List<Double> WITHIN = List.of(0.25, 0.5, 0.75);

    /** Over a window of a dissolve at least every other cell changes by this. A dissolve of a second: 0.2. */
    private static final double LEAST_CHANGE = 0.06;

    /**
     * What the mixture may leave unexplained, as a part of what the ends differ by. A rendered dissolve: 0.08; without one
     * at least 0.36, in a scene with a shaken camera.
     */
    private static final double MOST_REST = 0.25;

    /**
     * A camera that pans or zooms slowly makes mixtures too, but then the change is that of a picture that moves. A rendered
     * dissolve: 0.18 at most; pans and zooms over three stills that could be mixtures: 0.40 and more.
     */
    private static final double MOST_MOVED = 0.25;

    /** A picture this near to one end is not mixed, share of the other; in the window's middle it is surely. */
    private static final double UNMIXED = 0.05;

    private static final double SURELY_MIXED = 0.15;

    /** Times are compared to this, seconds. */
    private static final double ROUNDING_S = 1e-6;

    /** What was seen of a frame. */
    private static final class Look {
        final double timeS;
        final Thumbnail picture;
        final double leap;
        final double leapPerS;
        boolean dissolving;

        Look(double timeS, Thumbnail picture, double leap, double leapPerS) {
            this.timeS = timeS;
            this.picture = picture;
            this.leap = leap;
            this.leapPerS = leapPerS;
        }

        static Look first(double timeS, Thumbnail picture) {
            return new Look(timeS, picture, 0, 0);
        }

        /** Where frames are missing, more changes from one to the next. */
        Look next(double nextS, Thumbnail next) {
            double leap = next.leap(picture);
            return new Look(nextS, next, leap, leap / (nextS - timeS));
        }
    }

    /** Not older than is needed, so few. */
    private final List<Look> looks = new ArrayList<>();

    /** Takes the next frame. */
    void add(double timeS, Thumbnail picture) {
        looks.add(
                looks.isEmpty()
                        ? Look.first(timeS, picture)
                        : looks.get(looks.size() - 1).next(timeS, picture));
        while (looks.get(0).timeS < timeS - 2 * WINDOW_S) {
            looks.remove(0);
        }
        if (looks.get(0).timeS <= timeS - WINDOW_S) {
            lookForDissolve(firstAt(timeS - WINDOW_S));
        }
    }

    /** Whether a frame that was taken a little ago is the first after a cut. */
    boolean cutAt(double timeS) {
        Look look = looks.get(firstAt(timeS));
        double others = looks.stream()
                .filter(l -> l != look && Math.abs(l.timeS - timeS) <= ABOUT_S)
                .mapToDouble(l -> l.leapPerS)
                .max()
                .orElse(0);
        return look.leap >= LEAST_LEAP && look.leapPerS >= STANDS_OUT * others;
    }

    /** Whether a frame that was taken a little ago is part of a dissolve. */
    boolean dissolvesAt(double timeS) {
        return looks.get(firstAt(timeS)).dissolving;
    }

    private void lookForDissolve(int first) {
        Thumbnail from = looks.get(first).picture;
        Thumbnail to = looks.get(looks.size() - 1).picture;
        if (from.medianChange(to) < LEAST_CHANGE) {
            return;
        }
        double share = -SURELY_MIXED;
        for (double within : WITHIN) {
            Thumbnail.Mixture mixture = at(first, within).picture.mixtureOf(from, to);
            if (mixture.rest() > MOST_REST || mixture.share() < share || mixture.share() > 1 + SURELY_MIXED) {
                return;
            }
            share = mixture.share();
        }
        double middle = at(first, 0.5).picture.mixtureOf(from, to).share();
        if (middle > SURELY_MIXED && middle < 1 - SURELY_MIXED && from.moved(to) < MOST_MOVED) {
            looks.subList(first, looks.size()).stream()
                    .filter(l -> mixed(l.picture.mixtureOf(from, to).share()))
                    .forEach(l -> l.dissolving = true);
        }
    }

    private static boolean mixed(double share) {
        return share > UNMIXED && share < 1 - UNMIXED;
    }

    /** The look at a part of the time from one to the last. */
    private Look at(int first, double part) {
        double fromS = looks.get(first).timeS;
        double toS = looks.get(looks.size() - 1).timeS;
        return looks.get(firstAt(fromS + part * (toS - fromS)));
    }

    /** Number of the first look at a time or after it. */
    private int firstAt(double timeS) {
        int first = 0;
        while (first < looks.size() - 1 && looks.get(first).timeS < timeS - ROUNDING_S) {
            first++;
        }
        return first;
    }
}
