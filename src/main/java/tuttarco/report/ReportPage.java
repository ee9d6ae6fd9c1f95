package tuttarco.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** {@code report.html}: one page that needs no other file, no script and no network. */
public final class ReportPage implements Output {
    static final String TEMPLATES = "tuttarco.report.pages";

    /** The blank between a figure and its unit, at which no line may break. */
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=%|(?:ms|LU|LUFS|px)\\b)");

    private static final String NO_BREAK = "\u00A0";

    @Override
    public String name() {
        return "report.html";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()))) {
            StringOutput page = new StringOutput();
            templates.render("report.jte", new ReportWords(take).model(), page);
            out.write(BEFORE_UNIT.matcher(page.toString()).replaceAll(NO_BREAK));
        }
    }
}
