package tuttarco.tracks;

/** What was seen of one bow arm at one presentation time. */
public sealed interface ArmSample {
    /** Presentation time, seconds from the clip's start. */
    double timeS();

    /** The arm was seen. */
    sealed interface Seen extends ArmSample {
        /**
         * Speed of the bow hand along the bow, shoulder widths of the player per second; positive towards the tip
         * (down-bow).
         */
        double velocity();

        /** Standard deviation of the velocity, same unit. */
        double noise();

        /** How likely it is, 0.5 to 1, that positive velocity really is towards the tip. */
        double sign();

        /** What the arm shows besides. */
        Gesture gesture();
    }

    /**
     * The hand was followed by flow from where a pose last showed it; which way is down is known from the body.
     *
     * @param reach distance of the bow hand from the strings in the picture, shoulder widths, as poses show it
     */
    record ByBody(double timeS, double velocity, double noise, double sign, double reach, Gesture gesture)
            implements Seen {
        public ByBody {
            requireSign(sign);
        }

        public ByBody(double timeS, double velocity, double noise, double sign, double reach) {
            this(timeS, velocity, noise, sign, reach, Gesture.NONE);
        }
    }

    /** Flow alone was seen; which way is down is known from what was declared. */
    record ByFlow(double timeS, double velocity, double noise, double sign, Gesture gesture) implements Seen {
        public ByFlow {
            requireSign(sign);
        }

        public ByFlow(double timeS, double velocity, double noise, double sign) {
            this(timeS, velocity, noise, sign, Gesture.NONE);
        }
    }

    /** The arm was not seen. */
    record Lost(double timeS, Reason reason) implements ArmSample {}

    /** Why an arm was not seen. */
    enum Reason {
        /** Somebody or something is before the bow hand, or moves before the player. */
        HIDDEN("the bow hand is hidden"),
        /** The bow hand is outside the picture. */
        OUT_OF_PICTURE("the bow hand is outside the picture"),
        /** The picture is too dark to follow anything. */
        TOO_DARK("it is too dark"),
        /** The seat box is too small to hold an arm. */
        TOO_SMALL("the player is too small in the picture"),
        /** Too few frames a second to tell one stroke from the next. */
        TOO_FEW_FRAMES("there are too few frames a second"),
        /** Another view is shown than the one the seat was drawn in, or a dissolve. */
        OTHER_VIEW("another view is shown");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** The reason as half a sentence. */
        public String words() {
            return words;
        }
    }

    private static void requireSign(double sign) {
        if (!(sign >= 0.5 && sign <= 1)) {
            throw new IllegalArgumentException("how sure a sign is lies in 0.5 to 1: " + sign);
        }
    }
}
