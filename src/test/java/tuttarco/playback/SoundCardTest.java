package tuttarco.playback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import tuttarco.video.ClipSound;

/** The sound card by a line that plays as much as the test says; what lines do is told by javax.sound.sampled's documentation. */
class SoundCardTest {
    private static final int CAPACITY = 9600;
    private static final int FRAME_BYTES = 4;

    private final AtomicLong nowNs = new AtomicLong(5);
    private final List<String> called = new ArrayList<>();
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private long framePosition = 1000;
    private int available = CAPACITY * FRAME_BYTES;
    private final SoundCard card = new SoundCard(line(), nowNs::get);

    private SourceDataLine line() {
        return (SourceDataLine) Proxy.newProxyInstance(
                SourceDataLine.class.getClassLoader(),
                new Class<?>[] {SourceDataLine.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getLongFramePosition" -> framePosition;
                    case "available" -> available;
                    case "write" -> {
                        written.write((byte[]) arguments[0], (int) arguments[1], (int) arguments[2]);
                        available -= (int) arguments[2];
                        yield arguments[2];
                    }
                    case "start", "stop", "flush", "close" -> {
                        called.add(method.getName());
                        yield null;
                    }
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }

    private static float[] block(int samples) {
        return new float[samples * ClipSound.CHANNELS];
    }

    private void pass(double seconds) {
        nowNs.addAndGet((long) (seconds * 1e9));
    }

    private void play(int samples) {
        framePosition += samples;
        available += samples * FRAME_BYTES;
    }

    @Test
    void itIsAClockByWhatWasHeardSinceItWasHalted() {
        card.halt();
        assertEquals(0, card.playedS());
        assertEquals(CAPACITY, card.room());
        card.write(block(960));
        assertEquals(CAPACITY - 960, card.room());
        card.start();
        pass(0.5);
        play(480);
        assertEquals(480.0 / ClipSound.SAMPLES_PER_S, card.playedS());
        card.halt();
        assertEquals(0, card.playedS());
        card.close();
        assertEquals(List.of("stop", "flush", "start", "stop", "flush", "close"), called);
    }

    @Test
    void soundIsSixteenBitsLowerByteFirstAndNeverBeyond() {
        card.write(new float[] {0, 1, -1, 2, 0.5f, -0.5f});
        byte[] bytes = written.toByteArray();
        int[] values = new int[bytes.length / 2];
        for (int i = 0; i < values.length; i++) {
            values[i] = bytes[2 * i + 1] << 8 | bytes[2 * i] & 0xFF;
        }
        assertEquals(
                List.of(0, 32767, -32767, 32767, 16384, -16383),
                java.util.Arrays.stream(values).boxed().toList());
    }

    @Test
    void withoutSoundToPlayItWaitsAndIsNotGone() {
        card.halt();
        card.write(block(960));
        card.start();
        play(960);
        card.playedS();
        pass(60);
        assertEquals(960.0 / ClipSound.SAMPLES_PER_S, card.playedS());
        assertEquals(Optional.empty(), card.trouble());
    }

    @Test
    void betweenTheStepsInWhichItIsToldTimeGoesOnAndNeverBack() {
        card.halt();
        card.write(block(CAPACITY));
        card.start();
        pass(0.1);
        assertEquals(0, card.playedS(), "it has not begun");
        play(960);
        assertEquals(0.02, card.playedS(), 1e-9);
        pass(0.015);
        assertEquals(0.035, card.playedS(), 1e-9);
        pass(0.01);
        assertEquals(0.04, card.playedS(), 1e-9, "a step is late");
        play(480);
        assertEquals(0.04, card.playedS(), 1e-9, "and shorter");
        pass(0.013);
        assertEquals(0.043, card.playedS(), 1e-9);
    }

    @Test
    void anOutputMayTakeItsTimeToBegin() {
        card.halt();
        card.write(block(960));
        card.start();
        pass(3);
        assertEquals(0, card.playedS());
        assertEquals(Optional.empty(), card.trouble());
        pass(3);
        assertEquals(0, card.playedS());
        assertTrue(card.trouble().isPresent());
        pass(0.5);
        assertEquals(0.5, card.playedS(), 1e-6);
    }

    @Test
    void anOutputThatIsTakenAwayIsToldAndPlayingGoesOnByTheClock() {
        card.halt();
        card.write(block(960));
        card.start();
        play(480);
        assertEquals(0.01, card.playedS(), 1e-9);
        available = 0;
        pass(0.9);
        assertEquals(0.02, card.playedS(), 1e-9, "all that was given, but no more");
        assertEquals(Optional.empty(), card.trouble());
        pass(0.2);
        card.playedS();
        assertTrue(card.trouble().orElseThrow().contains("the sound output is gone"));
        pass(0.5);
        assertEquals(0.52, card.playedS(), 1e-6);
        assertTrue(card.room() > 960, "what is given goes nowhere, and there is room for it");
        int before = written.size();
        card.write(block(960));
        assertEquals(before, written.size());
        card.halt();
        assertEquals(0, card.playedS());
        card.start();
        pass(0.25);
        assertEquals(0.25, card.playedS(), 1e-6);
    }
}
