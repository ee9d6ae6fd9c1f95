package tuttarco.compare;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tuttarco.sound.LevelCurve;
import tuttarco.strokes.Stroke;

/**
 * How far the level dips at a time, LU: the lowest level of 50 ms within 100 ms to either side, under the mean of the levels of
 * 200 ms before and after that.
 *
 * <p>Momentary loudness is too slow for a dip: a gap of 100 ms between full tones would show in it as 1.2 LU. A window of 50 ms
 * holds two periods of the lowest string (E of the bass, 41.2 Hz), so that the level doesn't waver with each period, and lies
 * whole in a gap of 100 ms. Changes within 100 ms pass as together (as in {@link CompareSettings#DEFAULT}), the time read from
 * the picture errs by a frame or two, and the sound of a player ten metres off comes 30 ms late; so the lowest is looked for as
 * far as that.
 *
 * <p>The lowest of several levels lies below their mean even where nothing dips; so a dip says something only beside
 * others: those of another take, or those amid strokes.
 */
final class Dips {
    private static final double WINDOW_S = 0.05;
    private static final double REACH_S = 0.1;
    private static final double BESIDE_S = 0.2;

    /** From one window to the next, seconds. */
    private static final double HOP_S = 0.01;

    private static final int WINDOWS = (int) Math.round((2 * REACH_S - WINDOW_S) / HOP_S) + 1;

    private Dips() {}

    /** At a bow change; empty where a stroke beside it is so short that another change is near, or the sound too faint. */
    static OptionalDouble at(Change change, LevelCurve level) {
        return change.shorterS() < 2 * REACH_S + BESIDE_S ? OptionalDouble.empty() : around(change.timeS(), level);
    }

    /** In the middle of a stroke; empty where its ends are near, or the sound too faint. */
    static OptionalDouble amid(Stroke stroke, LevelCurve level) {
        return stroke.lengthS() < 2 * (2 * REACH_S + BESIDE_S)
                ? OptionalDouble.empty()
                : around((stroke.startS() + stroke.endS()) / 2, level);
    }

    private static OptionalDouble around(double timeS, LevelCurve level) {
        OptionalDouble before = level.lufs(timeS - REACH_S - BESIDE_S, BESIDE_S);
        OptionalDouble after = level.lufs(timeS + REACH_S, BESIDE_S);
        if (faint(before) || faint(after)) {
            return OptionalDouble.empty();
        }
        double lowest = IntStream.range(0, WINDOWS)
                .mapToObj(i -> level.lufs(timeS - REACH_S + i * HOP_S, WINDOW_S))
                .mapToDouble(OptionalDouble::orElseThrow)
                .min()
                .orElseThrow();
        double beside = (before.getAsDouble() + after.getAsDouble()) / 2;
        return OptionalDouble.of(beside - Math.max(lowest, LevelCurve.FAINTEST_LUFS));
    }

    private static boolean faint(OptionalDouble lufs) {
        return lufs.isEmpty() || lufs.getAsDouble() <= LevelCurve.FAINTEST_LUFS;
    }
}
