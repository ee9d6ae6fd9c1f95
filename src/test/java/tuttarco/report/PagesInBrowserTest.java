package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import tuttarco.chart.SectionFixture;
import tuttarco.season.Records;
import tuttarco.season.Season;
import tuttarco.season.SeasonFixture;
import tuttarco.season.TakeAgainstTake;
import tuttarco.video.ClipWriter;

/** The pages as a browser shows them from disk. */
class PagesInBrowserTest {
    private static final List<Integer> WIDTHS_PX = List.of(360, 768, 1920);

    private static final double FRAMES_PER_S = 25;

    private static final String HOSTILE =
            "<b onclick=\"alert(1)\">'Ann' & Bo</b> \u202E\u05DB\u05D9\u05E0\u05D5\u05E8 \uD83C\uDFBB";

    @TempDir
    static Path folder;

    private static Browser browser;
    private static final Map<String, Path> PAGES = new LinkedHashMap<>();

    @BeforeAll
    static void writePages() throws Exception {
        browser = Browser.start();
        report("unified", Fixtures.unified());
        report("without-part", Fixtures.withoutPart());
        report("nothing-seen", Fixtures.nothingSeen());
        report("hostile", Fixtures.named(HOSTILE));
        report("long", Fixtures.named("W".repeat(200)));
        report("many", Fixtures.manyPlayers());
        report("over-a-sheet", Fixtures.overASheet());
        Path compared = Files.createDirectory(folder.resolve("compared"));
        new ComparedTakes(
                        TakeAgainstTake.among(List.of(
                                Records.bars(1, 16, 8).against(1, 0, 4).take("W".repeat(200)),
                                Records.bars(1, 16, 8).take("<b>Friday</b>"))),
                        List.of("One note."),
                        List.of(),
                        "0.1.0")
                .write(compared);
        PAGES.put("compared", compared.resolve(ComparedTakes.PAGE));
        Path season = Files.createDirectory(folder.resolve("season"));
        SeasonReport.write(Season.of(SeasonFixture.improving()), List.of("Line 2 was <cut off>."), season);
        PAGES.put("season", season.resolve(SeasonReport.PAGE));
    }

    @AfterAll
    static void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private static void report(String name, AnalysedTake take) throws Exception {
        Path page = Files.createDirectory(folder.resolve(name)).resolve(Outputs.PAGE);
        ReportPage.write(take, PagesInBrowserTest::stills, page);
        PAGES.put(name, page);
    }

    private static List<Optional<byte[]>> stills(List<Double> timesS, int widthPx) {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(widthPx, widthPx * 9 / 16, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return timesS.stream().map(t -> Optional.of(jpeg.toByteArray())).toList();
    }

    @Test
    void nothingIsSaidInTheConsoleAndNothingLoaded() {
        PAGES.forEach((name, page) -> {
            browser.show(page, 1366);
            assertEquals(List.of(), browser.saidAndAskedFor(), name);
        });
    }

    /** What is wider than the page scrolls in a box of its own that the keyboard reaches. */
    @Test
    void nothingOverflows() {
        PAGES.forEach((name, page) -> {
            browser.show(page, WIDTHS_PX.get(0));
            for (int widthPx : WIDTHS_PX) {
                browser.size(widthPx);
                assertEquals(
                        List.of(),
                        browser.words("const boxes = '.strip, .chart, .wide, .skip, .kept';"
                                + "return [...document.querySelectorAll('body *')].filter(e => !e.closest(boxes)"
                                + " || e.matches('.strip, .chart, .wide')).filter(e => {"
                                + " const b = e.getBoundingClientRect();"
                                + " return b.width > 0 && (b.right > innerWidth + 0.5 || b.left < -0.5)})"
                                + ".map(e => e.outerHTML.slice(0, 120))"),
                        name + " at " + widthPx);
                assertEquals(
                        (long) widthPx,
                        browser.ask("return document.documentElement.scrollWidth"),
                        name + " at " + widthPx);
            }
        });
    }

    /** With the tables open on one page of each kind; the others' are the same and take long. */
    @Test
    void axeFindsNothingAmiss() throws Exception {
        for (Map.Entry<String, Path> page : PAGES.entrySet()) {
            browser.show(page.getValue(), 1366);
            browser.ask(
                    "document.querySelectorAll('details').forEach(d => { d.open = arguments[0]; })",
                    List.of("unified", "compared", "season").contains(page.getKey()));
            assertEquals(List.of(), browser.amissByAxe(), page.getKey());
        }
        browser.show(PAGES.get("unified"), 360);
        browser.night(true);
        try {
            strip().sendKeys(Keys.HOME);
            assertEquals(List.of(), browser.amissByAxe(), "at night, with a moment shown");
        } finally {
            browser.night(false);
        }
    }

    @Test
    void theValidatorFindsNoError() throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
        for (Map.Entry<String, Path> page : PAGES.entrySet()) {
            String found = validator.validate(page.getValue());
            assertEquals("", errors(found), page.getKey());
        }
    }

