package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.compare.Evenness;
import tuttarco.film.FacesToBlur;

class ReportPageTest extends OutputContract {
    @Override
    Output output() {
        return new ReportPage(FacesToBlur.none(), share -> {});
    }

    private Document page(AnalysedTake take) throws Exception {
        return Jsoup.parse(written(take));
    }

    @Test
    void saysInPlainWordsWhatToRehearse() throws Exception {
        Document page = page(Fixtures.unified());
        assertEquals(
                List.of(
                        "Bar 3 beat 1 to bar 4 beat 4 (0:05.0): Desk 3 inside turned; back by bar 5, by a retake 93 % sure"),
                page.select("#rehearse li").eachText());
        assertEquals("Rehearse first", page.select("#rehearse h2").text());
    }

    /** 8 x 46 marked beats, less 4 unsure and 16 unseen: 348 judged, 340 of them with. */
    @Test
    void summaryIsThreeSentencesAfterWhatWasAnalysed() throws Exception {
        Document page = page(Fixtures.unified());
        assertEquals(
                "8 players over 12 bars, 0:26.0 of video, meant to be bowed alike.",
                page.select(".what").text());
        String lead = page.select(".lead").text();
        String two = "Of 348 beats of all players that could be judged, 340 (98 %) went with the marking. "
                + "Rehearse first: Bar 3 beat 1 to bar 4 beat 4 (0:05.0). ";
        assertTrue(lead.startsWith(two), lead);
        assertTrue(lead.substring(two.length()).startsWith("Whether the section bowed as one or freely is"), lead);
    }

    /** As {@link Fixtures} has it: one bar of two was loud enough. */
    @Test
    void howItSoundedIsSaidWithCaution() throws Exception {
        assertEquals(
                "Within a bar the loudness spreads by 1.5 dB (standard deviation, median of 1 bar). "
                        + "At bow changes the sound dips by 3.3 dB (median of 4 changes). " + Evenness.CAUTION,
                page(Fixtures.unified()).select("#sound > p").text());
    }

    @Test
    void eachPlayerHasAPart() throws Exception {
        Document page = page(Fixtures.unified());
        assertEquals(8, page.select("#players article").size());
        assertEquals(
                "With the marking on 38 of 46 judged beats. Not shown to change late or early: median +25 ms of 40 changes, "
                        + "where less than 27 ms could not be seen. "
                        + "On average a stroke took 100 % of the bow of the longest one (46 strokes measured). "
                        + "Bow taken beside the leader's: 100 %, the median of 38 strokes both played, "
                        + "95 % interval 100 to 100 %.",
                page.select("#player-6 > p").get(1).text());
        assertTrue(page.select("#player-8").text().contains("Not judged: 16 beats not seen."));
        assertEquals(14, page.select("figure .chart svg").size());
        assertEquals(2, page.select("figure .strip").size());
        assertEquals(16, page.select("figure details table caption").size());
    }

    /** Of the first player the 23 up-bows are placed; of what is not seen nothing is said. */
    @Test
    void howMuchBowAndWhereIsSaidWhereItIsKnown() throws Exception {
        Document page = page(Fixtures.unified());
        assertTrue(page.select("#player-1")
                .text()
                .contains("(46 strokes measured). In the bow: 0 near the frog, "
                        + "0 in the middle, 23 near the tip, 23 not certain."));
        assertFalse(page(Fixtures.nothingSeen()).text().contains("On average a stroke"));
    }

    /** Four of eight are no more than half; of four players the three that did the same are. */
    @Test
    void aBarManyLeaveInTheSameWayIsShownWithWhatTheyDid() throws Exception {
        assertTrue(page(Fixtures.unified()).select(".candidates").isEmpty());
        assertEquals(
                "Bar 3 (0:05.0): 3 of 4 players judged left the marking in the same way. By beat, marked: down up down up; "
                        + "played: up down up down.",
                page(Fixtures.mostTurned()).select(".candidates li").text());
    }

    @Test
    void whatATakeCannotTellIsSaid() throws Exception {
        String marking = "Nothing is marked, so nothing can be said of the marking.";
        String leader = "Nobody leads in this take, so nothing can be said of going with the leader.";
        assertEquals(
                List.of(),
                page(Fixtures.unified()).select("#rehearse .aside:not(li *)").eachText());
        assertTrue(page(Fixtures.withoutPart()).select("#rehearse").text().contains(marking));
        assertTrue(page(Fixtures.withoutLeader()).select("#rehearse").text().contains(leader));
        Document alone = page(Fixtures.alone());
        assertTrue(alone.select("#rehearse")
                .text()
                .contains("One player alone shows nothing of how together a section is."));
        assertTrue(alone.select("#player-1")
                .text()
                .contains("With the marking on 3 of 3 judged beats. "
                        + "That is too little to say whether this player was turned."));
    }

    @Test
    void noLineBreaksBetweenAFigureAndItsUnit() throws Exception {
        String page = written(Fixtures.unified());
        assertTrue(page.contains("95\u00A0%") && page.contains("25\u00A0ms"));
        assertFalse(page.contains("95 %") || page.contains("25 ms"));
    }

    /** Where all beats were read of all players both figures of agreement tell the same. */
    @Test
    void agreementIsToldOnceWhereItIsOne() throws Exception {
        String alpha = "Agreement beyond chance";
        String kappa = "Agreement beyond chance, beats read of all";
        List<String> clean =
                page(Fixtures.threeBeats()).select("#together .measured dt").eachText();
        assertTrue(clean.contains(alpha) && !clean.contains(kappa), clean.toString());
        List<String> unified =
                page(Fixtures.unified()).select("#together .measured dt").eachText();
        assertTrue(unified.contains(alpha) && unified.contains(kappa), unified.toString());
    }

