package tuttarco.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tuttarco.chart.BarRun;
import tuttarco.compare.Comparison;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.files.InputException;

/**
 * The stills of a page: one of each bar and one of each spot, when they begin. They get smaller as there are more, so that a
 * page can still be sent by mail.
 */
final class MomentPictures {
    /** A still of few is this wide, pixels (chosen: as it is shown). */
    private static final int MOST_WIDTH_PX = 640;

    /** Pixels of all stills of a page together (chosen: four hundred of 320 x 180). */
    private static final double PAGE_PIXELS = 400.0 * 320 * 180;

    private final Map<Integer, ReportModel.Picture> byBeat;

    private MomentPictures(Map<Integer, ReportModel.Picture> byBeat) {
        this.byBeat = byBeat;
    }

    /** Takes pictures from where they are: times, seconds, and a width, pixels, in; JPEG out. */
    interface Source {
        List<Optional<byte[]>> jpegs(List<Double> timesS, int widthPx) throws InputException, InterruptedException;
    }

    /**
     * A clip that can't be read any more leaves the page without pictures.
     *
     * @param aspect a picture's width over its height
     */
    static MomentPictures of(Comparison comparison, double aspect, Source source) throws InterruptedException {
        List<Integer> beats = beats(comparison);
        Map<Integer, ReportModel.Picture> byBeat = new LinkedHashMap<>();
        List<Optional<byte[]>> jpegs = jpegs(source, timesS(comparison), widthPx(beats.size(), aspect));
        for (int i = 0; i < jpegs.size(); i++) {
            int beat = beats.get(i);
            jpegs.get(i).ifPresent(jpeg -> byBeat.put(beat, new ReportModel.Picture(jpeg)));
        }
        return new MomentPictures(byBeat);
    }

    private static List<Integer> beats(Comparison comparison) {
        return List.copyOf(Stream.concat(
                        BarRun.of(comparison.beats()).stream().map(BarRun::firstIndex),
                        RehearsalList.of(comparison).stream().map(Spot::firstIndex))
                .collect(Collectors.toCollection(TreeSet::new)));
    }

    /** When they are taken, seconds. */
    static List<Double> timesS(Comparison comparison) {
        return beats(comparison).stream()
                .map(b -> comparison.beats().beats().get(b).timeS())
                .toList();
    }

    private static int widthPx(int count, double aspect) {
        return (int) Math.min(MOST_WIDTH_PX, Math.sqrt(PAGE_PIXELS / count * aspect));
    }

    private static List<Optional<byte[]>> jpegs(Source source, List<Double> timesS, int widthPx)
            throws InterruptedException {
        try {
            return source.jpegs(timesS, widthPx);
        } catch (InputException e) {
            return List.of();
        }
    }

    /** The still of a beat that begins a bar or a spot. */
    Optional<ReportModel.Picture> at(int beat) {
        return Optional.ofNullable(byBeat.get(beat));
    }
}
