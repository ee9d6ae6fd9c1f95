package tuttarco.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tuttarco.beats.Beat;
import tuttarco.strokes.StrokeKind;
import tuttarco.video.SoundFormat;

/**
 * The sound of a rendered take, made as it is asked for. Bowed tones follow the strokes: the frog is the strong end of the
 * bow and the tip the weak one, so a down-bow decays and an up-bow grows (common practice, no source); each change leaves
 * a short dip.
 */
final class Soundtrack {
    static final int SAMPLES_PER_S = 44_100;

    /** Loudness at the tip, as a share of that at the frog (chosen so that it can be heard: about 8 dB). */
    private static final double TIP_LOUDNESS = 0.4;

    /** How long a tone takes to speak at a change, seconds. */
    private static final double SPEAK_S = 0.06;

    /** Overtones of a bowed string fall off about as one over their number. */
    private static final int OVERTONES = 6;

    /** G4, which all open strings of the demo's part agree with; players are a little apart. */
    private static final double PITCH_HZ = 392;

    private static final double APART = 0.004;
    private static final double CLICK_S = 0.03;
    private static final double CLICK_HZ = 1000;
    private static final double STRONG_CLICK_HZ = 1500;

    private final Scene scene;
    private final List<BowMotion> motions = new ArrayList<>();
    private int written;

    private Soundtrack(Scene scene, Stage stage) {
        this.scene = scene;
        for (int i = 0; i < scene.sitters().size(); i++) {
            motions.add(stage.motion(i));
        }
    }

    /** Empty for a scene without sound. */
    static Optional<Soundtrack> of(Scene scene, Stage stage) {
        return scene.sound() == Sound.NONE ? Optional.empty() : Optional.of(new Soundtrack(scene, stage));
    }

    SoundFormat format() {
        return new SoundFormat(SAMPLES_PER_S);
    }

    /** The samples from where the last call ended up to a time, seconds; -1 to 1. */
    float[] until(double timeS) {
        int end = (int) Math.round(timeS * SAMPLES_PER_S);
        float[] samples = new float[Math.max(0, end - written)];
        for (int i = 0; i < samples.length; i++) {
            double atS = (double) (written + i) / SAMPLES_PER_S;
            samples[i] = (float) Math.tanh(scene.sound() == Sound.CLICKS ? click(atS) : tones(atS));
        }
        written += samples.length;
        return samples;
    }

    private double click(double timeS) {
        for (Beat beat : scene.tempo().beats().beats()) {
            double sinceS = timeS - beat.timeS();
            if (sinceS >= 0 && sinceS < CLICK_S) {
                double hz = beat.beat() == 1 ? STRONG_CLICK_HZ : CLICK_HZ;
                return 0.8 * Math.exp(-sinceS / (CLICK_S / 4)) * Math.sin(2 * Math.PI * hz * sinceS);
            }
        }
        return 0;
    }

    private double tones(double timeS) {
        double sum = 0;
        for (int i = 0; i < motions.size(); i++) {
            double loudness = loudness(motions.get(i).at(timeS), timeS);
            if (loudness > 0) {
                double hz = PITCH_HZ * (1 + APART * (i % 5 - 2) / 2);
                sum += loudness * tone(2 * Math.PI * hz * timeS + i);
            }
        }
        return 0.5 * sum / Math.sqrt(motions.size());
    }

    /** Loudness of a bow at a time: none while it rests or is in the air. */
    static double loudness(Travel travel, double timeS) {
        if (travel.kind() == StrokeKind.STILL) {
            return 0;
        }
        double edgeS = Math.min(timeS - travel.startS(), travel.endS() - timeS);
        double speaking = Math.min(1, 0.35 + 0.65 * Math.max(0, edgeS) / SPEAK_S);
        return speaking * (1 - (1 - TIP_LOUDNESS) * travel.place(timeS));
    }

    private static double tone(double phase) {
        double sum = 0;
        for (int k = 1; k <= OVERTONES; k++) {
            sum += Math.sin(k * phase) / k;
        }
        return 0.5 * sum;
    }
}
