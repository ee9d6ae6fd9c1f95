package tuttarco.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes pages by their templates. */
final class Pages {
    private static final String TEMPLATES = "tuttarco.report.pages";

    private Pages() {}

    static void write(String template, Object model, Path file) throws IOException {
        TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        try (Writer out = Files.newBufferedWriter(file)) {
            templates.render(template, model, new WriterOutput(out));
        }
    }
}
