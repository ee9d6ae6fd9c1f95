package tuttarco.playback;

import static org.junit.jupiter.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import tuttarco.video.NumberedClip;

/** A sink that notes which pictures were shown, and where the clock was then. */
final class SeenPictures implements Sink {
    /** Long enough for any machine; only a player that hangs takes it. */
    private static final long PATIENCE_MS = 15_000;

    /**
     * A picture that was shown.
     *
     * @param number as it is painted on it
     * @param playedS what the clock told when it was shown
     */
    record Seen(int number, double timeS, double playedS, int widthPx, int heightPx) {}

    private final Clock clock;
    private final List<Seen> seen = new ArrayList<>();
    private int stops;

    SeenPictures(Clock clock) {
        this.clock = clock;
    }

    @Override
    public synchronized void shown(BufferedImage picture, double timeS) {
        seen.add(new Seen(
                NumberedClip.numberIn(picture), timeS, clock.playedS(), picture.getWidth(), picture.getHeight()));
        notifyAll();
    }

    @Override
    public synchronized void stopped() {
        stops++;
        notifyAll();
    }

    synchronized List<Seen> all() {
        return List.copyOf(seen);
    }

    synchronized Seen last() {
        return seen.get(seen.size() - 1);
    }

    synchronized int stops() {
        return stops;
    }

    synchronized void forget() {
        seen.clear();
    }

    void awaitLast(Predicate<Seen> wanted) throws InterruptedException {
        await(() -> !seen.isEmpty() && wanted.test(last()));
    }

    void awaitNumber(int number) throws InterruptedException {
        awaitLast(picture -> picture.number() == number);
    }

    synchronized void await(BooleanSupplier wanted) throws InterruptedException {
        long deadline = System.currentTimeMillis() + PATIENCE_MS;
        while (!wanted.getAsBoolean()) {
            wait(10);
            if (System.currentTimeMillis() > deadline) {
                fail("what was waited for did not come; seen so far: " + seen);
            }
        }
    }
}
