package tuttarco.review;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import tuttarco.report.AnalysedTake;

/** A session of which the test's thread plays the window's. */
final class Waiting implements AutoCloseable {
    private final LinkedBlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final Background background = new Background(window::add);
    final Session session = new Session(background, new Keeping() {
        @Override
        public void opened(Draft draft) {}

        @Override
        public String keep(Draft draft) {
            return "Saved.";
        }
    });

    /** Reviews a take, once what there is to see is there. */
    Reviewing reviewing(AnalysedTake take) throws InterruptedException {
        Reviewing reviewing = new Reviewing(session);
        session.analysed(Optional.of(take));
        until(() -> reviewing.bow().isPresent());
        return reviewing;
    }

    /** Does what the window is told until something has come true. */
    void until(BooleanSupplier condition) throws InterruptedException {
        while (!condition.getAsBoolean()) {
            Runnable next = window.poll(20, TimeUnit.SECONDS);
            assertTrue(next != null, "nothing more is told to the window");
            next.run();
        }
    }

    @Override
    public void close() {
        background.close();
    }
}
