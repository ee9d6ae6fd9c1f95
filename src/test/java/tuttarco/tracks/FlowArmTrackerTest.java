package tuttarco.tracks;

import tuttarco.seats.Player;

class FlowArmTrackerTest extends ArmTrackerContract {
    @Override
    ArmTracker tracker(Player player) {
        return new FlowArmTracker(player);
    }
}
