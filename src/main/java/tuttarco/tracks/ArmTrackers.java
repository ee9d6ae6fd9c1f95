package tuttarco.tracks;

import tuttarco.pose.PoseModel;
import tuttarco.pose.PoseNets;
import tuttarco.seats.Player;

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
                return new FlowArmTracker(player);
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
        SectionWay section = new SectionWay();
        PosePace pace = new PosePace();
        return new ArmTrackers() {
            @Override
            public ArmTracker of(Player player) {
                return new BodyArmTracker(player, nets, section, pace);
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
