package tuttarco.faces;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import tuttarco.seats.SeatBox;

/**
 * One person's face as it was looked at now and then. Between two looks all of the way from one place to the other is the
 * face's; where it was missed, what is known is held and widened, and in the end the upper part of the seat counts. Where the
 * face usually is around that time counts always: for seconds at a time the model takes a hand or a scroll for it.
 */
final class FaceTrack {
    /** A picture this near to a look shows the face where it was seen, seconds: three frames (chosen). */
    private static final double AT_LOOK_S = 0.1;

    /** A face is followed where it was seen no longer ago than this, and is seen again as soon, seconds (chosen). */
    private static final double FOLLOWED_S = 2;

    /** Somebody is held for so long after being seen, and before, seconds (chosen: as long as a search for people is away). */
    static final double PERSON_HELD_S = 20;

    /** The usual place is taken from looks this long before and after, seconds: twice as long as a mistake lasts (rendered scenes). */
    private static final double USUAL_S = 5;

    /** Of the places seen, that with so many above it is the usual one: mistaken heads are too low, on hand or instrument (rendered scenes). */
    private static final double ABOVE = 0.25;

    /** How much wider a face is blurred that was missed (chosen). */
    private static final double WIDER = 1.5;

    /** Of a seat's height, how far down its head may be, and how far up and aside from the box drawn (chosen, wide). */
    private static final double HEAD_DOWN = 0.5;

    private static final double BEYOND = 0.15;

    /** A disc is drawn as a polygon of so many corners round it, at most 2 % wider. */
    private static final int CORNERS = 16;

    private final Optional<SeatBox> seat;
    private final double heldS;
    private final List<Look> looks = new ArrayList<>();

    /**
     * What a look saw.
     *
     * @param seen where the face may be; empty if it was missed
     * @param sure whether this person's face was seen, and not rather a neighbour's
     */
    private record Look(double timeS, List<FaceDisc> seen, boolean sure) {}

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

    /** Adds a look; see {@link Look}. */
    void looked(double timeS, List<FaceDisc> seen, boolean sure) {
        looks.add(new Look(timeS, List.copyOf(seen), sure));
    }

    /** What to blur of this person at a time. */
    List<Shape> at(double timeS) {
        Optional<Integer> before = lastSeen(timeS + AT_LOOK_S);
        Optional<Integer> after = firstSeen(timeS - AT_LOOK_S);
        double agoS = before.map(i -> timeS - looks.get(i).timeS()).orElse(Double.POSITIVE_INFINITY);
        double soonS = after.map(i -> looks.get(i).timeS() - timeS).orElse(Double.POSITIVE_INFINITY);
        boolean followed = agoS < FOLLOWED_S && soonS < FOLLOWED_S;
        double times = followed && after.get() - before.get() <= 1 ? 1 : WIDER;
        List<FaceDisc> from = discs(before.filter(i -> agoS < heldS), times);
        List<FaceDisc> to = discs(after.filter(i -> soonS < heldS), times);
        boolean sure = Stream.of(before, after)
                .flatMap(Optional::stream)
                .allMatch(i -> looks.get(i).sure());
        List<Shape> shapes = new ArrayList<>();
        if (followed) {
            shapes.add(around(joined(from, to)));
        } else {
            Stream.of(from, to).filter(discs -> !discs.isEmpty()).forEach(discs -> shapes.add(around(discs)));
        }
        if (!followed || !sure) {
            seat.ifPresent(box -> shapes.add(upperPart(box)));
        }
        usual(timeS).ifPresent(place -> {
            boolean there = joined(from, to).stream().anyMatch(place::same);
            shapes.add(around(List.of(there ? place : place.wider(WIDER))));
        });
        return shapes;
    }

    /** Where the face is most of the time around. */
    private Optional<FaceDisc> usual(double timeS) {
        double awayS = Math.min(USUAL_S, heldS);
        List<FaceDisc> places = new ArrayList<>();
        for (Look look : looks.subList(count(timeS - awayS), count(timeS + awayS))) {
            if (look.sure()) {
                places.addAll(look.seen());
            }
        }
        places.sort(Comparator.comparingDouble(FaceDisc::yPx));
        return places.isEmpty() ? Optional.empty() : Optional.of(places.get((int) (ABOVE * places.size())));
    }

    private List<FaceDisc> discs(Optional<Integer> look, double times) {
        List<FaceDisc> discs = new ArrayList<>();
        look.ifPresent(i -> looks.get(i).seen().forEach(disc -> discs.add(disc.wider(times))));
        return discs;
    }

    private static List<FaceDisc> joined(List<FaceDisc> some, List<FaceDisc> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private Optional<Integer> lastSeen(double untilS) {
        for (int i = count(untilS) - 1; i >= 0; i--) {
            if (!looks.get(i).seen().isEmpty()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private Optional<Integer> firstSeen(double fromS) {
        for (int i = count(Math.nextDown(fromS)); i < looks.size(); i++) {
            if (!looks.get(i).seen().isEmpty()) {
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
            if (looks.get(middle).timeS() <= untilS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The discs, all as large as the largest, and all that lies between them: their convex hull. */
    private static Shape around(List<FaceDisc> discs) {
        double radiusPx = discs.stream().mapToDouble(FaceDisc::radiusPx).max().orElseThrow();
        double cornerPx = radiusPx / Math.cos(Math.PI / CORNERS);
        List<Vector2D> corners = new ArrayList<>();
        for (FaceDisc disc : discs) {
            for (int i = 0; i < CORNERS; i++) {
                double angle = 2 * Math.PI * i / CORNERS;
                corners.add(
                        new Vector2D(disc.xPx() + cornerPx * Math.cos(angle), disc.yPx() + cornerPx * Math.sin(angle)));
            }
        }
        Path2D hull = new Path2D.Double();
        for (Vector2D corner : new MonotoneChain().findHullVertices(corners)) {
            if (hull.getCurrentPoint() == null) {
                hull.moveTo(corner.getX(), corner.getY());
            } else {
                hull.lineTo(corner.getX(), corner.getY());
            }
        }
        hull.closePath();
        return hull;
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
