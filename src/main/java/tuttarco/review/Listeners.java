package tuttarco.review;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Who wants to know that something changed, and is told in the order of asking. */
public final class Listeners {
    private final List<Runnable> told = new CopyOnWriteArrayList<>();

    public void add(Runnable listener) {
        told.add(listener);
    }

    public void tell() {
        told.forEach(Runnable::run);
    }
}
