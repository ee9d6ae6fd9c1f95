package tuttarco.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tuttarco.pose.FaceSpotter;
import tuttarco.pose.PeopleFinder;
import tuttarco.pose.Pose;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.ClipFacts;
import tuttarco.video.Frame;
import tuttarco.video.Shot;

/** Looks at the frames of a clip, one after another, for the faces of those who are in the picture. */
final class Looking {
    /** After a cut people are looked for again after this, and then after twice as long each time, up to this; seconds (chosen). */
    private static final double FIRST_AGAIN_S = 10;

    private static final double LONGEST_S = FaceTrack.PERSON_HELD_S;

    /** From one look for faces without a body to the next, and how long one is held before and after; seconds (chosen: an arm lets a face be seen for a moment). */
    private static final double SPOTTED_EVERY_S = 0.5;

    private static final double SPOT_HELD_S = 3;

    /** Chosen: rather too large than missed. */
    private static final double MUCH_LARGER = 1.3;

    private final PoseNets nets;
    private final PeopleFinder finder;
    private final FaceSpotter spotter;
    private final List<Player> players;
    private final ClipFacts clip;
    private final Looks when;
    private FacesInShot shot = new FacesInShot(Shot.FIRST);
    private List<FollowedFace> seated = List.of();
    private List<FollowedFace> others = new ArrayList<>();
    private OptionalDouble lastLookS = OptionalDouble.empty();
    private final List<Spot> spots = new ArrayList<>();
    private double spotS;
    private double searchS;
    private double searchAgainS;
    private boolean shifted;

    /** A face without a body, and where it was spotted last. */
    private static final class Spot {
        final FaceTrack track = FaceTrack.ofSpot(SPOT_HELD_S);
        FaceDisc last;

        Spot(FaceDisc first) {
            last = first;
        }
    }

    Looking(PoseNets nets, FaceSpotter spotter, List<Player> players, ClipFacts clip, Looks when) {
        this.nets = nets;
        this.spotter = spotter;
        this.finder = PeopleFinder.ofAnybody(nets);
        this.players = List.copyOf(players);
        this.clip = clip;
        this.when = when;
    }

    /** Begins another shot with its first frame: what was seen before is seen no more. */
    FacesInShot begin(Frame frame) {
        shot = new FacesInShot(frame.shot());
        boolean seats = frame.shot().view() == Shot.View.FIRST;
        seated = seats
                ? players.stream()
                        .map(p -> FollowedFace.seated(p.seat(), othersSeats(p), clip))
                        .toList()
                : List.of();
        others = new ArrayList<>();
        seated.forEach(face -> shot.add(face.track()));
        spots.clear();
        lastLookS = OptionalDouble.empty();
        spotS = frame.timeS();
        searchS = frame.timeS();
        searchAgainS = FIRST_AGAIN_S;
        return shot;
    }

    private List<SeatBox> othersSeats(Player player) {
        return players.stream().filter(p -> p != player).map(Player::seat).toList();
    }

    void at(Frame frame) throws InterruptedException {
        boolean search = frame.timeS() >= searchS && frame.shot().view() != Shot.View.DISSOLVE;
        boolean due = when.due(frame.timeS(), 1 / clip.framesPerS(), lastLookS, seated.size() + others.size());
        if (search || due) {
            follow(frame);
        }
        if (search) {
            search(frame);
        }
        if (frame.timeS() >= spotS && (search || due || when.between())) {
            spot(frame);
        }
    }

    private void follow(Frame frame) {
        lastLookS = OptionalDouble.of(frame.timeS());
        List<FollowedFace> all = people().toList();
        all.parallelStream().forEach(face -> face.look(frame, nets));
        setApart(all);
        all.forEach(face -> face.keep(frame.timeS()));
    }

    /** A head is one person's: of two tracks on it the one that is out of its place has lost its own. */
    private static void setApart(List<FollowedFace> all) {
        for (FollowedFace one : all) {
            for (FollowedFace other : all) {
                if (one != other && one.seen().isPresent() && other.seen().isPresent() && same(one, other)) {
                    (one.outOfPlace() > other.outOfPlace() ? one : other).missed();
                }
            }
        }
    }

    private static boolean same(FollowedFace one, FollowedFace other) {
        return FaceDisc.of(one.seen().orElseThrow())
                .same(FaceDisc.of(other.seen().orElseThrow()));
    }

    /** Looks for whoever is not followed yet. */
    private void search(Frame frame) throws InterruptedException {
        List<Pose> known = people().flatMap(face -> face.seen().stream()).toList();
        List<Pose> people = finder.in(frame, known, shifted);
        for (Pose found : people.subList(known.size(), people.size())) {
            if (people.stream().noneMatch(found::handOf)) {
                FollowedFace face = FollowedFace.found(found, frame.timeS(), clip);
                others.add(face);
                shot.add(face.track());
            }
        }
        shifted = !shifted;
        searchS = frame.timeS() + searchAgainS;
        searchAgainS = Math.min(LONGEST_S, 2 * searchAgainS);
    }

    /** Looks for faces that are nobody's yet. */
    private void spot(Frame frame) {
        double largestPx = largestPx();
        for (FaceSpotter.Spotted face : spotter.in(frame)) {
            FaceDisc disc = FaceDisc.of(face);
            if (disc.radiusPx() > largestPx) {
                continue;
            }
            boolean known = people().flatMap(p -> p.seen().stream())
                    .anyMatch(pose -> FaceDisc.of(pose).holds(disc));
            if (!known) {
                Spot spot = spots.stream()
                        .filter(s -> s.last.same(disc))
                        .findFirst()
                        .orElseGet(() -> newSpot(disc));
                spot.last = disc;
                spot.track.looked(frame.timeS(), List.of(disc), true);
            }
        }
        spotS = frame.timeS() + SPOTTED_EVERY_S;
    }

    /** What is much larger than the largest head seen is none: who sits so near is found by the body. */
    private double largestPx() {
        return people().flatMap(p -> p.seen().stream())
                .mapToDouble(pose -> MUCH_LARGER * FaceDisc.of(pose).radiusPx())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Spot newSpot(FaceDisc disc) {
        Spot spot = new Spot(disc);
        spots.add(spot);
        shot.add(spot.track);
        return spot;
    }

    private Stream<FollowedFace> people() {
        return Stream.concat(seated.stream(), others.stream());
    }
}