    private static String errors(String found) {
        return found.lines().filter(l -> l.startsWith("Error")).limit(5).reduce("", (a, b) -> a + b + "\n");
    }

    /** Every figure of a page for paper, whichever paper, fits on a sheet whole. */
    @Test
    void noChartIsCutOnPaper() {
        // A4 is 210 x 297 mm, Letter 8.5 x 11 in; margins of 14 mm; 96 px an inch
        Map<String, int[]> papers = Map.of("A4", new int[] {687, 1016}, "Letter", new int[] {710, 950});
        PAGES.forEach((name, page) -> papers.forEach((paper, size) -> {
            browser.show(page, size[0]);
            browser.medium("print");
            try {
                assertEquals(
                        List.of(),
                        browser.words(
                                "return [...document.querySelectorAll('.chart svg, .system')].filter(e => {"
                                        + " const b = e.getBoundingClientRect(), s = getComputedStyle(e);"
                                        + " return b.width === 0 || b.right > arguments[0] + 0.5 || b.height > arguments[1]"
                                        + " || s.breakInside !== 'avoid' || e.scrollWidth > e.clientWidth + 1})"
                                        + ".map(e => e.outerHTML.slice(0, 120) + JSON.stringify(e.getBoundingClientRect()))",
                                size[0],
                                size[1]),
                        name + " on " + paper);
                assertEquals((long) size[0], browser.ask("return document.documentElement.scrollWidth"), name);
            } finally {
                browser.medium("");
            }
        }));
    }

    @Test
    void labelsAreShownAsText() {
        browser.show(PAGES.get("hostile"), 1366);
        assertEquals(
                HOSTILE,
                browser.driver.findElement(By.cssSelector("#player-1 h3")).getText());
        assertEquals(HOSTILE, browser.driver.findElement(By.tagName("h1")).getText());
        assertEquals(0L, browser.ask("return document.querySelectorAll('[onclick]').length"));
    }

    @Test
    void everyLinkLeadsSomewhere() {
        PAGES.forEach((name, page) -> {
            browser.show(page, 1366);
            assertEquals(
                    List.of(),
                    browser.words("return [...document.querySelectorAll('a[href]')].filter(a =>"
                            + " !a.getAttribute('href').startsWith('#')"
                            + " || !document.getElementById(a.getAttribute('href').slice(1))).map(a => a.outerHTML)"),
                    name);
            for (WebElement link : browser.driver.findElements(By.cssSelector("nav a"))) {
                link.click();
                String id = link.getAttribute("href").replaceFirst(".*#", "");
                browser.waitUntil("Math.abs(document.getElementById('" + id + "').getBoundingClientRect().top) < 40"
                        + " || Math.ceil(scrollY + innerHeight) >= document.documentElement.scrollHeight");
            }
        });
    }

