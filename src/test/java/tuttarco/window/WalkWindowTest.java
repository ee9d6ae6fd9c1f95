package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.analysis.Analysis;
import tuttarco.beats.BeatMap;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Cell;
import tuttarco.chart.CellRow;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.Cache;
import tuttarco.pose.PackedModel;
import tuttarco.report.AnalysedTake;
import tuttarco.review.BeatsModel;
import tuttarco.review.Draft;
import tuttarco.review.Session;
import tuttarco.review.TakeReading;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.take.BeatsGiven;
import tuttarco.take.TakeFile;

/**
 * The whole way of a leader with the sample's video and part, in one window and, after closing it, in another. Planted in the
 * sample: one player is turned in bars 3 and 4; 8 bars of 4 beats at 112 a minute begin at 1 s.
 */
class WalkWindowTest extends WindowTest {
    private static final int BEATS = 32;
    private static final double BEAT_S = 60 / 112.0;

    /** Beats in bar 3, from 0: the first of them begins it. */
    private static final int BAR_3 = 8;

    @TempDir
    Path folder;

    @TempDir
    Path state;

    @TempDir
    Path kept;

    private final HeldSound sound = new HeldSound();
    private MusicStep music;

    @Override
    Optional<Path> stateFolder() {
        return Optional.of(state);
    }

    @Override
    TakeReading.Reader reader() {
        return TakeReading.by(Analysis.standard("test", Optional.of(new Cache(kept))));
    }

    @Override
    MusicStep music(Session of) {
        music = new MusicStep(
                of, (over, kind, where) -> Optional.of(folder.resolve("unified.musicxml")), (video, stopped) -> sound);
        return music;
    }

