package tuttarco.align;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How far each passage found in a recording is to be doubted: other music and talk resemble some place of a guide, too,
 * but just as well some place of the same guide in another key.
 */
final class PassageJudge {
    /** A passage must gain so many times more than in any other key at the same time (chosen on both kinds of sound). */
    private static final double BETTER = 1.2;

    /**
     * What is found by looking for the best place rather than by playing, seconds of fitting well: the more places there
     * are, the more short passages fit somewhere (chosen on both kinds of sound).
     */
    private static final double BY_CHOICE_S = 1.4;

    /** Other keys to try, semitones. */
    private static final int[] OTHER_KEYS = {-3, -2, -1, 1, 2, 3};

    private final List<GainSoFar> otherKeys;

    private PassageJudge(List<GainSoFar> otherKeys) {
        this.otherKeys = otherKeys;
    }

    /** Looks for the guide in other keys, several at a time. */
    static PassageJudge of(Guide guide, SoundFeatures sound) throws InterruptedException {
        List<Callable<GainSoFar>> searches = new ArrayList<>();
        for (int semitones : OTHER_KEYS) {
            searches.add(() -> new PassageFinder(guide.transposed(semitones)).gainSoFar(sound));
        }
        ExecutorService threads = Executors.newFixedThreadPool(
                Math.min(OTHER_KEYS.length, Runtime.getRuntime().availableProcessors()));
        try {
            List<GainSoFar> gains = new ArrayList<>();
            for (Future<GainSoFar> search : threads.invokeAll(searches)) {
                gains.add(search.get());
            }
            return new PassageJudge(gains);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    /** The doubt about a passage: 0 if nothing else fits, and 1 where it fits no better than it may by chance. */
    double doubt(Passage passage) {
        double byChance = otherKeys.stream()
                .mapToDouble(gain -> gain.between(passage.startS(), passage.endS()))
                .max()
                .orElseThrow();
        double byChoice = BY_CHOICE_S * Fit.WELL / PassageFinder.STEP_S;
        return passage.gain() > 0 ? Math.min(1, BETTER * (byChance + byChoice) / passage.gain()) : 1;
    }
}
