package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.demo.DrawnFaces;
import tuttarco.pose.PackedModel;
import tuttarco.video.ClipPictures;
import tuttarco.video.MadeClip;

/** The whole way from a take to its video, of a rendered section of two whose clip says where it was filmed. */
class AnalyseVideoTest {
    /** Required: sound lies within this of the picture, seconds (common practice, no source). */
    private static final double IN_SYNC_S = 0.02;

    /** Half the side of the square around a part of a face that is looked at, pixels: an eye and some skin. */
    private static final int AROUND_PX = 4;

    private static final DrawnFaces DRAWN = DrawnFaces.ofTwo();

    @TempDir
    static Path folder;

    private static Path clip;
    private static Path video;

    @BeforeAll
    static void analyse() throws Exception {
        PackedModel.orSkip();
        Path take = DRAWN.render(folder);
        clip = folder.resolve("small.mp4");
        Path told = MadeClip.telling(clip, folder.resolve("told.mp4"));
        Files.move(told, clip, StandardCopyOption.REPLACE_EXISTING);
        Path out = folder.resolve("out");
        Shell shell = Shell.run("analyse", take, "--video", "--no-cache", "--out", out);
        assertEquals(0, shell.code(), shell.err());
        video = out.resolve("take-video.mp4");
    }

    @Test
    void everyPictureIsThereAtItsTime() throws Exception {
        List<Double> given = MadeClip.timesS(clip);
        List<Double> made = MadeClip.timesS(video);
        assertEquals(given.size(), made.size());
        for (int i = 0; i < made.size(); i++) {
            assertEquals(given.get(i), made.get(i), 1e-4);
        }
    }

    @Test
    void theFirstClickIsHeardOnTheFirstBeat() throws Exception {
        assertEquals(DRAWN.firstClickS(), MadeClip.firstLoudS(video, 2), IN_SYNC_S);
    }

    @Test
    void nothingOfTheSourceIsCarriedOver() throws Exception {
        MadeClip.assertTellsNothing(video);
    }

    /** Where eyes, nose and mouth were drawn little is left of how they stood out; of the picture as a whole much is. */
    @Test
    void facesAreBlurredAndNothingElse() throws Exception {
        double facesGiven = 0;
        double facesMade = 0;
        double allGiven = 0;
        double allMade = 0;
        int points = 0;
        try (ClipPictures given = ClipPictures.open(clip);
                ClipPictures made = ClipPictures.open(video)) {
            do {
                BufferedImage from = MadeClip.picture(given);
                BufferedImage to = MadeClip.picture(made);
                for (Point2D point : DRAWN.at(given.timeS())) {
                    int x = (int) point.getX() - AROUND_PX;
                    int y = (int) point.getY() - AROUND_PX;
                    facesGiven += detail(from, x, y, 2 * AROUND_PX, 2 * AROUND_PX);
                    facesMade += detail(to, x, y, 2 * AROUND_PX, 2 * AROUND_PX);
                    points++;
                }
                allGiven += detail(from, 0, 0, from.getWidth(), from.getHeight());
                allMade += detail(to, 0, 0, from.getWidth(), from.getHeight());
            } while (given.next() && made.next());
        }
        assertTrue(points > 100);
        assertTrue(facesMade < 0.3 * facesGiven, facesMade + " of " + facesGiven);
        assertTrue(allMade > 0.8 * allGiven, allMade + " of " + allGiven);
    }

    /** How much brighter or darker each pixel is than the next on its right and below, all in all. */
    private static double detail(BufferedImage picture, int left, int top, int widthPx, int heightPx) {
        double sum = 0;
        for (int y = top; y < top + heightPx - 1; y++) {
            for (int x = left; x < left + widthPx - 1; x++) {
                int here = green(picture, x, y);
                sum += Math.abs(here - green(picture, x + 1, y)) + Math.abs(here - green(picture, x, y + 1));
            }
        }
        return sum;
    }

    private static int green(BufferedImage picture, int x, int y) {
        return picture.getRGB(x, y) >> 8 & 0xFF;
    }
}
