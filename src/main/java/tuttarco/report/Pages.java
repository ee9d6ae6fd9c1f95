package tuttarco.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
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
        try (Writer out = Files.newBufferedWriter(file)) {
            templates.render(template, model, new Unbroken(out));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** Writes piece by piece, so that a page is never held whole. */
    private record Unbroken(Writer out) implements TemplateOutput {
        @Override
        public void writeContent(String piece) {
            try {
                out.write(BEFORE_UNIT.matcher(piece).replaceAll(NO_BREAK));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void writeContent(String text, int from, int to) {
            writeContent(text.substring(from, to));
        }
    }
}
