package tuttarco.film;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.chart.AtTime;
import tuttarco.chart.Cell;
import tuttarco.chart.Palette;
import tuttarco.chart.PlayerSign;
import tuttarco.report.AnalysedTake;
import tuttarco.report.Fixtures;
import tuttarco.video.ClipPictures;
import tuttarco.video.ClipWriter;
import tuttarco.video.MadeClip;
import tuttarco.video.NumberedClip;
import tuttarco.video.SoundFormat;
import tuttarco.video.TestClips;

/** The film, decoded again, of a grey clip in which at one time all is white and a click is heard. */
class FilmTest {
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 720;
    private static final int GREY = 128;
    private static final int PICTURES = 40;
    private static final int FLASH = 15;

    /** Required: sound lies within this of the picture, seconds; so does what broadcasters call in sync (common practice, no source). */
    private static final double IN_SYNC_S = 0.02;

    private final AnalysedTake take = Fixtures.unified();

    @TempDir
    Path folder;

    /** Uneven, as of a phone. */
    private static double timeS(int picture) {
        return 0.2 * picture + (picture % 2 == 1 ? 0.033 : 0);
    }

    private Path clip() throws Exception {
        Path file = folder.resolve("clip.mp4");
        try (ClipWriter writer =
                ClipWriter.open(file, WIDTH_PX, HEIGHT_PX, 5, 400_000, Optional.of(SoundFormat.mono(48_000)))) {
            for (int i = 0; i < PICTURES; i++) {
                writer.frame(timeS(i), plain(i == FLASH ? 255 : GREY));
            }
            float[] sound = new float[(int) (48_000 * timeS(PICTURES))];
            int from = (int) Math.round(48_000 * timeS(FLASH));
            for (int i = from; i < from + 960; i++) {
                sound[i] = (float) Math.sin(2 * Math.PI * 2000 * i / 48_000);
            }
            writer.sound(sound);
            writer.finish();
        }
        return file;
    }

    private static BufferedImage plain(int grey) {
        BufferedImage picture = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = picture.createGraphics();
        g.setColor(new Color(grey, grey, grey));
        g.fillRect(0, 0, WIDTH_PX, HEIGHT_PX);
        g.dispose();
        return picture;
    }

    private Path film(Path clip, String name) throws Exception {
        Path file = folder.resolve(name);
        FilmSigns signs = new FilmSigns(take.atTime(), take.comparison(), take.reference(), List.of());
        new Film(clip, signs, FacesToBlur.none()).write(file, share -> {});
        return file;
    }

    @Test
    void everyPictureKeepsItsTimeAndTheSoundItsPicture() throws Exception {
        Path film = film(clip(), "film.mp4");
        List<Double> timesS = MadeClip.timesS(film);
        assertEquals(PICTURES, timesS.size());
        for (int i = 0; i < PICTURES; i++) {
            assertEquals(timeS(i), timesS.get(i), 1e-4);
        }
        double flashS = Double.NaN;
        try (ClipPictures pictures = ClipPictures.open(film)) {
            do {
                if (grey(MadeClip.picture(pictures), 4, 4) > 200) {
                    assertTrue(Double.isNaN(flashS), "it flashes once");
                    flashS = pictures.timeS();
                }
            } while (pictures.next());
        }
        assertEquals(timeS(FLASH), flashS, 1e-4);
        assertEquals(flashS, MadeClip.firstLoudS(film, timeS(PICTURES)), IN_SYNC_S);
    }

    @Test
    void signsStandWhereTheReadingsSay() throws Exception {
        Path film = film(clip(), "film.mp4");
        try (ClipPictures pictures = ClipPictures.open(film)) {
            FilmSize size = FilmSize.of(Fixtures.unified().clip());
            assertEquals(size.heightPx(), pictures.facts().heightPx());
            pictures.seek(5.25);
            BufferedImage picture = MadeClip.picture(pictures);
            int with = 0;
            int against = 0;
            for (AtTime.Shown shown : take.atTime().at(pictures.timeS())) {
                Rectangle2D cell = PlayerSign.cell(FilmSigns.seat(shown.player(), size), shown.side());
                boolean signed = shown.cell().state() != Cell.State.EMPTY;
                double orange = share(picture, cell, size, FilmTest::likeAgainst);
                assertEquals(signed, share(picture, cell, size, FilmTest::coloured) > 0.5);
                assertEquals(shown.cell().state() == Cell.State.AGAINST, orange > 0.2, shown.toString());
                with += shown.cell().state() == Cell.State.WITH ? 1 : 0;
                against += shown.cell().state() == Cell.State.AGAINST ? 1 : 0;
            }
            assertTrue(with >= 5 && against == 1, with + " with and " + against + " against");
            assertEquals(
                    GREY, grey(picture, WIDTH_PX - 3, HEIGHT_PX - 4), 6, "beside the signs the picture is the clip's");
        }
    }

    private static boolean coloured(Color colour) {
        return Math.abs(colour.getGreen() - GREY) > 40 || Math.abs(colour.getRed() - GREY) > 40;
    }

    private static boolean likeAgainst(Color colour) {
        Color against = Palette.PAPER.against();
        return Math.abs(colour.getRed() - against.getRed()) < 40
                && Math.abs(colour.getGreen() - against.getGreen()) < 40
                && Math.abs(colour.getBlue() - against.getBlue()) < 60;
    }

    private static double share(BufferedImage picture, Rectangle2D cell, FilmSize size, Predicate<Color> like) {
        int count = 0;
        int all = 0;
        for (double y = cell.getMinY(); y < cell.getMaxY(); y++) {
            for (double x = cell.getMinX(); x < cell.getMaxX(); x++) {
                int column = (int) (size.signsScale() * x);
                int row = (int) (size.signsScale() * y);
                all++;
                count += like.test(new Color(picture.getRGB(column, row))) ? 1 : 0;
            }
        }
        return (double) count / all;
    }

    @Test
    void nothingOfTheSourceIsCarriedOverButPictureAndSound() throws Exception {
        Path film = film(toldClip(), "film.mp4");
        MadeClip.assertTellsNothing(film);
        String bytes = new String(Files.readAllBytes(film), StandardCharsets.ISO_8859_1);
        assertTrue(bytes.indexOf("moov") < bytes.indexOf("mdat"), "it plays before it is loaded");
    }

    private Path toldClip() throws Exception {
        Path plain = folder.resolve("plain.mp4");
        TestClips.write(plain, NumberedClip.evenly(5, 5), timeS -> plain(GREY));
        Path told = MadeClip.telling(plain, folder.resolve("told.mp4"));
        Files.delete(plain);
        return told;
    }

    @Test
    void equalTakesGiveEqualBytes() throws Exception {
        Path clip = toldClip();
        assertArrayEquals(Files.readAllBytes(film(clip, "one.mp4")), Files.readAllBytes(film(clip, "other.mp4")));
    }

    @Test
    void interruptedNothingIsWritten() throws Exception {
        Path clip = toldClip();
        Thread.currentThread().interrupt();
        assertThrows(InterruptedException.class, () -> film(clip, "film.mp4"));
        assertFalse(Thread.interrupted());
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(clip), left.toList());
        }
    }

    private static int grey(BufferedImage picture, int x, int y) {
        return new Color(picture.getRGB(x, y)).getGreen();
    }
}
