package tuttarco.window;

import java.util.List;
import tuttarco.beats.Beat;
import tuttarco.review.Playing;

/** Plays nothing; the test says where the sound is. It goes on from there until the test says so again. */
final class HeldSound implements Playing {
    private volatile boolean playing;
    private volatile double soundS;
    private volatile long sinceMs;
    private volatile List<Beat> ticks = List.of();

    /** Now it is there, seconds of the clip. */
    void at(double timeS) {
        soundS = timeS;
        sinceMs = System.currentTimeMillis();
    }

    /** What is ticked over it. */
    List<Beat> ticks() {
        return ticks;
    }

    @Override
    public void play() {
        at(soundS);
        playing = true;
    }

    @Override
    public void pause() {
        playing = false;
    }

    @Override
    public boolean playing() {
        return playing;
    }

    @Override
    public void seek(double timeS) {
        at(timeS);
    }

    @Override
    public double soundS() {
        return playing ? soundS + (System.currentTimeMillis() - sinceMs) / 1000.0 : soundS;
    }

    @Override
    public void speed(double factor) {}

    @Override
    public void ticks(List<Beat> beats) {
        ticks = beats;
    }

    @Override
    public void close() {
        playing = false;
    }
}
