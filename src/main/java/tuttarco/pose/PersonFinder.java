package tuttarco.pose;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.bytedeco.opencv.opencv_core.Mat;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;

/**
 * Finds the first crop of a player in a seat box, which may be drawn around the upper body or the whole figure, and not
 * quite in place. From a guessed crop the model itself leads to a better one, a few times over; of several guesses the
 * first is taken that shows a person who fills the seat, or else the best.
 */
public final class PersonFinder {
    /** A seat at least this high to its width holds the whole figure; an upper body with the bow is about as wide as high. */
    private static final double WHOLE_FIGURE = 1.25;

    /** Share of a seated whole figure's height, from the top, that the upper body takes. */
    private static final double UPPER_SHARE = 0.62;

    /** Where a person's middle is, from the seat's centre line and top, and the crop's side, all in seat heights. */
    private record Guess(double right, double down, double side) {
        Crop in(SeatBox seat) {
            return new Crop(
                    seat.xPx() + seat.widthPx() / 2.0 + right * seat.heightPx(),
                    seat.yPx() + down * seat.heightPx(),
                    side * seat.heightPx());
        }
    }

    /** Hips lie at the lower edge of a box around the upper body; beside it if the box is not in place. */
    private static final List<Guess> UPPER_BODY = List.of(
            new Guess(0, 1.0, 2.5), new Guess(0, 0.7, 1.8), new Guess(0.3, 1.0, 2.5), new Guess(-0.3, 1.0, 2.5));

    /** A seated figure from head to knees has its hips a little below the middle, higher in a box too low. */
    private static final List<Guess> WHOLE =
            List.of(new Guess(0, 0.5, 1.3), new Guess(0, 0.4, 1.1), new Guess(0, 0.7, 1.8));

    /** How often the model leads to a better crop at most. */
    private static final int STEPS = 3;

    /** A person this sure, and this well in the seat, needs no further guess. */
    private static final double SURE = 0.9;

    private static final double WELL_SEATED = 0.3;

    /**
     * A person who fills the seat less sits elsewhere: on a real stage listeners in the box came to 0.11 at most, the player
     * to 0.29 at least.
     */
    private static final double SEATED = 0.2;

    /** With less, nobody sits here. */
    private static final double LEAST_PERSON = 0.2;

    private final PoseNet net;

    public PersonFinder(PoseNet net) {
        this.net = net;
    }

    /** The pose of the player in the seat; empty if there seems to be nobody. */
    public Optional<Pose> in(Frame frame, SeatBox seat) {
        Optional<Found> best = Optional.empty();
        for (Guess guess : holdsWholeFigure(seat) ? WHOLE : UPPER_BODY) {
            Found found = follow(frame.grey(), guess.in(seat), seat);
            if (found.pose().person() >= SURE && found.seated() >= WELL_SEATED) {
                return Optional.of(found.pose());
            }
            if (found.pose().person() >= LEAST_PERSON && found.seated() >= SEATED) {
                best = best.filter(b -> b.score() >= found.score()).or(() -> Optional.of(found));
            }
        }
        // who was not clear at once is looked at once more
        return best.map(found -> net.estimate(frame.grey(), Crop.around(found.pose())));
    }

    private record Found(Pose pose, double seated) {
        double score() {
            return pose.person() * seated;
        }
    }

    private Found follow(Mat grey, Crop guess, SeatBox seat) {
        Crop crop = guess;
        Pose pose = net.estimate(grey, crop);
        for (int i = 1; i < STEPS && !crop.near(Crop.around(pose)); i++) {
            crop = Crop.around(pose);
            pose = net.estimate(grey, crop);
        }
        return new Found(pose, seated(pose, seat, grey));
    }

    /**
     * Common area of the person's visible upper body and of where the seat holds one, over the area of both; none for a
     * body made up from two people, one behind the other, whose head is where its chest should be.
     */
    private static double seated(Pose pose, SeatBox seat, Mat grey) {
        if (!pose.upright()) {
            return 0;
        }
        List<Landmark> body = pose.landmarks().subList(0, Pose.UPPER_BODY);
        double left = Math.max(0, min(body, Landmark::xPx));
        double top = Math.max(0, min(body, Landmark::yPx));
        double right = Math.min(grey.cols(), -min(body, l -> -l.xPx()));
        double bottom = Math.min(grey.rows(), -min(body, l -> -l.yPx()));
        double bodyArea = Math.max(0, right - left) * Math.max(0, bottom - top);
        double heightPx = seat.heightPx() * (holdsWholeFigure(seat) ? UPPER_SHARE : 1);
        double common = Math.max(0, Math.min(right, seat.xPx() + seat.widthPx()) - Math.max(left, seat.xPx()))
                * Math.max(0, Math.min(bottom, seat.yPx() + heightPx) - Math.max(top, seat.yPx()));
        return common / (bodyArea + seat.widthPx() * heightPx - common);
    }

    private static boolean holdsWholeFigure(SeatBox seat) {
        return seat.heightPx() >= WHOLE_FIGURE * seat.widthPx();
    }

    private static double min(List<Landmark> landmarks, ToDoubleFunction<Landmark> coordinate) {
        return landmarks.stream().mapToDouble(coordinate).min().orElseThrow();
    }
}