    @Test
    void fromAVideoToWhatIsHandedOut() throws Exception {
        PackedModel.orSkip();
        for (String ending : List.of(".mp4", ".musicxml")) {
            Files.copy(ReadSample.SAMPLES.resolve("unified" + ending), folder.resolve("unified" + ending));
        }
        Path video = folder.resolve("unified.mp4");
        Path take = Draft.takeOf(video);

        openVideo(video);
        List<Player> players = seatPlayers();
        assertEquals(players, TakeFile.read(take).players());
        loadPartAndTap();
        BeatsGiven beats = TakeFile.read(take).beats();
        assertEquals(new BeatsGiven.Listed(folder.resolve("unified.tapped.csv")), beats);
        readStoppingOnce();
        String turned = goToSpot();
        BowDirection set = correct(turned);
        assertEquals(4, CorrectionLog.of(take).entries().size(), "three, and one taken back");
        assertEquals(players, TakeFile.read(take).players());

        reopenWindow();
        window().list("open-recent").clickItem(0);
        window().button("open-recent-open").click();
        ReadSample.until("the take is open", () -> session().draft().isPresent());
        assertEquals(players, draft().players());
        assertEquals(beats, draft().beats());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_4);
        window().button("reading-begin").click();
        ReadSample.until("it is read", () -> session().analysed().isPresent());
        assertEquals(2, analysed().corrected().size());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_5);
        window().tabbedPane("review-lists").selectTab("Set by hand");
        ReadSample.until(
                "what was done is told",
                () -> window().list("review-history").target().getModel().getSize() == 4);
        assertEquals(set, cell(turned, BAR_3).direction().orElseThrow());
        assertTrue(cell(turned, BAR_3).byHand());
        assertEquals(Cell.State.UNSEEN, cell(turned, BAR_3 + 1).state());

        handOut(turned, set);
    }

    private void openVideo(Path video) {
        window().button("open-note-read").click();
        drop(video);
        ReadSample.until("the video is open", () -> session().draft().isPresent());
        window().button("open-go-on").click();
    }

    /** Accepts who is found, and moves one a little. */
    private List<Player> seatPlayers() {
        SeatsView picture = robot().finder().findByName("seats-picture", SeatsView.class);
        ReadSample.until("a still is seen", () -> picture.scale() != 1.0);
        window().button("seats-search").click();
        ReadSample.until("players are found", () -> !draft().players().isEmpty());
        robot().waitForIdle();
        List<Player> found = draft().players();
        assertEquals(8, found.size());
        SeatBox before = found.get(7).seat();
        double xPx = before.xPx() + before.widthPx() / 2.0;
        double yPx = before.yPx() + before.heightPx() / 2.0;
        drag(picture, inView(picture, xPx, yPx), inView(picture, xPx + 8, yPx + 4));
        SeatBox after = draft().players().get(7).seat();
        double pixelPx = 1 / picture.scale();
        assertEquals(before.xPx() + 8, after.xPx(), 1 + pixelPx);
        assertEquals(before.yPx() + 4, after.yPx(), 1 + pixelPx);
        assertEquals(found.subList(0, 7), draft().players().subList(0, 7));
        untilSaved();
        return draft().players();
    }

    private static Point inView(SeatsView picture, double xPx, double yPx) {
        return GuiActionRunner.execute(
                () -> new Point((int) Math.round(picture.viewX(xPx)), (int) Math.round(picture.viewY(yPx))));
    }

    private void loadPartAndTap() {
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_3);
        window().button("music-part-choose").click();
        ReadSample.until("the part is read", () -> music.model().part().part().isPresent());
        window().tabbedPane("music").selectTab("Beats");
        window().label("music-tap-pad").click();
        ReadSample.until("the sound is played", sound::playing);
        for (int beat = 0; beat < BEATS; beat++) {
            sound.at(1 + beat * BEAT_S);
            robot().pressAndReleaseKeys(KeyEvent.VK_SPACE);
        }
        robot().pressAndReleaseKeys(KeyEvent.VK_ENTER);
        ReadSample.until("the sound is still", () -> !sound.playing());
        window().button("music-taps-list").click();
        ReadSample.until("the taps are the beats", () -> {
            BeatsModel beats = music.model().beats();
            return beats.source() instanceof BeatsGiven.Listed
                    && beats.beats().map(map -> map.beats().size()).equals(Optional.of(BEATS));
        });
        untilSaved();
    }

    private void readStoppingOnce() {
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_4);
        window().button("reading-begin").click();
        ReadSample.until(
                "something is read",
                () -> window().progressBar("reading-bar").target().getValue() > 0);
        window().button("reading-stop").click();
        ReadSample.until(
                "it has stopped",
                () -> window().button("reading-begin").target().getText().equals("Go on reading"));
        assertEquals(Optional.empty(), session().analysed());
        window().button("reading-begin").click();
        ReadSample.until("it is read", () -> session().analysed().isPresent());
        window().button("reading-begin").requireText("Look at it").click();
    }

    /** Goes to bars 3 and 4 by the list, and sees that the picture went there, too; tells who is turned there. */
    private String goToSpot() {
        untilSpots();
        assertTrue(window().list("review-spots").item(0).value().startsWith("Bar 3 beat 1 to bar 4 beat 4"));
        window().list("review-spots").clickItem(0);
        double spotS = session().choice().timeS();
        assertEquals(1 + BAR_3 * BEAT_S, spotS, BEAT_S / 4, "as it was tapped");
        PictureView picture = robot().finder().findByType(PictureView.class);
        ReadSample.until("the picture is there", () -> Math.abs(picture.timeS() - spotS) <= 0.04);
        return session().choice().player().orElseThrow();
    }

    /** Turns a beat's stroke, says of two that they aren't seen, and takes the last back. */
    private BowDirection correct(String player) {
        BowDirection set =
                cell(player, BAR_3).direction().map(BowDirection::opposite).orElseThrow();
        List<String> rows = CellRow.of(analysed().comparison(), analysed().reference()).stream()
                .map(CellRow::name)
                .toList();
        Rectangle box = SectionView.box(rows.indexOf(player), BAR_3);
        robot().click(
                        robot().finder().findByName("review-section", SectionView.class),
                        new Point((int) box.getCenterX(), (int) box.getCenterY()));
        robot().pressAndReleaseKeys(set == BowDirection.DOWN ? KeyEvent.VK_D : KeyEvent.VK_U);
        untilCorrected(1);
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT, KeyEvent.VK_N);
        untilCorrected(2);
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT, KeyEvent.VK_N);
        untilCorrected(3);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        untilCorrected(2);
        assertEquals(Cell.State.WITH, cell(player, BAR_3).state());
        assertEquals(Cell.State.UNSEEN, cell(player, BAR_3 + 1).state());
        assertEquals(Cell.State.AGAINST, cell(player, BAR_3 + 2).state());
        return set;
    }

    private void handOut(String player, BowDirection set) throws Exception {
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_6);
        Path out = folder.resolve("handed");
        window().textBox("hand-out-folder").setText(out.toString());
        window().checkBox("hand-out-data").check();
        window().button("hand-out-write").click();
        ReadSample.until(
                "it is written",
                () -> window().textBox("hand-out-outcome").target().getText().startsWith("Written to "));
        BeatMap beats = analysed().comparison().beats();
        List<String> strokes = Files.readAllLines(out.resolve("strokes.csv"));
        assertEquals(set.word(), readAt(strokes, player, middleS(beats, BAR_3)));
        assertEquals("unseen", readAt(strokes, player, middleS(beats, BAR_3 + 1)));
        assertEquals(
                set.opposite().word(), readAt(strokes, player, middleS(beats, BAR_3 + 4)), "nobody set that right");
        assertTrue(Files.readString(out.resolve("report.html")).contains("set by hand"));
    }

    private static double middleS(BeatMap beats, int beat) {
        return (beats.beats().get(beat).timeS() + beats.endS(beat)) / 2;
    }

    /** What the table of strokes says of a player at a time. */
    private static String readAt(List<String> strokes, String player, double timeS) {
        return strokes.stream()
                .skip(1)
                .map(line -> line.split(","))
                .filter(cells -> cells[0].equals(player)
                        && Double.parseDouble(cells[1]) <= timeS
                        && timeS < Double.parseDouble(cells[2]))
                .map(cells -> cells[3])
                .findFirst()
                .orElseThrow();
    }

    private Draft draft() {
        return GuiActionRunner.execute(() -> session().draft().orElseThrow());
    }

    private AnalysedTake analysed() {
        return GuiActionRunner.execute(() -> session().analysed().orElseThrow());
    }

    private Cell cell(String player, int beat) {
        return CellRow.of(analysed().comparison(), analysed().reference()).stream()
                .filter(row -> row.name().equals(player))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(beat);
    }

    private void untilCorrected(int times) {
        ReadSample.until(
                times + " corrections count",
                () -> session().analysed().orElseThrow().corrected().size() == times);
        robot().waitForIdle();
    }

    private void untilSaved() {
        boolean[] saved = {false};
        GuiActionRunner.execute(() -> session().whenSaved(() -> saved[0] = true));
        ReadSample.until("all is saved", () -> saved[0]);
    }
}
