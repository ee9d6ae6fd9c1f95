package tuttarco.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import tuttarco.strokes.Bows;

class ChartPiecesTest {
    /** Of a take of 130 s, in rows of 20 s. */
    private static final SectionFixture LONG = SectionFixture.clean(2, 256);

    private static Chart motion() {
        return new BowMotion(
                1, LONG.tracks.get(0), Bows.of(LONG.tracks.get(0), LONG.readings.get(0)), LONG.beats, List.of());
    }

    @Test
    void aChartThatIsLowEnoughStaysWhole() {
        Chart chart = motion();
        assertEquals(List.of(ChartFiles.svg(chart)), ChartFiles.pieces(chart, chart.heightPx()));
    }

    @Test
    void piecesFollowEachOtherFromTopToBottomAtItsCuts() {
        Chart chart = motion();
        assertEquals(6, chart.cutsPx().size());
        List<String> pieces = ChartFiles.pieces(chart, 700);
        assertEquals(3, pieces.size());
        int topPx = 0;
        for (String text : pieces) {
            Element piece = Jsoup.parse(text).selectFirst("svg");
            int heightPx = Integer.parseInt(piece.attr("height"));
            assertTrue(heightPx <= 700, heightPx + " px");
            assertEquals("0 " + topPx + " " + chart.widthPx() + " " + heightPx, piece.attr("viewBox"));
            topPx += heightPx;
            assertTrue(topPx == chart.heightPx() || chart.cutsPx().contains(topPx), topPx + " px");
        }
        assertEquals(chart.heightPx(), topPx);
    }

    /** A page knows each id once. */
    @Test
    void theFirstPieceHoldsAllAndTheOthersShowIt() {
        List<String> pieces = ChartFiles.pieces(motion(), 700);
        Element first = Jsoup.parse(pieces.get(0)).selectFirst("svg");
        assertEquals("img", first.attr("role"));
        assertEquals(1, first.select("> g#bow-01-all").size());
        for (String text : pieces.subList(1, pieces.size())) {
            Element piece = Jsoup.parse(text).selectFirst("svg");
            assertEquals("true", piece.attr("aria-hidden"));
            assertEquals("#bow-01-all", piece.select("> use").attr("href"));
            assertTrue(piece.select("[id]").isEmpty(), text);
        }
    }

    /** Nothing that a chart shows in one row is cut: what is written near a cut lies above or below it. */
    @Test
    void noWordsLieOnACut() {
        Chart chart = motion();
        Element svg = Jsoup.parse(ChartFiles.svg(chart)).selectFirst("svg");
        for (int cutPx : chart.cutsPx()) {
            for (Element words : svg.select("text[y]")) {
                double baseline = Double.parseDouble(words.attr("y"));
                assertTrue(
                        baseline < cutPx - 2 || baseline - Look.SMALL_PX > cutPx,
                        words.text() + " on the cut at " + cutPx);
            }
        }
    }
}
