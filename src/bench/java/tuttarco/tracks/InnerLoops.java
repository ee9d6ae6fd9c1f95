package tuttarco.tracks;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import tuttarco.bow.Instrument;
import tuttarco.pose.Crop;
import tuttarco.pose.Pose;
import tuttarco.pose.PoseModel;
import tuttarco.pose.PoseNet;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.HiddenMarkovReader;
import tuttarco.strokes.Reading;
import tuttarco.video.Frame;

/**
 * Time of what is done for every frame, every pose and every track: {@code mvn test -Pbenchmark -Dtest=InnerLoops}.
 * Nothing is asserted about speed.
 */
@Tag("benchmark")
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class InnerLoops {
    private static final int WIDTH_PX = 1920;
    private static final int HEIGHT_PX = 1080;
    private static final int FRAMES = 8;
    private static final double STEP_S = 1 / 30.0;

    /** Frames of a track: a minute at 30 a second. */
    private static final int MINUTE = 1800;

    private static final Player PLAYER = new Player(
            "player", 1, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 480, 360), Optional.empty(), false);

    private final List<Mat> pictures = new ArrayList<>();
    private final HiddenMarkovReader reader = new HiddenMarkovReader(HiddenMarkovReader.Settings.DEFAULT);
    private CellFlow flow;
    private HandFollower hand;
    private PoseNet net;
    private ArmTrack track;
    private int at;

    /** Noise that shifts by some pixels from frame to frame: what it shows does not change the cost. */
    @Setup(Level.Trial)
    public void prepare() {
        opencv_core.setNumThreads(1);
        byte[] luma = new byte[WIDTH_PX * HEIGHT_PX];
        new Random(1).nextBytes(luma);
        for (int i = 0; i < FRAMES; i++) {
            Mat picture = new Mat(HEIGHT_PX, WIDTH_PX, opencv_core.CV_8UC1);
            new BytePointer(picture.data()).position(0).put(luma, 2 * i, luma.length - 2 * i);
            pictures.add(picture);
        }
        flow = new CellFlow(new SeatBox(100, 100, 400, 320), 100);
        hand = new HandFollower(new KeyPose.Place(250, 250));
        net = PoseModel.installed().orElseThrow().net();
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; i < MINUTE; i++) {
            samples.add(new ArmSample.ByFlow(i * STEP_S, Math.sin(4 * i * STEP_S), 0.1, 0.99));
        }
        track = new ArmTrack(PLAYER, 0, MINUTE * STEP_S, samples);
    }

    /** What each frame costs for one player between two poses. */
    @Benchmark
    public HandFollower flowOfOnePlayerAndFrame() {
        Frame frame = new Frame(at, at * STEP_S, pictures.get(at % FRAMES));
        at++;
        flow.advance(frame).ifPresent(motion -> hand.accept(motion, flow.grid(), 100));
        return hand;
    }

    /** One look of the pose model. */
    @Benchmark
    public Pose onePose() {
        return net.estimate(pictures.get(0), new Crop(500, 500, 600));
    }

    /** A minute's track of one player, read. */
    @Benchmark
    public Reading aMinuteOfStrokes() {
        return reader.read(track);
    }

    @TearDown(Level.Trial)
    public void close() {
        flow.close();
        net.close();
        pictures.forEach(Mat::close);
    }

    @Test
    void measure() throws Exception {
        List<RunResult> results = List.copyOf(new Runner(new OptionsBuilder()
                        .include(InnerLoops.class.getName())
                        .forks(1)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1))
                        .build())
                .run());
        assertFalse(results.isEmpty(), "nothing was measured");
    }
}
