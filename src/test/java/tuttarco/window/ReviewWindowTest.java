package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.Optional;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import tuttarco.bow.BowDirection;
import tuttarco.chart.Cell;
import tuttarco.chart.CellRow;
import tuttarco.corrections.Correction;
import tuttarco.report.AnalysedTake;
import tuttarco.review.Mark;
import tuttarco.strokes.StrokeKind;

/** What was read is looked at and set right; planted in the take: desk 2 inside is turned in bars 3 and 4. */
class ReviewWindowTest extends ReadWindowTest {
    private static final String TURNED = "Desk 2 inside";

    private void review() throws Exception {
        openAt(KeyEvent.VK_5);
        untilSpots();
    }

    private AnalysedTake analysed() {
        return GuiActionRunner.execute(() -> session().analysed().orElseThrow());
    }

    private void untilCorrected(int times) {
        ReadSample.until(
                times + " corrections count",
                () -> session().analysed().orElseThrow().corrected().size() == times);
        robot().waitForIdle();
    }

    private String chosen() {
        return window().label("review-chosen").text();
    }

    private SectionView section() {
        return robot().finder().findByName("review-section", SectionView.class);
    }

    /** What the table shows of the turned player; the marked row comes first. */
    private Cell cell(int beat) {
        AnalysedTake take = analysed();
        return CellRow.of(take.comparison(), take.reference()).stream()
                .filter(row -> row.name().equals(TURNED))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(beat);
    }

    private void click(int row, int beat) {
        Rectangle box = SectionView.box(row, beat);
        robot().click(section(), new Point((int) box.getCenterX(), (int) box.getCenterY()), MouseButton.LEFT_BUTTON, 1);
        robot().waitForIdle();
    }

    @Test
    void withoutAReadTakeItSaysWhatComesFirst() {
        requireOpenFirst(KeyEvent.VK_5, "review");
    }

    @Test
    void aSpotIsGoneTo() throws Exception {
        review();
        assertTrue(window().list("review-spots").item(0).value().startsWith("Bar 3 beat 1 to bar 4 beat 4"));
        window().list("review-spots").clickItem(0);
        assertEquals(TURNED + ", bar 3 beat 1 to bar 4 beat 4", chosen());
        assertEquals(Optional.of(TURNED), session().choice().player());
        // the truth of the sample: 112 beats a minute, bar 3 begins with its ninth beat at 5.286 s
        assertEquals(5.286, session().choice().timeS(), 0.001);
    }

    @Test
    void cellsAreChosenByMouseAndKeys() throws Exception {
        review();
        click(4, 8);
        assertEquals(TURNED + ", bar 3 beat 1", chosen());
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        robot().waitForIdle();
        assertEquals(TURNED + ", bar 3 beat 2", chosen());
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_RIGHT);
        assertEquals(TURNED + ", bar 3 beat 2 to bar 3 beat 3", chosen());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_RIGHT);
        robot().pressAndReleaseKeys(KeyEvent.VK_UP);
        robot().waitForIdle();
        assertEquals("Desk 2 outside, bar 4 beat 1", chosen());
    }

    @Test
    void readingsAreSetRightAndOneIsTakenBack() throws Exception {
        review();
        click(4, 8);
        Cell before = cell(8);
        assertEquals(Cell.State.AGAINST, before.state());
        BowDirection other = before.direction().orElseThrow().opposite();
        robot().pressAndReleaseKeys(other == BowDirection.DOWN ? KeyEvent.VK_D : KeyEvent.VK_U);
        untilCorrected(1);
        assertEquals(Cell.State.WITH, cell(8).state());
        assertTrue(cell(8).byHand());
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT, KeyEvent.VK_N);
        untilCorrected(2);
        assertEquals(Cell.State.UNSEEN, cell(9).state());
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        robot().waitForIdle();
        window().button("review-still").click();
        untilCorrected(3);
        assertTrue(cell(10).byHand());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        untilCorrected(2);
        assertEquals(new Cell(Cell.State.AGAINST, cell(10).direction()), cell(10));
        window().tabbedPane("review-lists").selectTab("Set by hand");
        assertEquals(4, window().list("review-history").target().getModel().getSize());
        window().button("review-redo").click();
        untilCorrected(3);
        assertEquals(
                new Correction.StrokeSet(
                        TURNED,
                        analysed().comparison().beats().beats().get(10).timeS(),
                        analysed().comparison().beats().endS(10),
                        StrokeKind.STILL),
                analysed().corrected().get(2).correction());
        pictures("review-corrected");
    }

    @Test
    void aPlayerIsAbsentForTheChosenBars() throws Exception {
        review();
        window().list("review-spots").clickItem(0);
        robot().pressAndReleaseKeys(KeyEvent.VK_A);
        untilCorrected(1);
        for (int beat = 8; beat < 16; beat++) {
            assertEquals(Cell.State.ABSENT, cell(beat).state());
        }
        assertEquals(0, window().list("review-spots").target().getModel().getSize());
    }

    @Test
    void aChangeIsDragged() throws Exception {
        review();
        window().list("review-spots").clickItem(0);
        BowCurve curve = robot().finder().findByName("review-bow", BowCurve.class);
        ReadSample.until("the bow is there", () -> curve.line().isPresent());
        double changeS = GuiActionRunner.execute(() -> curve.line()
                .orElseThrow()
                .next(Mark.Kind.CHANGE, session().choice().timeS() + 0.1, false)
                .orElseThrow()
                .timeS());
        Point from = GuiActionRunner.execute(() -> curve.place(changeS));
        robot().pressMouse(curve, from);
        robot().moveMouse(curve, from.x + 4, from.y);
        robot().moveMouse(curve, from.x + 12, from.y);
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        untilCorrected(1);
        Correction.ChangeMoved moved = assertInstanceOf(
                Correction.ChangeMoved.class, analysed().corrected().get(0).correction());
        assertEquals(changeS, moved.fromS());
        double laterS = moved.toS() - changeS;
        assertTrue(laterS > 0.02 && laterS < 0.3, "moved by " + laterS + " s");
    }

    @Test
    void changesAndBeatsMoveByKeys() throws Exception {
        review();
        window().list("review-spots").clickItem(0);
        BowCurve curve = robot().finder().findByName("review-bow", BowCurve.class);
        ReadSample.until("the bow is there", () -> curve.line().isPresent());
        robot().focusAndWaitForFocusGain(curve);
        robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_RIGHT);
        robot().pressAndReleaseKeys(KeyEvent.VK_ENTER);
        untilCorrected(1);
        Correction.ChangeMoved change = assertInstanceOf(
                Correction.ChangeMoved.class, analysed().corrected().get(0).correction());
        assertEquals(0.02, change.toS() - change.fromS(), 1e-6);
        robot().pressAndReleaseKeys(KeyEvent.VK_UP);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_LEFT);
        robot().pressAndReleaseKeys(KeyEvent.VK_ENTER);
        untilCorrected(2);
        Correction.BeatMoved beat = assertInstanceOf(
                Correction.BeatMoved.class, analysed().corrected().get(1).correction());
        assertEquals(-0.01, beat.toS() - beat.fromS(), 1e-6);
    }

    @Test
    void pictures() throws Exception {
        review();
        window().list("review-spots").clickItem(0);
        robot().waitForIdle();
        pictures("review");
        picture("review", Theme.PAPER, 960, 600);
    }
}
