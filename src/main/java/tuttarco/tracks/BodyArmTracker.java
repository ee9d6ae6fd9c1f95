package tuttarco.tracks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tuttarco.pose.Crop;
import tuttarco.pose.PersonFinder;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.Frame;
import tuttarco.video.Shot;

/**
 * Follows a bow arm by poses at key times and by optical flow between them.
 *
 * <p>A pose tells where shoulders, trunk and hands are: from it follow the part of the picture to look at, whatever the
 * seat box, the unit of all motion, which hand bows, and which way is down. Flow tells the fine motion of the hand. Poses
 * are dear, so they are taken often at first and then once in a while.
 *
 * <p>Until the player was found in the seat, flow alone is read.
 */
public final class BodyArmTracker implements ArmTracker {
    /** Poses come soon while the shot is younger than this, seconds. */
    private static final double EARLY_UNTIL_S = 2;

    /** Shoulders seen narrower than this share of their width show a player who turns. */
    private static final double FRONTAL = 0.8;

    /** A pose at least this likely a person's is used; a clear one is this likely. */
    private static final double LEAST_PERSON = 0.5;

    private static final double CLEAR_PERSON = 0.9;

    /** A hand seen less likely than this may be lost; rendered sections. */
    private static final double CLEAR_HAND = 0.3;

    /**
     * So long after the first vain search for the player the next one comes, seconds, and twice as long after each
     * further one: a search costs ten poses and more.
     */
    private static final double SEARCH_S = 1;

    /** Frame times are rounded; a frame this little before its time is in time, seconds. */
    private static final double IN_TIME_S = 0.005;

    private final Player player;
    private final PoseNets nets;
    private final SectionWay section;
    private final PosePace pace;
    private final FlowArmTracker byFlow;
    private final List<KeyPose> poses = new ArrayList<>();
    private Optional<Following> following = Optional.empty();
    private double nextPoseS;
    private double searchS = SEARCH_S;

    /** What is known once the player was found. */
    private static final class Following implements AutoCloseable {
        Crop crop;
        BodyRegion region;
        CellFlow flow;
        final BitSet dark = new BitSet();
        int motions;
        final Map<Hand, HandFollower> hands = new EnumMap<>(Hand.class);
        final FaceWatch face = new FaceWatch();

        /**
         * Starts with the first pose.
         *
         * @param box the region about it, within the picture
         */
        Following(KeyPose start, SeatBox box) {
            crop = Crop.around(start.pose());
            region = BodyRegion.around(start);
            flow = new CellFlow(box, region.shoulderWidthPx());
            for (Hand hand : Hand.values()) {
                hands.put(hand, new HandFollower(start.hand(hand)));
            }
        }

        void lookAt(BodyRegion around, SeatBox box) {
            flow.close();
            region = around;
            flow = new CellFlow(box, around.shoulderWidthPx());
        }

        /** The hand that moved more so far; the right one while neither did. */
        Hand busier() {
            return hands.get(Hand.RIGHT).busy() >= hands.get(Hand.LEFT).busy() ? Hand.RIGHT : Hand.LEFT;
        }

        void note(Memo memo) throws IOException {
            crop = memo.value(Crop.class, crop);
            BodyRegion around = memo.value(BodyRegion.class, region);
            SeatBox box = memo.value(SeatBox.class, flow.grid().region());
            if (!around.equals(region) || !box.equals(flow.grid().region())) {
                lookAt(around, box);
            }
            flow.note(memo);
            motions = memo.count(motions);
            memo.flags(dark, motions);
            for (HandFollower hand : hands.values()) {
                hand.note(memo);
            }
            face.note(memo);
        }

        @Override
        public void close() {
            flow.close();
        }
    }

    BodyArmTracker(Player player, PoseNets nets, SectionWay section, PosePace pace) {
        this.player = player;
        this.section = section;
        this.pace = pace;
        this.nets = nets;
        byFlow = new FlowArmTracker(player);
    }

    @Override
    public void accept(Frame frame) {
        if (frame.timeS() >= nextPoseS - IN_TIME_S) {
            look(frame);
        }
        if (following.isPresent()) {
            follow(following.get(), frame);
        } else {
            byFlow.accept(frame);
        }
    }

