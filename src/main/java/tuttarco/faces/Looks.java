package tuttarco.faces;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** At which pictures of a clip faces are looked for. */
public sealed interface Looks {
    /** Whether to look at a frame. */
    boolean due(double frameS, double frameLastsS, OptionalDouble lastLookS, int people);

    /** Whether faces without a body are looked for between these looks too: arms let them be seen for a moment. */
    boolean between();

    /** Steadily, so that faces can be followed; the more people, the seldomer. */
    static Looks steady() {
        return new Steady();
    }

    /** Only at the pictures seen at some times, seconds, in any order. */
    static Looks at(List<Double> timesS) {
        return new Listed(timesS.stream().mapToDouble(t -> t).sorted().toArray());
    }

    /** See {@link #steady}. */
    record Steady() implements Looks {
        /** So many people are looked at a second, twice each: a pose costs 30 to 40 ms of one core. */
        private static final double PEOPLE_PER_S = 8;

        /** From one look to the next, seconds: heads that sway stay near in the shorter, and are followed over the longer (chosen). */
        private static final double SOONEST_S = 0.4;

        private static final double LATEST_S = 1.5;

        @Override
        public boolean due(double frameS, double frameLastsS, OptionalDouble lastLookS, int people) {
            double intervalS = Math.min(LATEST_S, Math.max(SOONEST_S, people / PEOPLE_PER_S));
            return lastLookS.isEmpty() || frameS - lastLookS.getAsDouble() >= intervalS;
        }

        @Override
        public boolean between() {
            return true;
        }
    }

    /** See {@link #at}. */
    record Listed(double[] timesS) implements Looks {
        @Override
        public boolean due(double frameS, double frameLastsS, OptionalDouble lastLookS, int people) {
            int at = Arrays.binarySearch(timesS, frameS);
            int next = at >= 0 ? at : -at - 1;
            return next < timesS.length && timesS[next] < frameS + frameLastsS;
        }

        @Override
        public boolean between() {
            return false;
        }
    }
}
