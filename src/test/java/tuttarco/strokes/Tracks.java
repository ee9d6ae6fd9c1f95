package tuttarco.strokes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.tracks.ArmSample;
import tuttarco.tracks.ArmTrack;

/** Tracks whose every value is known in closed form, at 30 frames a second. */
final class Tracks {
    static final Player PLAYER = new Player(
            "player", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
    static final double FRAME_S = 1.0 / 30;

    private Tracks() {}

    static ArmTrack byBody(double endS, double noise, DoubleUnaryOperator velocity, DoubleUnaryOperator reach) {
        List<ArmSample> samples = new ArrayList<>();
        for (double timeS = FRAME_S / 2; timeS < endS; timeS += FRAME_S) {
            samples.add(
                    new ArmSample.ByBody(timeS, velocity.applyAsDouble(timeS), noise, 1, reach.applyAsDouble(timeS)));
        }
        return new ArmTrack(PLAYER, 0, endS, samples);
    }

    static ArmTrack byFlow(double endS, double noise, DoubleUnaryOperator velocity) {
        List<ArmSample> samples = new ArrayList<>();
        for (double timeS = FRAME_S / 2; timeS < endS; timeS += FRAME_S) {
            samples.add(new ArmSample.ByFlow(timeS, velocity.applyAsDouble(timeS), noise, 1));
        }
        return new ArmTrack(PLAYER, 0, endS, samples);
    }
}