    private void look(Frame frame) {
        if (following.isEmpty()) {
            Optional<KeyPose> found = nets.with(net -> new PersonFinder(net)
                    .in(frame, player.seat())
                    .filter(pose -> pose.person() >= LEAST_PERSON)
                    .map(pose -> new KeyPose(frame.timeS(), pose)));
            nextPoseS = frame.timeS() + (found.isPresent() ? pace.soonS() : searchS);
            searchS *= 2;
            found.ifPresent(pose -> start(pose, frame));
            return;
        }
        Following now = following.get();
        KeyPose key = new KeyPose(frame.timeS(), nets.with(net -> net.estimate(frame.grey(), now.crop)));
        nextPoseS = frame.timeS() + waitS(key, now, frame.shot());
        if (key.pose().person() < LEAST_PERSON) {
            return;
        }
        now.crop = now.crop.next(key.pose());
        poses.add(key);
        if (disagree(now, key)) {
            nextPoseS = frame.timeS() + pace.atOnceS();
        }
        if (now.region.left(key)) {
            BodyRegion around = BodyRegion.around(key);
            now.lookAt(around, box(around, frame));
        }
    }

    /** Draws the hands to where the pose shows them; whether it shows the busier one far from where the flow had led. */
    private boolean disagree(Following now, KeyPose key) {
        boolean rightDisagrees = now.hands.get(Hand.RIGHT).correct(key, Hand.RIGHT, player.instrument());
        boolean leftDisagrees = now.hands.get(Hand.LEFT).correct(key, Hand.LEFT, player.instrument());
        return now.busier() == Hand.RIGHT ? rightDisagrees : leftDisagrees;
    }

    /** The next pose comes soon while little is known, or while the player turns or player or hand are hard to make out. */
    private double waitS(KeyPose key, Following now, Shot shot) {
        boolean early = key.timeS() < shot.startS() + EARLY_UNTIL_S;
        boolean turned = key.pose().shoulderWidthPx() < FRONTAL * now.region.shoulderWidthPx();
        boolean doubtful = key.pose().person() < CLEAR_PERSON || key.visibility(now.busier()) < CLEAR_HAND;
        return early || turned || doubtful ? pace.soonS() : pace.settledS();
    }

    private void start(KeyPose key, Frame frame) {
        poses.add(key);
        Following begun = new Following(key, box(BodyRegion.around(key), frame));
        begun.hands.forEach((hand, follower) -> follower.correct(key, hand, player.instrument()));
        following = Optional.of(begun);
    }

    private static SeatBox box(BodyRegion around, Frame frame) {
        return around.box(frame.grey().cols(), frame.grey().rows());
    }

    private void follow(Following now, Frame frame) {
        Optional<CellFlow.Motion> moved = now.flow.advance(frame);
        if (moved.isPresent()) {
            now.hands.values().forEach(h -> h.accept(moved.get(), now.flow.grid(), now.region.shoulderWidthPx()));
            KeyPose last = poses.get(poses.size() - 1);
            now.face.accept(moved.get(), now.flow.grid(), last.nose(), now.region.shoulderWidthPx());
            now.dark.set(now.motions++, now.flow.luma() < FlowArmTracker.DARK_LUMA);
        }
    }

    @Override
    public void recall(Frame frame) {
        byFlow.recall(frame);
        following.ifPresent(now -> now.flow.recall(frame));
    }

    @Override
    public void note(Memo memo) throws IOException {
        byFlow.note(memo);
        memo.list(KeyPose.class, poses);
        nextPoseS = memo.number(nextPoseS);
        searchS = memo.number(searchS);
        if (!poses.isEmpty()) {
            following = following.or(() -> Optional.of(new Following(poses.get(0), player.seat())));
            following.get().note(memo);
        }
    }

    @Override
    public void settle() {
        following.ifPresent(f -> section.add(
                player,
                new SectionWay.Seen(
                        KeyPose.meanFacing(poses), bow(f, new KeyPose.Way(0, 0)).down())));
    }

    private BowArm bow(Following now, KeyPose.Way neighbours) {
        return BowArm.of(player, now.hands, poses, neighbours, now.dark, now.face.crossed());
    }

    @Override
    public ArmTrack finish(double endS) {
        if (following.isEmpty()) {
            return byFlow.finish(endS);
        }
        List<ArmSample> samples = new ArrayList<>(byFlow.finish(endS).samples());
        BowArm bow = bow(following.get(), section.besides(player));
        samples.addAll(bow.samples());
        Body body = new Body(bow.hand(), KeyPose.medianShoulderWidthPx(poses));
        return new ArmTrack(player, 0, endS, samples, Optional.of(body));
    }

    @Override
    public void close() {
        byFlow.close();
        following.ifPresent(Following::close);
    }
}
