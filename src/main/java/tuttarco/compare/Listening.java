package tuttarco.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import tuttarco.beats.BeatMap;
import tuttarco.sound.LevelCurve;
import tuttarco.stats.Quantiles;
import tuttarco.strokes.Reading;

/**
 * Where readings and sound meet: how evenly each bar sounded, and how far the level dips at bow changes ({@link Dips}). The
 * changes of all players count alike, so that nobody needs to lead and takes with unified and with free bowing are measured
 * in one way: where all change at once each of them finds the same dip, where they change apart none finds much.
 */
public final class Listening {
    /** From one momentary loudness to the next, seconds: the hop of ITU-R BS.1770's blocks. */
    private static final double HOP_S = 0.1;

    /** A bar of which less than this is loud enough is a rest rather than uneven (chosen). */
    private static final double LOUD_SHARE = 0.5;

    /** Fewer momentary levels have no spread to speak of (chosen). */
    private static final int LEAST_LEVELS = 5;

    private Listening() {}

    /** What a take sounded like, by its beats and strokes. */
    public static Evenness to(LevelCurve level, List<Reading> readings, BeatMap beats) {
        List<Measured> dips = readings.stream()
                .flatMap(r -> Change.in(r.strokes()).stream())
                .filter(c -> !beats.stopped(c.timeS()))
                .flatMap(c -> Dips.at(c, level).stream().mapToObj(lu -> new Measured(c.timeS(), lu)))
                .toList();
        List<Double> amid = readings.stream()
                .flatMap(r -> r.strokes().stream())
                .filter(s -> s.kind().direction().isPresent())
                .flatMap(s -> Dips.amid(s, level).stream().boxed())
                .toList();
        return new Evenness(
                level.integratedLufs(),
                beats.inBars() ? bars(level, dips, beats) : List.of(),
                dips.size(),
                median(dips.stream().map(Measured::dipLu).toList()),
                median(amid));
    }

    private record Measured(double timeS, double dipLu) {}

    private static OptionalDouble median(List<Double> dips) {
        return dips.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Quantiles.median(dips));
    }

    private static List<BarEvenness> bars(LevelCurve level, List<Measured> dips, BeatMap beats) {
        NavigableMap<Double, List<Measured>> byTime =
                dips.stream().collect(Collectors.groupingBy(Measured::timeS, TreeMap::new, Collectors.toList()));
        List<BarEvenness> bars = new ArrayList<>();
        for (BeatMap.PlayedBar bar : beats.bars()) {
            double startS = beats.beats().get(bar.firstIndex()).timeS();
            double endS = beats.endS(bar.lastIndex());
            double[] own = byTime.subMap(startS, endS).values().stream()
                    .flatMap(List::stream)
                    .mapToDouble(Measured::dipLu)
                    .toArray();
            bars.add(bar(bar.firstIndex(), endS, level, own, beats));
        }
        return bars;
    }

    /** @param own the dips in it, LU */
    private static BarEvenness bar(int first, double endS, LevelCurve level, double[] own, BeatMap beats) {
        double startS = beats.beats().get(first).timeS();
        SummaryStatistics loud = new SummaryStatistics();
        int levels = (int) Math.floor((endS - startS) / HOP_S);
        for (int i = 0; i < levels; i++) {
            level.aroundLufs(startS + (i + 0.5) * HOP_S, LevelCurve.MOMENTARY_S).stream()
                    .filter(lufs -> lufs > LevelCurve.FAINTEST_LUFS)
                    .forEach(loud::addValue);
        }
        boolean enough = loud.getN() >= Math.max(LEAST_LEVELS, LOUD_SHARE * levels);
        return new BarEvenness(
                beats.beats().get(first).bar(),
                first,
                enough ? OptionalDouble.of(loud.getMean()) : OptionalDouble.empty(),
                enough ? OptionalDouble.of(loud.getStandardDeviation()) : OptionalDouble.empty(),
                DoubleStream.of(own).average(),
                own.length);
    }
}
