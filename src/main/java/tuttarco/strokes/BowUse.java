package tuttarco.strokes;

import java.util.Locale;

/** How much bow a stroke took, and where in the bow it lay. */
public sealed interface BowUse {
    /** The length is known. */
    sealed interface Measured extends BowUse {
        /** Way of the bow hand along the bow as the picture shows it: foreshortened where the bow points at the camera. */
        double lengthShoulderWidths();

        /** The same as a share of the longest measured stroke of the player. */
        double lengthShare();
    }

    /** The length is known, the place in the bow is not. */
    record Length(double lengthShoulderWidths, double lengthShare) implements Measured {}

    /**
     * Both are known.
     *
     * @param part in which the middle of the stroke lies
     * @param confidence that it does, 0 to 1, if the stroke itself is read right
     */
    record Placed(double lengthShoulderWidths, double lengthShare, BowPart part, double confidence)
            implements Measured {}

    /** Neither is known. */
    record Unknown(Reason reason) implements BowUse {}

    /** Why the use of the bow is not known. */
    enum Reason {
        /** The span is no down-bow or up-bow. */
        NO_STROKE,
        /** The stroke is so short that a fast hand would have been lost on the way. */
        TOO_SHORT,
        /** The player's body was not seen, so that there is no unit of length. */
        NO_BODY,
        /** Too much of what was seen moved otherwise than along the bow, in this stroke or in most of the player's. */
        UNCLEAR;

        /** The word used in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
