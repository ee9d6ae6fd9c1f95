package tuttarco.corrections;

import tuttarco.strokes.StrokeKind;

/** What a person who looked at the picture says instead of what was read. Times are seconds from the clip's start. */
public sealed interface Correction {
    /** Later than any clip there is, seconds: about eleven days. */
    double LATEST_S = 1e6;

    /**
     * What has to be read or measured anew. The tracks never are; the judgement of the section against its marking and its
     * leader always is, being quick.
     */
    Touched touches();

    /** What a correction makes invalid. */
    sealed interface Touched {
        /** One player's reading, and how much bow that player's strokes took; everybody else's stay the very same. */
        record OnePlayer(String label) implements Touched {}

        /** When the beats are; every reading stays the very same. */
        record Beats() implements Touched {}
    }

    /**
     * A player did this during a span. Whatever was read there gives way; strokes that reach out of the span keep what lies
     * outside.
     *
     * @param player the player's label in the take
     * @param kind anything but unsure, which nobody needs to say, and absent, for which there is {@link Absent}
     */
    record StrokeSet(String player, double fromS, double toS, StrokeKind kind) implements Correction {
        public StrokeSet {
            requireSpan(fromS, toS);
            if (kind == StrokeKind.UNSURE || kind == StrokeKind.ABSENT) {
                throw new IllegalArgumentException("a stroke can't be set to " + kind.word());
            }
        }

        @Override
        public Touched touches() {
            return new Touched.OnePlayer(player);
        }
    }

    /**
     * A player's change of bow came at another time. The two strokes that meet there stay what they are; one gets longer, the
     * other shorter.
     *
     * @param fromS when it was read; the player's change nearest to it is meant
     */
    record ChangeMoved(String player, double fromS, double toS) implements Correction {
        public ChangeMoved {
            requireMove(fromS, toS);
        }

        @Override
        public Touched touches() {
            return new Touched.OnePlayer(player);
        }
    }

    /** A player was not there during a span, which speaks neither for nor against anybody. */
    record Absent(String player, double fromS, double toS) implements Correction {
        public Absent {
            requireSpan(fromS, toS);
        }

        @Override
        public Touched touches() {
            return new Touched.OnePlayer(player);
        }
    }

    /**
     * A beat came at another time, between the beats before and after it, which stay where they are.
     *
     * @param bar the bar's number as printed
     * @param beat beat within the bar, from 1
     * @param fromS when it was; where the beat is played more than once, the playing nearest to it is meant
     */
    record BeatMoved(String bar, int beat, double fromS, double toS) implements Correction {
        public BeatMoved {
            requireMove(fromS, toS);
            if (bar.isBlank() || beat < 1) {
                throw new IllegalArgumentException("a beat is counted from 1 in a bar");
            }
        }

        @Override
        public Touched touches() {
            return new Touched.Beats();
        }
    }

    private static void requireSpan(double fromS, double toS) {
        requireTimes(fromS, toS);
        if (!(toS > fromS)) {
            throw new IllegalArgumentException("a span ends after it starts: " + fromS + " to " + toS);
        }
    }

    private static void requireMove(double fromS, double toS) {
        requireTimes(fromS, toS);
        if (fromS == toS) {
            throw new IllegalArgumentException("nothing moves from " + fromS + " to " + toS);
        }
    }

    private static void requireTimes(double fromS, double toS) {
        if (!(Math.abs(fromS) <= LATEST_S && Math.abs(toS) <= LATEST_S)) {
            throw new IllegalArgumentException("no clip has the times " + fromS + " and " + toS);
        }
    }
}
