package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.chart.Words;
import tuttarco.compare.RehearsalList;

/** {@code captions.vtt}: the spots to rehearse as captions of the video, each from its first beat to the end of its last. */
public final class Captions implements Output {
    @Override
    public String name() {
        return "captions.vtt";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        BeatMap beats = take.comparison().beats();
        SpotWords words = new SpotWords(take.comparison());
        WebVtt.write(
                RehearsalList.of(take.comparison()).stream()
                        .map(spot -> new WebVtt.Cue(
                                beats.beats().get(spot.firstIndex()).timeS(),
                                beats.endS(spot.lastIndex()),
                                lines(words.told(spot))))
                        .toList(),
                folder.resolve(name()));
    }

    private static List<String> lines(ReportModel.Spot spot) {
        return List.of(Words.labels(spot.players()) + ": " + spot.what(), spot.where() + " (" + spot.sure() + ")");
    }
}
