package tuttarco.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Writes pages by their templates. */
final class Pages {
    private static final String TEMPLATES = "tuttarco.report.pages";

    /** The blank between a figure and its unit, at which no line may break. */
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=%|(?:ms|LU|LUFS|px)\\b)");

    private static final String NO_BREAK = "\u00A0";

    private Pages() {}

    static void write(String template, Object model, Path file) throws IOException {
        TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        StringOutput page = new StringOutput();
        templates.render(template, model, page);
        Files.writeString(file, BEFORE_UNIT.matcher(page.toString()).replaceAll(NO_BREAK));
    }
}