    /** What script would be needed for is not there, and a bar's number leads to its still. */
    @Test
    void withoutScriptThePageIsWhole() {
        browser.script(false);
        try {
            browser.show(PAGES.get("unified"), 1366);
            assertEquals(
                    List.of(),
                    browser.words("return [...document.querySelectorAll('button')].filter(b => b.checkVisibility())"
                            + ".map(b => b.outerHTML)"));
            browser.driver.findElements(By.cssSelector(".strip .bar a")).get(2).click();
            WebElement still = browser.driver.findElement(By.cssSelector("#moment-2 img"));
            assertTrue(still.isDisplayed());
            assertEquals("The section at 0:05.0", still.getAttribute("alt"));
        } finally {
            browser.script(true);
        }
    }

    private WebElement strip() {
        return browser.driver.findElement(By.cssSelector(".strip"));
    }

    private String moment() {
        return browser.driver.findElement(By.cssSelector("#moment .where")).getText();
    }

    private void press(String deed) {
        browser.driver
                .findElement(By.cssSelector("#moment [data-do=" + deed + "]"))
                .click();
    }

    @Test
    void withoutVideoABeatShowsItsBarsStill() {
        browser.show(PAGES.get("unified"), 1366);
        strip().sendKeys(Keys.ARROW_RIGHT);
        assertEquals("Bar 1, beat 1 – 0:01.0", moment());
        strip().sendKeys(Keys.PAGE_DOWN, Keys.PAGE_DOWN, Keys.ARROW_RIGHT);
        assertEquals("Bar 3, beat 2 – 0:05.5", moment());
        assertEquals(
                List.of("Against the marking: Desk 3 inside"),
                browser.words("return [...document.querySelectorAll('#moment li')].map(l => l.textContent)"));
        browser.waitUntil("document.querySelector('#moment img').complete");
        assertEquals("The section at 0:05.0", browser.ask("return document.querySelector('#moment img').alt"));
        assertEquals(true, browser.ask("return document.querySelector('#moment img').naturalWidth > 0"));
        press("beat-back");
        assertEquals("Bar 3, beat 1 – 0:05.0", moment());
        press("bar-on");
        press("beat-on");
        assertEquals("Bar 4, beat 2 – 0:07.5", moment());
        press("bar-back");
        assertEquals("Bar 3, beat 1 – 0:05.0", moment());
        strip().sendKeys(Keys.END, Keys.ARROW_RIGHT);
        assertEquals("Bar 12, beat 4 – 0:24.5", moment());
        assertEquals(
                List.of("Not seen: Desk 4 inside"),
                browser.words("return [...document.querySelectorAll('#moment li')].map(l => l.textContent)"));
        press("close");
        assertFalse(browser.driver.findElement(By.id("moment")).isDisplayed());
        assertEquals(List.of(), browser.saidAndAskedFor());
    }

    @Test
    void theStripGrowsAndScrollsByBarAndKeepsItsNames() {
        browser.show(PAGES.get("unified"), 768);
        String width = "return document.querySelector('.strip .bar').getBoundingClientRect().width";
        double before = ((Number) browser.ask(width)).doubleValue();
        browser.driver.findElement(By.cssSelector("[data-do=larger]")).click();
        assertEquals(before * 1.25, ((Number) browser.ask(width)).doubleValue(), 1);
        strip().sendKeys("--");
        assertEquals(before * 0.8, ((Number) browser.ask(width)).doubleValue(), 1);
        strip().sendKeys("++");
        for (int bar = 1; bar <= 3; bar++) {
            browser.driver.findElement(By.cssSelector("[data-do=bar-on]")).click();
        }
        browser.waitUntil(besideTheNames(3));
        browser.driver.findElement(By.cssSelector("[data-do=bar-back]")).click();
        browser.waitUntil(besideTheNames(2));
        browser.driver.findElement(By.cssSelector("[data-do=smaller]")).click();
        assertEquals(before, ((Number) browser.ask(width)).doubleValue(), 1);
        assertEquals(
                true,
                browser.ask("return Math.abs(document.querySelector('.strip').getBoundingClientRect().left"
                        + " - document.querySelector('.strip .names').getBoundingClientRect().left) < 1"));
    }

    private static String besideTheNames(int bar) {
        return "Math.abs(document.querySelector('.strip').querySelectorAll('.bar')[" + bar
                + "].getBoundingClientRect().left"
                + " - document.querySelector('.strip .names').getBoundingClientRect().right) < 3";
    }

