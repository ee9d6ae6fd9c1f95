package tuttarco.take;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.Beat;

/** How a take says where its beats lie. */
public sealed interface BeatsGiven {
    /** A day, longer than any clip. */
    double LATEST_S = 86_400;

    /** The file they come from, if they do. */
    default Optional<Path> file() {
        return Optional.empty();
    }

    /** Whether they can't be had without a part. */
    default boolean needPart() {
        return false;
    }

    /** Not at all: they are heard by the part, or where there is none, the leader's strokes take their place. */
    record Missing() implements BeatsGiven {}

    /** To be heard by the notes of the part. */
    record HeardByPart() implements BeatsGiven {
        static final String WORD = "part";

        @Override
        public boolean needPart() {
            return true;
        }
    }

    /**
     * To be heard from the clicks of a metronome, one a beat.
     *
     * @param firstBar the bar that begins with the first click; where it is not known, anchors must be
     */
    record HeardClicks(Optional<String> firstBar) implements BeatsGiven {
        static final String WORD = "clicks";

        @Override
        public boolean needPart() {
            return true;
        }
    }

    /** A list of bar, beat and seconds, as CSV. */
    record Listed(Path list) implements BeatsGiven {
        @Override
        public Optional<Path> file() {
            return Optional.of(list);
        }
    }

    /**
     * A steady tempo in the part's metre.
     *
     * @param tempoBpm beats a minute, a beat being the metre's lower figure
     * @param startS when the part's first beat sounds, seconds from the clip's start
     */
    record Steady(double tempoBpm, double startS) implements BeatsGiven {
        public Steady {
            if (!(tempoBpm >= 10 && tempoBpm <= 1000)) {
                throw new IllegalArgumentException("a tempo lies between 10 and 1000 beats a minute, not " + tempoBpm);
            }
            if (!(Math.abs(startS) <= LATEST_S)) {
                throw new IllegalArgumentException("a start is a time in seconds, at most a day, not " + startS);
            }
        }

        @Override
        public boolean needPart() {
            return true;
        }
    }

    /**
     * Carried over from another take that plays the same, by how the two sound.
     *
     * @param take the other take's file
     */
    record Carried(Path take) implements BeatsGiven {
        @Override
        public Optional<Path> file() {
            return Optional.of(take);
        }
    }

    /**
     * In one of the other ways, corrected by beats whose times somebody knows.
     *
     * @param anchors at least one
     */
    record Anchored(BeatsGiven source, List<Beat> anchors) implements BeatsGiven {
        public Anchored {
            anchors = List.copyOf(anchors);
            if (anchors.isEmpty()) {
                throw new IllegalArgumentException("there is no anchor in the list");
            }
            if (source instanceof Missing || source instanceof Anchored) {
                throw new IllegalArgumentException("anchors correct beats that are given in another way");
            }
        }

        @Override
        public boolean needPart() {
            return source.needPart();
        }

        @Override
        public Optional<Path> file() {
            return source.file();
        }
    }

    /** A beat whose time somebody knows. */
    static Beat anchor(String bar, int beat, double timeS) {
        if (!(Math.abs(timeS) <= LATEST_S)) {
            throw new IllegalArgumentException("an anchor has a time in seconds, at most a day, not " + timeS);
        }
        return new Beat(bar, beat, timeS);
    }
}
