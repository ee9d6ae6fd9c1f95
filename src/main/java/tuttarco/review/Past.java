package tuttarco.review;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What something was before each change, to go back and forth in. */
final class Past<T> {
    private final Deque<T> before = new ArrayDeque<>();
    private final Deque<T> after = new ArrayDeque<>();

    /** What is now will be changed; what was taken back can't be brought again. */
    void keep(T now) {
        before.push(now);
        after.clear();
    }

    /** One change back. */
    Optional<T> back(T now) {
        return step(before, after, now);
    }

    /** One change forth. */
    Optional<T> forth(T now) {
        return step(after, before, now);
    }

    private static <T> Optional<T> step(Deque<T> from, Deque<T> to, T now) {
        if (from.isEmpty()) {
            return Optional.empty();
        }
        to.push(now);
        return Optional.of(from.pop());
    }

    boolean canGoBack() {
        return !before.isEmpty();
    }

    boolean canGoForth() {
        return !after.isEmpty();
    }

    void clear() {
        before.clear();
        after.clear();
    }
}
