package tuttarco.beats;

import java.util.List;

/**
 * Where the beats lie in the recording, in time order, strictly increasing, at least two.
 *
 * <p>The last beat lasts as long as the one before it.
 */
public record BeatMap(List<Beat> beats) {
    public BeatMap {
        beats = List.copyOf(beats);
        if (beats.size() < 2) {
            throw new IllegalArgumentException("at least two beats are needed to know how long a beat is");
        }
        for (int i = 1; i < beats.size(); i++) {
            if (!(beats.get(i).timeS() > beats.get(i - 1).timeS())) {
                throw new IllegalArgumentException(
                        "beats follow each other in time, but " + beats.get(i).spoken() + " does not come after "
                                + beats.get(i - 1).spoken());
            }
        }
    }

    /** Whether these are beats of bars; they are strokes of the leader's otherwise. */
    public boolean inBars() {
        return beats.get(0).inBar();
    }

    /** When beat number {@code index} ends, seconds: where the next begins, or as long after it as the last interval. */
    public double endS(int index) {
        if (index + 1 < beats.size()) {
            return beats.get(index + 1).timeS();
        }
        return 2 * beats.get(index).timeS() - beats.get(index - 1).timeS();
    }
}
