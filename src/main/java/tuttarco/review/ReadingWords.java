package tuttarco.review;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.files.InputBytes;
import tuttarco.report.AnalysedTake;
import tuttarco.report.ReportWords;
import tuttarco.review.TakeReading.State;
import tuttarco.take.BeatsGiven;

/** How a reading stands, in words. */
public final class ReadingWords {
    private static final double MINUTE_S = 60;

    private ReadingWords() {}

    /** What was read, where to look first, and what is to be told of the reading; a line each. */
    public static String done(AnalysedTake take) {
        return Stream.concat(ReportWords.inShort(take).stream(), take.notes().stream())
                .collect(Collectors.joining("\n"));
    }

    /** A sentence or two; of a take that can be read also who is followed, and what that is compared with. */
    public static String of(State state, Optional<Draft> draft) {
        return state instanceof State.Ready && draft.isPresent()
                ? whatIsRead(draft.get()) + " " + of(state)
                : of(state);
    }

    private static String whatIsRead(Draft draft) {
        int players = draft.players().size();
        String who = players == 1 ? "1 player is read" : players + " players are read";
        boolean led = draft.part().isEmpty() && draft.beats() instanceof BeatsGiven.Missing;
        String with = draft.part()
                .map(part -> " and compared with the bowing of " + InputBytes.name(part))
                .orElse(" and compared with the leader");
        return who
                + with
                + (led
                        ? "'s strokes, as there is neither part nor beats."
                        : "; the beats are " + beats(draft.beats()) + ".");
    }

    private static String beats(BeatsGiven given) {
        if (given instanceof BeatsGiven.Anchored anchored) {
            return beats(anchored.source()) + " and held by hand where you held them";
        }
        if (given instanceof BeatsGiven.Listed listed) {
            return "those of " + InputBytes.name(listed.list());
        }
        if (given instanceof BeatsGiven.Carried carried) {
            return "those of " + InputBytes.name(carried.take());
        }
        if (given instanceof BeatsGiven.HeardClicks) {
            return "clicks heard in the sound";
        }
        return given instanceof BeatsGiven.Steady ? "a steady tempo" : "heard in the sound, by the part";
    }

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
        return "The bows are read. Look at the places to rehearse in Review, and set right there what the picture shows"
                + " otherwise.";
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
            return switch (notYet.step()) {
                case "open" -> "Open a video";
                case "seats" -> "Go to the seats";
                case "music" -> "Go to part and beats";
                default -> "Go to reading the bows";
            };
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
