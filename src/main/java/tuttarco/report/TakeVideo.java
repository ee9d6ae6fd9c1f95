package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import tuttarco.beats.BeatMap;
import tuttarco.compare.RehearsalList;
import tuttarco.compare.Spot;
import tuttarco.files.InputException;
import tuttarco.files.OutputException;
import tuttarco.film.FacesToBlur;
import tuttarco.film.Film;
import tuttarco.film.FilmSigns;
import tuttarco.film.Progress;
import tuttarco.film.ShownSpot;

/** The take as a video: signs on the players, bar and beat, and the spots. */
public final class TakeVideo implements Output {
    /** Its file, beside the report. */
    public static final String FILE = "take-video.mp4";

    private final FacesToBlur faces;
    private final Progress progress;

    public TakeVideo(FacesToBlur faces, Progress progress) {
        this.faces = faces;
        this.progress = progress;
    }

    @Override
    public String name() {
        return FILE;
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException, InterruptedException {
        FilmSigns signs = new FilmSigns(take.atTime(), take.comparison(), take.reference(), spots(take));
        Film film = new Film(take.take().video(), signs, faces);
        try {
            film.write(folder.resolve(FILE), progress);
        } catch (InputException | OutputException e) {
            throw new IOException(
                    "the video could not be made: " + e.getMessage().replaceFirst("\\.$", ""), e);
        }
    }

    private static List<ShownSpot> spots(AnalysedTake take) {
        SpotWords words = new SpotWords(take.comparison());
        return RehearsalList.of(take.comparison()).stream()
                .map(spot -> shown(spot, words.told(spot), take.comparison().beats()))
                .toList();
    }

    private static ShownSpot shown(Spot spot, ReportModel.Spot told, BeatMap beats) {
        return new ShownSpot(
                beats.beats().get(spot.firstIndex()).timeS(),
                beats.endS(spot.lastIndex()),
                spot.players(),
                told.where() + ": " + String.join(", ", told.players()) + " " + told.what() + " (" + told.sure() + ")");
    }
}
