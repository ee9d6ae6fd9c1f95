package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.font.FontRenderContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import nu.validator.client.EmbeddedValidator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tuttarco.chart.PlayedBars;
import tuttarco.chart.Words;

class PlayerSheetsTest extends OutputContract {
    @Override
    Output output() {
        return new PlayerSheets();
    }

    private List<Path> written(String ending) throws Exception {
        return files(folder).stream().filter(f -> f.toString().endsWith(ending)).toList();
    }

    /** Text as one line, however it was broken and whatever the blanks. */
    private static String flat(String text) {
        return text.replaceAll("[\\s\\u00A0]+", " ");
    }

    @ParameterizedTest
    @MethodSource("takes")
    void everyPlayerHasAPageAndAPdfOfOnePage(AnalysedTake take) throws Exception {
        output().write(take, folder);
        int players = take.comparison().players().size();
        assertEquals(players, written(".html").size());
        assertEquals(players + 1, written(".pdf").size());
        for (Path pdf : written(".pdf")) {
            try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
                assertEquals(pdf.endsWith("all.pdf") ? players : 1, document.getNumberOfPages());
                // A4, ISO 216: 210 x 297 mm
                assertEquals(210, document.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.1);
                assertEquals(297, document.getPage(0).getMediaBox().getHeight() / 72 * 25.4, 0.1);
            }
        }
    }

    @Test
    void pdfIsTaggedAndHasTitleLanguageAndItsFonts() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(pdf(Fixtures.unified(), 5).toFile())) {
            assertEquals(
                    "Desk 3 inside – Autumn serenade, letter B",
                    pdf.getDocumentInformation().getTitle());
            assertEquals("en", pdf.getDocumentCatalog().getLanguage());
            assertTrue(pdf.getDocumentCatalog().getMarkInfo().isMarked());
            assertTrue(pdf.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            PDStructureElement root = (PDStructureElement)
                    pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
            List<String> types = root.getKids().stream()
                    .map(k -> ((PDStructureElement) k).getStructureType())
                    .toList();
            assertEquals("H1", types.get(1));
            assertEquals(4, types.stream().filter("H2"::equals).count());
            PDStructureElement figure = (PDStructureElement) root.getKids().get(types.indexOf("Figure"));
            assertTrue(
                    figure.getAlternateDescription().startsWith("Bar 3: marked down; up; down; up. you up, against;"),
                    figure.getAlternateDescription());
            assertFontsAreEmbedded(pdf.getPage(0));
        }
    }

    private static void assertFontsAreEmbedded(PDPage page) throws Exception {
        List<String> names = new ArrayList<>();
        for (COSName name : page.getResources().getFontNames()) {
            assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
            names.add(page.getResources().getFont(name).getName().replaceFirst("^[A-Z]+\\+", ""));
        }
        assertEquals(Set.of("OpenSans", "OpenSans-Semibold"), Set.copyOf(names));
    }

    /** Both say the same: what the model says, in its order. */
    @ParameterizedTest
    @MethodSource("tuttarco.report.PlayerSheetsTest#plainTakes")
    void pageAndPdfSayTheSameWords(AnalysedTake take) throws Exception {
        for (int p = 0; p < take.comparison().players().size(); p++) {
            SheetModel sheet = sheet(take, p);
            String text = flat(text(pdf(take, p)));
            String page =
                    flat(Jsoup.parse(Files.readString(html(take, p))).body().text());
            List<String> words = SheetWordsTest.words(sheet).toList();
            assertTrue(words.size() > 8, words.toString());
            for (String sentence : words) {
                assertTrue(text.contains(flat(sentence)), sentence + " in " + text);
                assertTrue(page.contains(flat(sentence)), sentence + " in " + page);
            }
        }
    }

    static Stream<AnalysedTake> plainTakes() {
        return Stream.of(
                Fixtures.unified(),
                Fixtures.free(),
                Fixtures.withoutLeader(),
                Fixtures.withoutPart(),
                Fixtures.nothingSeen(),
                Fixtures.alone());
    }

    @Test
    void pageNeedsNothingFromOutsideAndRunsNothing() throws Exception {
        Document page = Jsoup.parse(Files.readString(html(Fixtures.unified(), 5)));
        assertTrue(page.select("script, img, link, iframe, [style], [onclick]").isEmpty());
        String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
        assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
        assertFalse(page.select("style").first().data().contains("http"));
        Set<String> ids = new HashSet<>();
        page.select("[id]").forEach(e -> assertTrue(ids.add(e.id()), e.id()));
        page.select("[aria-labelledby]").forEach(e -> assertTrue(ids.contains(e.attr("aria-labelledby"))));
    }

    /** The typeface goes with each page; only its letters in use do, or sixty pages would weigh more than a film. */
    @Test
    void aPageIsSmallEnoughToBeSent() throws Exception {
        assertTrue(Files.size(html(Fixtures.unified(), 5)) < 80_000);
        assertTrue(Files.size(pdf(Fixtures.unified(), 5)) < 80_000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "\u202E\u05DB\u05D9\u05E0\u05D5\u05E8 and \u0643\u0645\u0627\u0646",
                "\uD83C\uDFBB\uD83C\uDFBB",
                "lone \uD83C half, no \uFFFE character",
                "../../etc/passwd",
                "con"
            })
    void anyLabelIsOnlyWords(String label) throws Exception {
        AnalysedTake take = Fixtures.named(label);
        Document page = Jsoup.parse(Files.readString(html(take, 0)));
        assertTrue(page.select("script, img, [onerror]").isEmpty());
        assertEquals(Words.plain(label), page.select("h1").text());
        try (PDDocument pdf = Loader.loadPDF(pdf(take, 0).toFile())) {
            assertEquals(1, pdf.getNumberOfPages());
        }
        assertEquals("", errors(html(take, 0)));
    }

    /** What no typeface has is no box on the sheet; it is read out all the same. A sign for private use stands for any such. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ida \uDBC0\uDC00 Ōe \uDBC0\uDC00",
                "Ida \uD83C\uDFBB Ōe \uD83D\uDC69\uD83C\uDFFD\u200D\uD83C\uDFA4",
                "Ida\uFE0F Ōe \uD83C\uDDE9\uD83C\uDDEA"
            })
    void whatNoTypefaceHasIsLeftOut(String label) throws Exception {
        AnalysedTake take = Fixtures.named(label);
        SheetLayout layout = SheetLayout.of(sheet(take, 0));
        for (SheetLayout.Block block : layout.blocks()) {
            for (SheetLayout.Line line : block.lines()) {
                assertEquals(-1, line.font().canDisplayUpTo(line.text()), line.text());
            }
        }
        SheetLayout.Block title = layout.blocks().get(1);
        String drawn = title.lines().stream().map(SheetLayout.Line::text).collect(Collectors.joining(" "));
        assertTrue(drawn.startsWith("Ida") && drawn.contains("Ōe") && !drawn.contains("  "), drawn);
        try (PDDocument pdf = Loader.loadPDF(pdf(take, 0).toFile())) {
            PDStructureElement root = (PDStructureElement)
                    pdf.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
            PDStructureElement read = (PDStructureElement) root.getKids().get(1);
            assertEquals("H1", read.getStructureType());
            assertEquals(label, read.getActualText());
        }
    }

    @ParameterizedTest
    @MethodSource("takes")
    void theValidatorFindsNoError(AnalysedTake take) throws Exception {
        assertEquals("", errors(html(take, 0)));
        assertEquals("", errors(html(take, 5)));
    }

    private static String errors(Path page) throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.TEXT);
        return validator
                .validate(page)
                .lines()
                .filter(line -> line.contains("rror") && !line.endsWith("No errors found."))
                .collect(Collectors.joining("\n"));
    }

    /** A label of two hundred letters takes no more than two lines; whatever there is to say stays on the page. */
    @ParameterizedTest
    @ValueSource(strings = {"Ottoline ", "W", "\u05DB", "\uD83C\uDFBB"})
    void aLongLabelStaysOnThePage(String piece) throws Exception {
        String label = piece.repeat(200 / piece.length());
        assertInside(SheetLayout.of(sheet(Fixtures.named(label), 0)));
        try (PDDocument pdf = Loader.loadPDF(pdf(Fixtures.named(label), 0).toFile())) {
            assertEquals(1, pdf.getNumberOfPages());
        }
    }

    /** Three places of two lines each, and a label of two lines. */
    @Test
    void theFullestSheetStaysOnThePage() {
        assertInside(SheetLayout.of(fullest()));
        assertInside(SheetLayout.of(sheet(Fixtures.unified(), 1)));
    }

    static SheetModel fullest() {
        AnalysedTake often = Fixtures.oftenTurned();
        SheetModel full = sheet(often, 5);
        SheetModel.Section bars = full.sections().get(1);
        assertEquals(3, bars.places().size());
        List<SheetModel.Place> large = bars.places().stream()
                .map(p -> new SheetModel.Place(
                        "Bar 1 beat 1 to bar 11 beat 1",
                        p.clock(),
                        p.said(),
                        PlayedBars.beside(
                                p.picture().key(),
                                2,
                                often.comparison(),
                                often.reference(),
                                often.comparison().players().get(5),
                                0,
                                40)))
                .toList();
        return new SheetModel(
                new SheetModel.Head(
                        "W".repeat(200), "W".repeat(200), "Violin", full.head().opening()),
                full.sections().stream()
                        .map(s -> s.places().isEmpty()
                                ? s
                                : new SheetModel.Section(s.key(), s.heading(), s.said(), large, s.closing()))
                        .toList(),
                full.signs(),
                full.care());
    }

    /** Letter is 279.4 mm high (ANSI/ASME Y14.1), A4 210 mm wide; printers need some 5 mm. */
    private static void assertInside(SheetLayout layout) {
        assertTrue(layout.bottom() < (279.4 - 5) / 25.4 * 72, "bottom at " + layout.bottom());
        for (SheetLayout.Block block : layout.blocks()) {
            for (SheetLayout.Line line : block.lines()) {
                double right = line.x()
                        + line.font()
                                .getStringBounds(line.text(), new FontRenderContext(null, true, true))
                                .getWidth();
                assertTrue(right < (210 - 5) / 25.4 * 72, line.text() + " ends at " + right);
            }
        }
    }

    @Test
    void fileNamesAreSafeAndUnique() {
        Set<String> taken = new HashSet<>();
        assertEquals("desk-3-inside", PlayerSheets.fileName("Desk 3 inside", taken));
        assertEquals("desk-3-inside-2", PlayerSheets.fileName("DESK 3, inside!", taken));
        assertEquals("zoe-kovacs", PlayerSheets.fileName("Zoë Kovács", taken));
        assertEquals("player-con", PlayerSheets.fileName("con", taken));
        assertEquals("player-all", PlayerSheets.fileName("all", taken));
        assertEquals("player", PlayerSheets.fileName("名無し", taken));
        assertEquals("player-2", PlayerSheets.fileName("\uD83C\uDFBB", taken));
        assertEquals("etc-passwd", PlayerSheets.fileName("../../etc/passwd", taken));
        assertEquals(60, PlayerSheets.fileName("w".repeat(200), taken).length());
    }

    static SheetModel sheet(AnalysedTake take, int player) {
        return new SheetWords(take, take.comparison().players().get(player)).model();
    }

    private Path html(AnalysedTake take, int player) throws Exception {
        Path page = folder.resolve("sheet.html");
        SheetModel sheet = sheet(take, player);
        SheetPage.write(sheet, SheetLayout.of(sheet), page);
        return page;
    }

    private Path pdf(AnalysedTake take, int player) throws Exception {
        Path pdf = folder.resolve("sheet.pdf");
        SheetModel sheet = sheet(take, player);
        SheetPdf.write(sheet.head().title(), List.of(SheetLayout.of(sheet)), pdf);
        return pdf;
    }

    private static String text(Path pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
