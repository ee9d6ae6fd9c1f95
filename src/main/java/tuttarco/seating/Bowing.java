package tuttarco.seating;

import java.util.List;
import java.util.Optional;
import tuttarco.bow.BowDirection;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** Whether somebody bows, by how the arm went to and fro over the whole clip. */
enum Bowing {
    /** Down and up in turn, strokes as bows make them, for most of the time. */
    CLEAR,
    /** Some of it looks like bowing. */
    UNSURE,
    /** Nothing, or hardly anything, does. */
    NONE;

    /** Less is a plucked string, a clap, a tremor: seconds, and shoulder widths of the hand. Rendered scenes. */
    private static final double SHORTEST_S = 0.25;

    private static final double LEAST_WAY = 0.2;

    /** A stroke or a rest less likely than this tells nothing. */
    private static final double KNOWN = 0.8;

    /** Strokes in turn that bowing takes at the least: there and back twice. */
    private static final int LEAST_STROKES = 4;

    /** Share of the known time that strokes as bows make them take: a section has rests. Rendered scenes. */
    private static final double HALF_THE_TIME = 0.5;

    /** Someone who does less of it does something else now and then. */
    private static final double SOME_TIME = 0.35;

    /** @param reading what the arm did, with what is no bowing told from strokes */
    static Bowing of(ArmTrack track, Reading reading) {
        int inTurn = 0;
        double knownS = 0;
        double bowedS = 0;
        Optional<BowDirection> last = Optional.empty();
        for (Stroke stroke : reading.strokes()) {
            Optional<BowDirection> direction = stroke.kind().direction();
            boolean known = stroke.confidence() >= KNOWN;
            boolean likeABow =
                    direction.isPresent() && stroke.lengthS() >= SHORTEST_S && way(track, stroke) >= LEAST_WAY;
            if (known && stroke.kind() != StrokeKind.UNSEEN) {
                knownS += stroke.lengthS();
            }
            if (known && likeABow) {
                bowedS += stroke.lengthS();
                inTurn += direction.equals(last) ? 0 : 1;
                last = direction;
            }
        }
        if (inTurn < LEAST_STROKES || bowedS < SOME_TIME * knownS) {
            return NONE;
        }
        return bowedS >= HALF_THE_TIME * knownS ? CLEAR : UNSURE;
    }

    /** How far the hand goes along the bow in a stroke, shoulder widths. */
    private static double way(ArmTrack track, Stroke stroke) {
        List<ArmSample.Seen> during = track.samples().stream()
                .filter(ArmSample.Seen.class::isInstance)
                .map(ArmSample.Seen.class::cast)
                .filter(s -> stroke.covers(s.timeS()))
                .toList();
        return stroke.lengthS()
                * Math.abs(during.stream()
                        .mapToDouble(ArmSample.Seen::velocity)
                        .average()
                        .orElse(0));
    }
}
