package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.season.Records;
import tuttarco.season.TakeAgainstTake;
import tuttarco.season.TakeOnRecord;

/** The page and the data of takes made by hand. */
class ComparedTakesTest {
    @TempDir
    Path folder;

    private static Records twoTurned() {
        Records take = Records.bars(1, 16, 8);
        for (int bar = 4; bar < 8; bar++) {
            take.against(6, bar, 4).against(7, bar, 4);
        }
        return take;
    }

    private Document page(TakeOnRecord... takes) throws IOException {
        new ComparedTakes(TakeAgainstTake.among(List.of(takes)), List.of(), List.of(), "0.1.0").write(folder);
        return Jsoup.parse(Files.readString(folder.resolve("compare.html")));
    }

    @Test
    void whatGotBetterIsSaidWithBarsAndPlayers() throws IOException {
        Document page = page(twoTurned().take("Tuesday"), Records.bars(1, 16, 8).take("<Friday>"));
        assertEquals(
                List.of("The section went with the marking on 100 % of the beats, before on 94 %. By the"
                        + " readings most of all p6 and p7 in bars 5–8: with the marking on 32 of 32 beats, before on 0 of"
                        + " 32 beats."),
                page.select("#changed .better li").eachText());
        assertTrue(page.select("#changed .worse").isEmpty());
        assertEquals("Tuesday – <Friday>", page.select("h1").text());
        assertEquals(1, page.select("#bars svg").size());
        assertTrue(page.select("#care").text().contains("evidence, not a verdict"));
        assertTrue(Files.size(folder.resolve("charts/take-against-take.png")) > 0);
        assertTrue(Files.size(folder.resolve("charts/take-against-take.svg")) > 0);
    }

    @Test
    void takesThatAreAlikeShowNothing() throws IOException {
        Document page = page(twoTurned().take("a"), twoTurned().take("b"));
        assertEquals(
                "What changed Nothing that could be told from chance and from the errors of reading.",
                page.select("#changed").text());
        assertTrue(page.select(".lead").text().contains("no change beyond chance"));
    }

    /** The one turned bar of the middle take is one player's: a hint, and no more. */
    @Test
    void ofThreeTakesEachStepIsSaid() throws IOException {
        Document page = page(
                twoTurned().take("a"),
                Records.bars(1, 16, 8).against(1, 0, 4).take("b"),
                Records.bars(1, 16, 8).take("c"));
        assertEquals(
                List.of("1. a to 2. b", "2. b to 3. c"),
                page.select("#steps h3").not("#steps ul h3").eachText().stream()
                        .filter(t -> t.contains(" to "))
                        .toList());
        assertEquals(1, page.select("#steps .better").size());
        List<String> csv = Files.readAllLines(folder.resolve("compare.csv"));
        assertEquals("from,to,metric,scope,name,pairs,first,second,unit,p,claim", csv.get(0));
        assertTrue(csv.get(1).startsWith("1,3,with-marking,section,,128,0.938,1.000,share,0.0085,better"), csv.get(1));
        assertTrue(csv.stream().anyMatch(l -> l.startsWith("2,3,with-marking,section,,128,0.992,1.000,share,,none")));
        assertTrue(csv.stream().anyMatch(l -> l.startsWith("1,2,with-marking,player,p7,16,0.750,1.000,share,")));
    }

    @Test
    void whatCannotBeToldIsSaid() throws IOException {
        Document page = page(
                Records.bars(1, 12, 3).take("a"),
                Records.bars(5, 20, 2).upFirst().free().take("b"));
        String unsaid = page.select("#unsaid").text();
        assertTrue(unsaid.contains("Only in the first take, and so left out: bars 1, 2, 3, 4; p2."), unsaid);
        assertTrue(unsaid.contains("Only in the last take, and so left out: bars 13, 14,"), unsaid);
        assertTrue(unsaid.contains("The marking of bars 5, 6, 7,"), unsaid);
        assertTrue(unsaid.contains("One take was meant to be bowed freely"), unsaid);
        assertTrue(unsaid.contains("How evenly the takes sounded can't be compared"), unsaid);
        assertFalse(unsaid.contains("microphone"), unsaid);
    }

    /** Differences of half a unit up and down by turns have a deviation of 0.53 in eight bars, t is 2.36: 0.53 / sqrt 8 * 2.36. */
    @Test
    void howItSoundsIsSaidWithIntervalAndEffect() throws IOException {
        Records before = Records.bars(1, 8, 3);
        Records after = Records.bars(1, 8, 3);
        for (int bar = 0; bar < 8; bar++) {
            before.sounding(bar, 2, 4);
            after.sounding(bar, bar % 2 == 0 ? 2.5 : 1.5, bar % 2 == 0 ? 3.1 : 2.9);
        }
        assertEquals(
                List.of(
                        "Within a bar the loudness spreads by 2.0 dB; before by 2.0 dB (difference +0.0 dB, 95 % interval"
                                + " -0.4 to +0.4, effect size +0.0, of 8 bars). That shows no change beyond chance.",
                        "At bow changes the sound dips by 3.0 dB; before by 4.0 dB (difference -1.0 dB, 95 % interval -1.1"
                                + " to -0.9, effect size -9.4, of 8 bars)."),
                page(before.take("a"), after.take("b")).select("#sound li").eachText());
    }
}
