package tuttarco.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** {@code report.html}: one page that needs no other file, no script and no network. */
public final class ReportPage implements Output {
    static final String TEMPLATES = "tuttarco.report.pages";

    @Override
    public String name() {
        return "report.html";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        TemplateEngine templates = TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
        try (Writer out = Files.newBufferedWriter(folder.resolve(name()))) {
            templates.render("report.jte", new ReportWords(take).model(), new WriterOutput(out));
        }
    }
}
