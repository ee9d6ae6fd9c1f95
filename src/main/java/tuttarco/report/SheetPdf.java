package tuttarco.report;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.io.IOException;
import java.nio.file.Path;
import java.text.Bidi;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import tuttarco.chart.ChartFiles;
import tuttarco.chart.Palette;

/**
 * Sheets as a PDF, one page each: tagged, so that it can be read out, with its typeface in it. Lines for which the typeface
 * lacks a sign, or that run from right to left, are drawn as shapes in a typeface of the system's, and read out as text all the
 * same, and so are emoji that are left out.
 */
final class SheetPdf {
    /** The same for all, so that equal sheets give equal bytes. */
    private static final long ID = 1;

    private static final String LANGUAGE = "en";

    /** Thickness of a rule, points. */
    private static final float RULE = 0.7f;

    private final PDDocument document;
    private final Map<FontFile, PDType0Font> fonts;
    private final PDPage page = new PDPage(new PDRectangle((float) SheetLayout.WIDTH, (float) SheetLayout.HEIGHT));
    private final COSArray marked = new COSArray();
    private final PDPageContentStream content;

    /** A new page at the document's end. */
    private SheetPdf(PDDocument document, Map<FontFile, PDType0Font> fonts) throws IOException {
        this.document = document;
        this.fonts = fonts;
        page.setStructParents(document.getNumberOfPages());
        document.addPage(page);
        this.content = new PDPageContentStream(document, page);
    }

    static void write(String title, List<SheetLayout> layouts, Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(ID);
            document.getDocumentInformation().setTitle(title);
            Map<FontFile, PDType0Font> fonts = new EnumMap<>(FontFile.class);
            for (FontFile font : FontFile.values()) {
                fonts.put(font, PDType0Font.load(document, font.parsed(), true));
            }
            PDStructureTreeRoot tree = new PDStructureTreeRoot();
            PDStructureElement root = element("Document", tree);
            Map<Integer, PDParentTreeValue> marked = new TreeMap<>();
            for (SheetLayout layout : layouts) {
                SheetPdf page = new SheetPdf(document, fonts);
                page.draw(layout, root);
                marked.put(marked.size(), new PDParentTreeValue(page.marked));
            }
            tag(document.getDocumentCatalog(), tree, marked);
            document.save(file.toFile());
        }
    }

    /** Ties what is marked on the pages to what it is. */
    private static void tag(
            PDDocumentCatalog catalog, PDStructureTreeRoot tree, Map<Integer, PDParentTreeValue> marked) {
        PDNumberTreeNode parents = new PDNumberTreeNode(PDParentTreeValue.class);
        parents.setNumbers(marked);
        tree.setParentTree(parents);
        tree.setParentTreeNextKey(marked.size());
        PDMarkInfo info = new PDMarkInfo();
        info.setMarked(true);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        catalog.setMarkInfo(info);
        catalog.setStructureTreeRoot(tree);
        catalog.setLanguage(LANGUAGE);
        catalog.setViewerPreferences(preferences);
    }

    private void draw(SheetLayout layout, PDStructureElement root) throws IOException {
        PDStructureElement list = root;
        for (SheetLayout.Block block : layout.blocks()) {
            boolean item = block.role() == SheetLayout.Role.ITEM;
            if (!item) {
                list = root;
            } else if (list == root) {
                list = element("L", root);
            }
            draw(
                    block,
                    item
                            ? element("LBody", element("LI", list))
                            : element(block.role().type(), root));
        }
        content.beginMarkedContent(COSName.ARTIFACT);
        for (SheetLayout.Picture sign : layout.signs()) {
            draw(sign);
        }
        content.setStrokingColor(Palette.PAPER.secondary());
        content.setLineWidth(RULE);
        for (SheetLayout.Rule rule : layout.rules()) {
            content.moveTo((float) rule.x1(), up(rule.y()));
            content.lineTo((float) rule.x2(), up(rule.y()));
            content.stroke();
        }
        content.endMarkedContent();
        content.close();
    }

    private static PDStructureElement element(String type, PDStructureNode parent) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    private void draw(SheetLayout.Block block, PDStructureElement element) throws IOException {
        element.setPage(page);
        element.appendKid(marked.size());
        content.beginMarkedContent(COSName.getPDFName(element.getStructureType()), marked.size());
        marked.add(element);
        if (block.picture().isPresent()) {
            element.setAlternateDescription(block.text());
            draw(block.picture().get());
        } else if (!block.drawnWhole()) {
            element.setActualText(block.text());
        }
        for (SheetLayout.Line line : block.lines()) {
            if (bundled(line)) {
                write(line);
            } else {
                element.setActualText(block.text());
                drawShapes(line);
            }
        }
        content.endMarkedContent();
    }

    /** Whether the bundled typeface can write it as it is. */
    private static boolean bundled(SheetLayout.Line line) {
        return FontFile.of(line.font()).isPresent()
                && !Bidi.requiresBidi(line.text().toCharArray(), 0, line.text().length());
    }

    private void write(SheetLayout.Line line) throws IOException {
        content.beginText();
        content.setFont(
                fonts.get(FontFile.of(line.font()).orElseThrow()), line.font().getSize2D());
        content.setNonStrokingColor(line.colour());
        content.newLineAtOffset((float) line.x(), up(line.baseline()));
        content.showText(line.text());
        content.endText();
    }

    private void drawShapes(SheetLayout.Line line) throws IOException {
        TextLayout text = new TextLayout(line.text(), line.font(), new FontRenderContext(null, true, true));
        double height = text.getAscent() + text.getDescent();
        draw(text.getAdvance() + 1, height, 1, line.x(), line.baseline() - text.getAscent(), g -> {
            g.setPaint(line.colour());
            g.translate(0, text.getAscent());
            g.fill(text.getOutline(null));
        });
    }

    private void draw(SheetLayout.Picture picture) throws IOException {
        draw(
                picture.chart().widthPx(),
                picture.chart().heightPx(),
                picture.scale(),
                picture.x(),
                picture.y(),
                g -> ChartFiles.drawOnPaper(picture.chart(), g));
    }

    /** Has something drawn at a size of its own and puts it, scaled, with its top left corner where said. */
    private void draw(double width, double height, double scale, double x, double y, Consumer<Graphics2D> drawing)
            throws IOException {
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) width, (float) height);
        PdfBoxGraphics2DFontTextDrawer texts = new PdfBoxGraphics2DFontTextDrawer();
        fonts.forEach((file, font) -> texts.registerFont(file.fontName(), font));
        g.setFontTextDrawer(texts);
        drawing.accept(g);
        g.dispose();
        PDFormXObject form = g.getXFormObject();
        content.saveGraphicsState();
        content.transform(new Matrix((float) scale, 0, 0, (float) scale, (float) x, up(y + height * scale)));
        content.drawForm(form);
        content.restoreGraphicsState();
    }

    /** PDF counts from the bottom up. */
    private static float up(double y) {
        return (float) (SheetLayout.HEIGHT - y);
    }
}
