package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import tuttarco.film.FacesToBlur;
import tuttarco.film.Progress;
import tuttarco.film.Stills;
import tuttarco.video.ClipFacts;

/**
 * {@code report.html}: one page that needs no other file and no network. Where {@link TakeVideo#FILE} lies in the folder
 * already, it plays that; else, and where the video was left behind since, it shows stills. Without script it can be read as
 * well.
 */
public final class ReportPage implements Output {
    private final FacesToBlur faces;
    private final Progress progress;

    /** @param progress told how many of the stills are taken */
    public ReportPage(FacesToBlur faces, Progress progress) {
        this.faces = faces;
        this.progress = progress;
    }

    @Override
    public String name() {
        return Outputs.PAGE;
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException, InterruptedException {
        write(take, new Stills(take.take().video(), faces, progress)::jpegs, folder.resolve(name()));
    }

    static void write(AnalysedTake take, MomentPictures.Source stills, Path file)
            throws IOException, InterruptedException {
        ClipFacts clip = take.clip();
        MomentPictures pictures =
                MomentPictures.of(take.comparison(), (double) clip.widthPx() / clip.heightPx(), stills);
        Optional<String> video = Optional.of(TakeVideo.FILE).filter(name -> Files.exists(file.resolveSibling(name)));
        Pages.write("report.jte", new ReportWords(take).model(pictures, video), file);
    }
}