    /** A beat is chosen by mouse and finger, too, in either strip. */
    @Test
    void aBeatIsChosenWhereItIsClicked() {
        browser.show(PAGES.get("unified"), 1366);
        List<WebElement> strips = browser.driver.findElements(By.cssSelector(".strip"));
        assertEquals(2, strips.size());
        for (WebElement strip : strips) {
            WebElement bar = strip.findElements(By.cssSelector(".bar")).get(4);
            browser.ask("arguments[0].scrollIntoView({block: 'center'})", strip);
            // just right of the middle of a bar of four is its third beat
            new Actions(browser.driver).moveToElement(bar, 3, 0).click().perform();
            assertEquals("Bar 5, beat 3 – 0:10.0", moment());
            assertEquals(1L, browser.ask("return arguments[0].querySelectorAll('.chosen').length", strip));
            bar.findElement(By.tagName("a")).click();
            assertEquals("Bar 5, beat 1 – 0:09.0", moment());
            press("close");
        }
        browser.driver.findElement(By.cssSelector("#player-6 a[data-first]")).click();
        assertEquals("Bar 3, beat 1 – 0:05.0", moment());
    }

    /** To within one frame of the video, by the time that the browser says of the frame it shows. */
    @Test
    void withVideoABeatAndASpotAreSoughtToTheFrame() throws Exception {
        Path beside = Files.createDirectory(folder.resolve("video"));
        Path page = beside.resolve(Outputs.PAGE);
        writeVideo(beside.resolve(TakeVideo.FILE));
        ReportPage.write(Fixtures.unified(), PagesInBrowserTest::stills, page);
        browser.show(page, 1366);
        strip().sendKeys(Keys.HOME);
        browser.waitUntil("!document.querySelector('video').hidden");
        browser.ask("const video = document.querySelector('video'); const look = (now, frame) => {"
                + " window.shownS = frame.mediaTime; video.requestVideoFrameCallback(look); };"
                + " video.requestVideoFrameCallback(look)");
        for (int beat = 1; beat < 12; beat++) {
            double beatS = SectionFixture.START_S + beat * SectionFixture.BEAT_S;
            strip().sendKeys(Keys.ARROW_RIGHT);
            browser.waitUntil("Math.abs(window.shownS - " + beatS + ") <= " + 1 / FRAMES_PER_S + " + 1e-6");
        }
        browser.driver.findElement(By.cssSelector("#rehearse a[data-first]")).click();
        browser.waitUntil("!document.querySelector('video').paused");
        List<String> heard = new ArrayList<>(browser.saidAndAskedFor());
        heard.removeIf(said -> said.endsWith("/" + TakeVideo.FILE));
        assertEquals(List.of(), heard);
        // near the end of the spot it goes on from its beginning: bars 3 and 4, 5 to 9 s
        browser.ask("document.querySelector('video').currentTime = 8.9");
        browser.waitUntil("document.querySelector('video').currentTime < 7");
        assertEquals(true, browser.ask("return document.querySelector('video').currentTime >= 5"));
        press("play");
        browser.waitUntil("document.querySelector('video').paused");
        press("again");
        browser.ask("document.querySelector('video').currentTime = 8.95");
        press("play");
        browser.waitUntil("document.querySelector('video').currentTime > 9.2");
        assertTrue(moment().startsWith("Bar 5, beat 1"), moment());
        press("slow");
        assertEquals(0.5, ((Number) browser.ask("return document.querySelector('video').playbackRate")).doubleValue());
    }

    private static void writeVideo(Path file) throws Exception {
        try (ClipWriter clip = ClipWriter.open(file, 160, 90, FRAMES_PER_S, 200_000, Optional.empty())) {
            for (int i = 0; i < 26 * FRAMES_PER_S; i++) {
                BufferedImage picture = new BufferedImage(160, 90, BufferedImage.TYPE_3BYTE_BGR);
                picture.getGraphics().fillRect(i % 160, 0, 8, 90);
                clip.frame(i / FRAMES_PER_S, picture);
            }
            clip.finish();
        }
    }
}
