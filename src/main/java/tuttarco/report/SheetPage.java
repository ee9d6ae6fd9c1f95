package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** A sheet as a page of its own, which needs no other file, no script and no network. */
public record SheetPage(SheetModel sheet, PageStyle style) {
    private static final String TEMPLATE = "sheet.jte";

    /** Body type on paper, points, where a sheet is set as large as usual: so that the page holds what the PDF's does. */
    private static final double BODY = 10.5;

    static void write(SheetModel sheet, SheetLayout layout, Path file) throws IOException {
        Pages.write(TEMPLATE, new SheetPage(sheet, PageStyle.ofSheet(layout.letters(), printed(layout))), file);
    }

    /** On paper all measures go by the size of the type, and that by how much there is to say. */
    private static String printed(SheetLayout layout) {
        return String.format(Locale.ROOT, "@media print{html{font-size:%.2fpt}}\n", BODY * layout.scale());
    }
}
