package tuttarco.align;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Passages that were found and are not believed, in one sentence. */
final class LeftOut {
    /** So many of them are told by their times. */
    private static final int MOST_TOLD = 5;

    private LeftOut() {}

    static Optional<String> told(List<Passage> passages, String guide) {
        if (passages.isEmpty()) {
            return Optional.empty();
        }
        String times = passages.stream()
                .limit(MOST_TOLD)
                .map(p -> String.format(Locale.ROOT, "%.0f-%.0f s", p.startS(), p.endS()))
                .collect(Collectors.joining(", "));
        int more = passages.size() - MOST_TOLD;
        return Optional.of("Left out because it resembles " + guide + " no more than other music does: " + times
                + (more > 0 ? ", and " + more + " more." : "."));
    }
}
