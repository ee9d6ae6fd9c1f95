package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A sheet as a page of its own, which needs no other file, no script and no network.
 *
 * @param css the style sheet
 * @param policy what the page may load: nothing but this style sheet and its own fonts
 */
public record SheetPage(SheetModel sheet, String css, String policy) {
    private static final String TEMPLATE = "sheet.jte";

    /** Body type on paper, points, where a sheet is set as large as usual: so that the page holds what the PDF's does. */
    private static final double BODY = 10.5;

    static void write(SheetModel sheet, Path file) throws IOException {
        Pages.write(TEMPLATE, new SheetPage(sheet, "", ""), file);
        PageStyle style = PageStyle.make("sheet.css", Files.readString(file), printed(sheet));
        Pages.write(TEMPLATE, new SheetPage(sheet, style.css(), style.policy()), file);
    }

    /** On paper all measures go by the size of the type, and that by how much there is to say. */
    private static String printed(SheetModel sheet) {
        return String.format(
                Locale.ROOT,
                "@media print{html{font-size:%.2fpt}}\n",
                BODY * SheetLayout.of(sheet).scale());
    }
}
