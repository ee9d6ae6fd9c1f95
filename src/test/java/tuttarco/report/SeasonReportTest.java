package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.season.Season;
import tuttarco.season.SeasonFixture;

class SeasonReportTest {
    @TempDir
    Path folder;

    private Document page(Season season, String... notes) throws IOException {
        SeasonReport.write(season, List.of(notes), folder);
        return Jsoup.parse(folder.resolve(SeasonReport.PAGE));
    }

    private static List<String> items(Document page, String section) {
        return page.select("#" + section + " > ul > li").eachText();
    }

    @Test
    void aSeasonThatGotBetterIsToldSo() throws IOException {
        Document page = page(Season.of(SeasonFixture.improving()), "season.jsonl: line 2 was <cut off>.");
        assertEquals(
                List.of("season.jsonl: line 2 was <cut off>."),
                page.select(".notes li").eachText());
        List<String> trends = items(page, "trends");
        assertEquals(3, trends.size(), trends.toString());
        assertTrue(
                trends.get(0).startsWith("The section goes with the marking more often than at first: "),
                trends.get(0));
        assertTrue(
                trends.get(1).startsWith("Desk 3 inside goes with the marking more often than at first: "),
                trends.get(1));
        assertTrue(trends.get(1).endsWith(" over 6 takes."), trends.get(1));
        assertEquals("Desk 4 inside changes earlier than at first: +90 to +18 ms over 7 takes.", trends.get(2));
        List<String> candidates = items(page, "marking");
        assertEquals(1, candidates.size());
        assertTrue(
                candidates.get(0).startsWith("Bar 5, beats 1, 2: left in 7 of 7 takes (players: 1 Oct "),
                candidates.get(0));
        assertTrue(
                candidates.get(0).endsWith("marked: down up down up; played by those who left: up down down up."),
                candidates.get(0));
        assertEquals(2, page.select("figure svg").size());
        assertEquals(7, page.select("#takes tbody tr").size());
    }

    @Test
    void theFilesHoldTheFiguresWithGapsWhereThereAreNone() throws IOException {
        page(Season.of(SeasonFixture.improving()));
        List<String> lines = Files.readAllLines(folder.resolve("season.csv"));
        assertEquals("of,who,metric,unit,take,day,title,value,low,high,count,trend,p", lines.get(0));
        assertEquals(1 + 7 * (1 + 12 + 12), lines.size());
        String gap = lines.stream()
                .filter(l -> l.startsWith("player,Desk 3 inside,with-marking,share,3,"))
                .findFirst()
                .orElseThrow();
        assertTrue(gap.startsWith("player,Desk 3 inside,with-marking,share,3,2026-10-15,Take 2,,,,,rising,0.0"), gap);
        List<String> bowings = Files.readAllLines(folder.resolve("season-bowings.csv"));
        assertEquals("bar,beat,marked,left,instead,takes_left,takes,players_left,players_judged,p", bowings.get(0));
        assertEquals(5, bowings.size());
        assertTrue(bowings.get(1).startsWith("5,1,down,yes,up,7,7,"), bowings.get(1));
        assertTrue(bowings.get(3).startsWith("5,3,down,no,down,7,7,"), bowings.get(3));
        try (Stream<Path> charts = Files.list(folder.resolve("charts"))) {
            Set<String> names =
                    charts.map(p -> p.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of("season-share.png", "season-share.svg", "season-lag.png", "season-lag.svg"), names);
        }
    }

    @Test
    void ofFewTakesThePageSaysWhatItCantTell() throws IOException {
        Document page = page(Season.of(SeasonFixture.improving().subList(0, 3)));
        assertEquals(
                List.of(
                        "No trend is shown to be more than chance.",
                        "Too few takes to tell a trend of any player: it needs 5 or more takes.",
                        "Of the section no trend can be told from fewer than 5 takes."),
                items(page, "trends"));
        Document none = page(Season.of(List.of()));
        assertTrue(none.text().contains("No bar was played in two takes"), none.text());
        assertTrue(none.text().contains("Nothing can be said: that takes two marked takes"), none.text());
        assertEquals(0, none.select("figure").size());
    }
}
