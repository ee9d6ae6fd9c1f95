package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A sheet as a page of its own, which needs no other file, no script and no network.
 *
 * @param css the style sheet
 * @param policy what the page may load: nothing but this style sheet and its own fonts
 */
public record SheetPage(SheetModel sheet, String css, String policy) {
    private static final String TEMPLATE = "sheet.jte";

    static void write(SheetModel sheet, Path file) throws IOException {
        Pages.write(TEMPLATE, new SheetPage(sheet, "", ""), file);
        PageStyle style = PageStyle.still("sheet.css", Files.readString(file));
        Pages.write(TEMPLATE, new SheetPage(sheet, style.css(), style.policy()), file);
    }
}
