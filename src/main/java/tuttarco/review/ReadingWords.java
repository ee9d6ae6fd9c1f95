package tuttarco.review;

import java.util.Locale;
import tuttarco.review.TakeReading.State;

/** How a reading stands, in words. */
public final class ReadingWords {
    private static final double MINUTE_S = 60;

    private ReadingWords() {}

    /** A sentence or two. */
    public static String of(State state) {
        if (state instanceof State.NotYet notYet) {
            return notYet.sentence();
        }
        if (state instanceof State.Ready) {
            return "Every bow arm is followed through the whole video. You can go on working meanwhile; what is read is"
                    + " kept, also when you stop.";
        }
        if (state instanceof State.Going going) {
            return far(going);
        }
        if (state instanceof State.Stopping) {
            return "Stopping; what was read is kept.";
        }
        if (state instanceof State.Stopped stopped) {
            return "Stopped after " + clock(stopped.readS()) + " of the video. Reading goes on from there.";
        }
        if (state instanceof State.Failed failed) {
            return failed.sentence();
        }
        return "The bows are read.";
    }

    private static String far(State.Going going) {
        String read = "Read " + clock(going.readS())
                + going.lengthS().map(l -> " of " + clock(l)).orElse("");
        return read
                + going.remainingS()
                        .map(r -> "; about " + duration(r) + " to go.")
                        .orElse(".");
    }

    /** What comes next. */
    public static String next(State state) {
        if (state instanceof State.NotYet notYet) {
            return notYet.step().equals("open") ? "Open a video" : "Go to the seats";
        }
        if (state instanceof State.Stopped) {
            return "Go on reading";
        }
        if (state instanceof State.Failed) {
            return "Try again";
        }
        return state instanceof State.Done ? "Look at it" : "Begin reading";
    }

    /** How much is done, 0 to 1. */
    public static double share(State state) {
        if (state instanceof State.Going going) {
            return going.lengthS().map(l -> Math.min(1, going.readS() / l)).orElse(0.0);
        }
        return state instanceof State.Done ? 1 : 0;
    }

    /** As a clip's clock says it: 1:05. */
    private static String clock(double s) {
        long whole = (long) s;
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    /** As one says it of what is to come: no closer than it is known. */
    private static String duration(double s) {
        if (s < MINUTE_S) {
            long tens = Math.max(1, (long) Math.ceil(s / 10));
            return tens * 10 + " seconds";
        }
        long minutes = (long) Math.ceil(s / MINUTE_S);
        return minutes == 1 ? "a minute" : minutes + " minutes";
    }
}
