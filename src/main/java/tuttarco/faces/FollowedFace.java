package tuttarco.faces;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tuttarco.pose.Crop;
import tuttarco.pose.PersonFinder;
import tuttarco.pose.Pose;
import tuttarco.pose.PoseNets;
import tuttarco.seats.SeatBox;
import tuttarco.video.ClipFacts;
import tuttarco.video.Frame;

/** Follows one person's face from look to look: each time the pose model looks where the person was. */
final class FollowedFace {
    /** What the model sees counts if it is as likely as this a person, as when people are looked for. */
    private static final double LEAST_PERSON = 0.5;

    /** How far outside the seat, in its heights, its player's nose may be: heads lean out of a box drawn around a body (chosen). */
    private static final double LEANING = 0.25;

    /**
     * The model looks twice, the second time at a crop so much wider: following its own small crops it shrinks small, dark or
     * turned people onto their instrument (rendered scenes; 0.8 and 1.7 are worse).
     */
    private static final double WIDELY = 1.3;

    private final Optional<SeatBox> seat;
    private final List<SeatBox> othersSeats;
    private final ClipFacts clip;
    private final FaceTrack track;
    private Optional<Crop> crop;
    private Optional<Pose> seen = Optional.empty();
    private Optional<Pose> seenWidely = Optional.empty();

    private FollowedFace(Optional<SeatBox> seat, List<SeatBox> othersSeats, ClipFacts clip, Optional<Crop> crop) {
        this.seat = seat;
        this.othersSeats = othersSeats;
        this.clip = clip;
        this.track = FaceTrack.ofPerson(seat);
        this.crop = crop;
    }

    static FollowedFace seated(SeatBox seat, List<SeatBox> othersSeats, ClipFacts clip) {
        return new FollowedFace(Optional.of(seat), othersSeats, clip, Optional.empty());
    }

    /** Somebody found at a time. */
    static FollowedFace found(Pose pose, double timeS, ClipFacts clip) {
        FollowedFace face = new FollowedFace(Optional.empty(), List.of(), clip, Optional.of(Crop.around(pose)));
        face.seen = Optional.of(pose);
        face.keep(timeS);
        return face;
    }

    FaceTrack track() {
        return track;
    }

    /** Who was seen at the last look; empty if nobody. */
    Optional<Pose> seen() {
        return seen;
    }

    /** Looks for the person; what is seen is kept only with {@link #keep}. */
    void look(Frame frame, PoseNets nets) {
        seen = crop.map(c -> nets.with(net -> net.estimate(frame, c)))
                .filter(this::holds)
                .or(() -> seat.flatMap(box -> nets.with(net -> new PersonFinder(net).in(frame, box)))
                        .filter(this::holds));
        seenWidely = seen.map(Crop::around)
                .map(c -> nets.with(net -> net.estimate(frame, c.wider(WIDELY))))
                .filter(this::holds)
                .filter(pose -> !inAnothersSeat(pose));
        crop = seen.map(pose -> crop.map(c -> c.next(pose)).orElseGet(() -> Crop.around(pose)))
                .or(() -> seat.isPresent() ? Optional.empty() : crop);
    }

    private boolean holds(Pose pose) {
        double x = pose.nose().xPx();
        double y = pose.nose().yPx();
        boolean inPicture = x >= 0 && x < clip.widthPx() && y >= 0 && y < clip.heightPx();
        return pose.person() >= LEAST_PERSON
                && pose.upright()
                && inPicture
                && seat.map(box -> leansOut(box, x, y) <= LEANING * box.heightPx())
                        .orElse(true);
    }

    /** Whether the nose is outside the own seat and inside somebody else's. */
    private boolean inAnothersSeat(Pose pose) {
        return seat.filter(box -> !holds(box, pose)).isPresent()
                && othersSeats.stream().anyMatch(box -> holds(box, pose));
    }

    private static boolean holds(SeatBox box, Pose pose) {
        return leansOut(box, pose.nose().xPx(), pose.nose().yPx()) <= 0;
    }

    private static double leansOut(SeatBox box, double xPx, double yPx) {
        return Math.max(
                Math.max(box.xPx() - xPx, xPx - box.xPx() - box.widthPx()),
                Math.max(box.yPx() - yPx, yPx - box.yPx() - box.heightPx()));
    }

    /** Of two who were seen at the same place one was missed: who sits elsewhere. */
    void missed() {
        seen = Optional.empty();
        seenWidely = Optional.empty();
        crop = Optional.empty();
    }

    /** How far the face is from the middle of the seat's upper edge, in the seat's heights. */
    double outOfPlace() {
        FaceDisc disc = FaceDisc.of(seen.orElseThrow());
        return seat.map(box -> Math.hypot(disc.xPx() - box.xPx() - box.widthPx() / 2.0, disc.yPx() - box.yPx())
                        / box.heightPx())
                .orElse(Double.POSITIVE_INFINITY);
    }

    void keep(double timeS) {
        List<FaceDisc> discs = Stream.concat(seen.stream(), seenWidely.stream())
                .map(FaceDisc::of)
                .toList();
        track.looked(timeS, discs, seen.filter(this::inAnothersSeat).isEmpty());
    }
}