    @Test
    void ofTooLittleTheReportSaysThatItIs() throws Exception {
        String unity = "Whether the section bowed as one or freely can't be told: ";
        assertTrue(page(Fixtures.alone()).text().contains(unity + "fewer than three players"));
        Document threeBeats = page(Fixtures.threeBeats());
        assertTrue(threeBeats.text().contains(unity + "too few beats could be read"));
        for (int i = 1; i <= 8; i++) {
            String player = threeBeats.select("#player-" + i).text();
            assertTrue(player.contains("That is too little to say whether this player was turned."), player);
        }
    }

    @Test
    void freeBowingIsNotCalledAnError() throws Exception {
        Document page = page(Fixtures.free());
        assertEquals("Stretches apart", page.select("#rehearse h2").text());
        assertTrue(page.select("#rehearse").text().contains("Leaving the marking is not an error here"));
        assertFalse(page.text().contains("Rehearse first"));
        assertTrue(page.text().contains("changes fall apart is wanted, and nobody is called late or early"));
        assertFalse(page.text().contains("Not shown to change late"));
        assertFalse(page.text().contains("changes late, by"));
        assertTrue(page.select("#late svg, #bow svg").isEmpty());
        assertFalse(page.text().contains("Bow taken beside the leader's"));
    }

    @Test
    void nothingSeenClaimsNothing() throws Exception {
        Document page = page(Fixtures.nothingSeen());
        assertTrue(page.select("#rehearse").text().contains("Nothing can be said"));
        assertTrue(page.select(".lead").text().contains("neither that the section was together nor that it was not"));
    }

    @Test
    void cautionsAndFilesAreThere() throws Exception {
        Document page = page(Fixtures.unified());
        assertTrue(page.select("#care").text().contains("safeguarding"));
        assertTrue(page.select("#care").text().contains("not a verdict"));
        assertTrue(page.select("#care").text().contains("clinician"));
        assertTrue(page.select("#made").text().contains("ab".repeat(32)));
        assertEquals(
                "The clip ends early; what was readable is used.",
                page.select(".notes li").text());
    }

    @Test
    void needsNothingFromOutsideAndRunsNothingButItsOwnScript() throws Exception {
        Document page = page(Fixtures.unified());
        assertTrue(page.select("img, link, iframe, [src], [style], [onclick]").isEmpty());
        assertEquals(1, page.select("script").size());
        String css = page.select("style").first().data();
        String script = page.select("script").first().data();
        assertEquals(
                "default-src 'none'; style-src " + hash(css) + "; font-src data:; script-src " + hash(script)
                        + "; img-src data:; media-src 'self'; base-uri 'none'; form-action 'none'",
                page.select("meta[http-equiv=Content-Security-Policy]").attr("content"));
        assertFalse((css + script).contains("http"), "what loads nothing");
    }

    private static String hash(String text) throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    }

    /**
     * Small enough to be sent by mail: sixty players over four hundred bars, with a still of each. These have
     * 0.2 bytes a pixel; measured are at most 0.15 (method page).
     */
    @Test
    void aWholeOrchestraFitsIn15Megabytes() throws Exception {
        Path page = folder.resolve(Outputs.PAGE);
        ReportPage.write(
                Fixtures.large(),
                (timesS, widthPx) -> timesS.stream()
                        .map(t -> Optional.of(new byte[widthPx * widthPx * 9 / 16 / 5]))
                        .toList(),
                page);
        assertTrue(Files.size(page) < 15_000_000, Files.size(page) + " bytes");
        String text = Files.readString(page);
        assertEquals(400, text.split("data:image/jpeg;base64,", -1).length - 1);
        assertEquals(2 * 400, text.split("data-beats=", -1).length - 1);
        assertTrue(text.contains("they lie beside it in the folder charts"), "too many curves for one page");
    }

    @ParameterizedTest
    @MethodSource("takes")
    void linksAndLabelsMeetTheirIds(AnalysedTake take) throws Exception {
        Document page = page(take);
        Set<String> ids = new HashSet<>();
        for (Element element : page.select("[id]")) {
            assertTrue(ids.add(element.id()), "twice " + element.id());
        }
        assertFalse(page.select("a[href]").isEmpty());
        for (Element link : page.select("a[href]")) {
            assertTrue(ids.contains(link.attr("href").substring(1)), link.outerHtml());
        }
        for (Element element : page.select("[aria-labelledby]")) {
            assertTrue(ids.contains(element.attr("aria-labelledby")), element.tagName());
        }
        assertEquals("en", page.select("html").attr("lang"));
        assertEquals(1, page.select("h1").size());
        assertEquals(1, page.select("main").size());
        assertEquals(page.select("table").size(), page.select("table > caption").size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "'&amp;</style></title>",
                "</svg><b>"
            })
    void labelsAreOnlyWords(String label) throws Exception {
        Document page = page(Fixtures.named(label));
        assertTrue(page.select("script:not(body > script), img, [onerror]").isEmpty());
        assertEquals(1, page.select("script").size());
        assertEquals(label, page.select("#player-1 h3").text());
        assertEquals(label, page.select("h1").text());
        assertEquals(14, page.select("figure .chart svg").size());
    }
}
