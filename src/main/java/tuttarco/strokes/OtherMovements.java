package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/**
 * Tells bowing from what else an arm does. A reader takes every motion along the bow for a stroke; here each is judged
 * ({@link BowingChance}) together with those before and after it. What is no bowing (a plucked string, a turned page, a
 * clap, a scratched nose, a bow that is lifted and set anew) is {@link StrokeKind#STILL}; bowing too quick for strokes is
 * {@link StrokeKind#TREMOLO}. The confidence of a stroke that stays is that of its direction, as it was read.
 */
public final class OtherMovements {
    /** More likely bowing than not; and so unlikely that something else is claimed, as a direction is. */
    private static final double BOWING = 0.5;

    private static final double ELSE = 0.3;

    /** Less likely than this, a tremolo is not claimed, like a direction. */
    private static final double TREMOLO = 0.7;

    /** Who is never surely seen bowing, of him or her nothing is claimed: so sure one stroke must be. Rendered scenes, of 3 s too. */
    private static final double SURELY = 0.85;

    /** Who never bows so many strokes in turn does something else; a page is turned in two or three movements. */
    private static final int IN_TURN = 4;

    /** Shorter strokes, seconds, are believed beside longer ones, but alone they may be anything that is patted evenly. */
    private static final double CLEAR_S = 0.25;

    private OtherMovements() {}

    /**
     * The reading with what is no bowing told; left as it is if the player's body was not seen, since then nobody knows how
     * far the hand goes.
     */
    public static Reading told(Reading reading, ArmTrack track) {
        if (track.samples().stream().noneMatch(ArmSample.ByBody.class::isInstance)) {
            return reading;
        }
        List<Swing> swings = Swings.of(reading, track);
        double[] bowing = BowingChance.of(swings);
        boolean bows =
                IntStream.range(0, bowing.length).anyMatch(i -> !swings.get(i).quick() && bowing[i] >= SURELY)
                        && mostInTurn(swings, bowing) >= IN_TURN;
        List<Stroke> told = new ArrayList<>();
        for (int i = 0; i < bowing.length; i++) {
            add(told, told(swings.get(i), bowing[i], bows));
        }
        return new Reading(reading.player(), told);
    }

    /**
     * Most strokes that follow each other to and fro without a rest between them; a tremolo between them is none, and quick
     * ones don't count.
     */
    private static int mostInTurn(List<Swing> swings, double[] bowing) {
        int most = 0;
        int inTurn = 0;
        double lastWay = 0;
        for (int i = 0; i < bowing.length; i++) {
            Swing swing = swings.get(i);
            if (swing.quick()) {
                lastWay = 0;
            } else if (swing.moves() && bowing[i] >= BOWING) {
                int before = lastWay * swing.way() > 0 ? 0 : inTurn;
                inTurn = before + (swing.stroke().lengthS() < CLEAR_S ? 0 : 1);
                lastWay = swing.way();
                most = Math.max(most, inTurn);
            } else {
                inTurn = 0;
            }
        }
        return most;
    }

    private static Stroke told(Swing swing, double bowing, boolean bows) {
        Stroke stroke = swing.stroke();
        if (!swing.moves()) {
            return bows || stroke.kind().direction().isEmpty() ? stroke : unsure(stroke);
        }
        if (bowing < ELSE) {
            return new Stroke(stroke.startS(), stroke.endS(), StrokeKind.STILL, 1 - bowing);
        }
        if (bowing < BOWING) {
            return new Stroke(stroke.startS(), stroke.endS(), StrokeKind.UNSURE, bowing);
        }
        if (swing.quick()) {
            StrokeKind kind = bows && bowing >= TREMOLO ? StrokeKind.TREMOLO : StrokeKind.UNSURE;
            return new Stroke(stroke.startS(), stroke.endS(), kind, bowing);
        }
        return bows ? stroke : unsure(stroke);
    }

    private static Stroke unsure(Stroke stroke) {
        return new Stroke(stroke.startS(), stroke.endS(), StrokeKind.UNSURE, stroke.confidence());
    }

    /** Rests that follow each other are one. */
    private static void add(List<Stroke> strokes, Stroke next) {
        int last = strokes.size() - 1;
        if (next.kind() == StrokeKind.STILL && last >= 0 && strokes.get(last).kind() == StrokeKind.STILL) {
            Stroke before = strokes.get(last);
            double together = before.lengthS() * before.confidence() + next.lengthS() * next.confidence();
            double confidence = Math.min(1, together / (next.endS() - before.startS()));
            strokes.set(last, new Stroke(before.startS(), next.endS(), StrokeKind.STILL, confidence));
        } else {
            strokes.add(next);
        }
    }
}
