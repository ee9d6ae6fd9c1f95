package tuttarco.report;

import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import tuttarco.chart.Palette;
import tuttarco.chart.Type;

/** The bundled typeface as files hold it. */
enum FontFile {
    REGULAR("OpenSans-Regular.ttf", Type.body()),
    SEMIBOLD("OpenSans-Semibold.ttf", Type.strong());

    /** The tables a browser asks for. */
    private static final List<String> TABLES =
            List.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2", "post");

    private final String file;
    private final String fontName;

    FontFile(String file, Font font) {
        this.file = file;
        this.fontName = font.getFontName();
    }

    /** Which of them a font is, in whatever size; empty where it is none of them. */
    static Optional<FontFile> of(Font font) {
        return Arrays.stream(values())
                .filter(f -> f.fontName.equals(font.getFontName()))
                .findFirst();
    }

    String fontName() {
        return fontName;
    }

    byte[] bytes() {
        return PageStyle.bytes(Palette.class, "fonts/" + file);
    }

    TrueTypeFont parsed() throws IOException {
        return new TTFParser().parse(new RandomAccessReadBuffer(bytes()));
    }

    /** As much of it as this text needs. */
    byte[] subset(String text) {
        try (TrueTypeFont font = parsed()) {
            TTFSubsetter subsetter = new TTFSubsetter(font, TABLES);
            text.codePoints().distinct().sorted().forEach(subsetter::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subsetter.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
