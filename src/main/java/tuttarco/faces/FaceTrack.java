package tuttarco.faces;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.util.ResizableDoubleArray;
import tuttarco.seats.SeatBox;

/**
 * One person's face as it was looked at now and then. Between two looks all of the way from one place to the other is the
 * face's; where it was missed, what is known is held and widened, and in the end the upper part of the seat counts.
 */
final class FaceTrack {
    /** A picture this near to a look shows the face where it was seen, seconds: three frames (chosen). */
    private static final double AT_LOOK_S = 0.1;

    /** A face is followed where it was seen no longer ago than this, and is seen again as soon, seconds (chosen). */
    private static final double FOLLOWED_S = 2;

    /** Somebody is held for so long after being seen, and before, seconds (chosen: as long as a search for people is away). */
    static final double PERSON_HELD_S = 20;

    /** How much wider a face is blurred that was missed (chosen). */
    private static final double WIDER = 1.5;

    /** Of a seat's height, how far down its head may be, and how far up and aside from the box drawn (chosen, wide). */
    private static final double HEAD_DOWN = 0.5;

    private static final double BEYOND = 0.15;

    private final Optional<SeatBox> seat;
    private final double heldS;
    private final ResizableDoubleArray timesS = new ResizableDoubleArray();
    private final List<Optional<FaceDisc>> looks = new ArrayList<>();

    private FaceTrack(Optional<SeatBox> seat, double heldS) {
        this.seat = seat;
        this.heldS = heldS;
    }

    /** Of somebody who may have a seat. */
    static FaceTrack ofPerson(Optional<SeatBox> seat) {
        return new FaceTrack(seat, PERSON_HELD_S);
    }

    /** Of a face without a body, which may be none. */
    static FaceTrack ofSpot(double heldS) {
        return new FaceTrack(Optional.empty(), heldS);
    }

    void looked(double timeS, Optional<FaceDisc> seen) {
        timesS.addElement(timeS);
        looks.add(seen);
    }

    /** What to blur of this person at a time. */
    List<Shape> at(double timeS) {
        Optional<Integer> before = lastSeen(timeS + AT_LOOK_S);
        Optional<Integer> after = firstSeen(timeS - AT_LOOK_S);
        if (before.isPresent() && before.equals(after)) {
            return List.of(circle(looks.get(before.get()).orElseThrow()));
        }
        double agoS = before.map(i -> timeS - timesS.getElement(i)).orElse(Double.POSITIVE_INFINITY);
        double soonS = after.map(i -> timesS.getElement(i) - timeS).orElse(Double.POSITIVE_INFINITY);
        boolean followed = agoS < FOLLOWED_S && soonS < FOLLOWED_S;
        boolean missed = !followed || after.get() - before.get() > 1;
        List<Shape> shapes = new ArrayList<>();
        Optional<FaceDisc> from = before.filter(i -> agoS < heldS).flatMap(looks::get);
        Optional<FaceDisc> to = after.filter(i -> soonS < heldS).flatMap(looks::get);
        double times = missed ? WIDER : 1;
        if (followed) {
            shapes.add(way(from.orElseThrow().wider(times), to.orElseThrow().wider(times)));
        } else {
            from.ifPresent(disc -> shapes.add(circle(disc.wider(times))));
            to.ifPresent(disc -> shapes.add(circle(disc.wider(times))));
            seat.ifPresent(box -> shapes.add(upperPart(box)));
        }
        return shapes;
    }

    private Optional<Integer> lastSeen(double untilS) {
        for (int i = count(untilS) - 1; i >= 0; i--) {
            if (looks.get(i).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private Optional<Integer> firstSeen(double fromS) {
        for (int i = count(Math.nextDown(fromS)); i < looks.size(); i++) {
            if (looks.get(i).isPresent()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** How many looks were no later. */
    private int count(double untilS) {
        int low = 0;
        int high = looks.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (timesS.getElement(middle) <= untilS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static Shape circle(FaceDisc disc) {
        return new Ellipse2D.Double(
                disc.xPx() - disc.radiusPx(), disc.yPx() - disc.radiusPx(), 2 * disc.radiusPx(), 2 * disc.radiusPx());
    }

    private static Shape way(FaceDisc from, FaceDisc to) {
        float widthPx = (float) (2 * Math.max(from.radiusPx(), to.radiusPx()));
        return new BasicStroke(widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                .createStrokedShape(new Line2D.Double(from.xPx(), from.yPx(), to.xPx(), to.yPx()));
    }

    private static Shape upperPart(SeatBox box) {
        double besidesPx = BEYOND * box.heightPx();
        return new Rectangle2D.Double(
                box.xPx() - besidesPx,
                box.yPx() - besidesPx,
                box.widthPx() + 2 * besidesPx,
                HEAD_DOWN * box.heightPx() + besidesPx);
    }
}
