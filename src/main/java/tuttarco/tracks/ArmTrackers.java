package tuttarco.tracks;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tuttarco.pose.PoseModel;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;
import tuttarco.video.Shot;

/** Makes the trackers of a section and holds what they share. */
public interface ArmTrackers extends AutoCloseable {
    /** A tracker for one player; the caller closes it before this. */
    ArmTracker of(Player player);

    /** Names all that makes these trackers see what others do not; the same text, the same tracks. */
    String kind();

    @Override
    void close();

    /** Flow alone. */
    static ArmTrackers byFlow() {
        return new ArmTrackers() {
            @Override
            public ArmTracker of(Player player) {
                return new ArmInShots(player, shot -> new FlowArmTracker(player));
            }

            @Override
            public String kind() {
                return "optical flow";
            }

            @Override
            public void close() {
                // nothing is shared
            }
        };
    }

    /** Poses and flow. */
    static ArmTrackers byBody(PoseModel model) {
        PoseNets nets = new PoseNets(model);
        Map<Shot, SectionWay> sections = new ConcurrentHashMap<>();
        PosePace pace = new PosePace();
        return new ArmTrackers() {
            @Override
            public ArmTracker of(Player player) {
                pace.join();
                return new ArmInShots(
                        player,
                        shot -> new BodyArmTracker(
                                player, nets, sections.computeIfAbsent(shot, s -> new SectionWay()), pace));
            }

            @Override
            public String kind() {
                return "optical flow and poses by " + model.sha256();
            }

            @Override
            public void close() {
                nets.close();
            }
        };
    }
}
