package tuttarco.report;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.Objects;
import tuttarco.chart.Palette;

/**
 * The page's style sheet with its colours and fonts put in, and the policy that lets it in and nothing else.
 *
 * @param policy a content security policy
 */
record PageStyle(String css, String policy) {
    static PageStyle make() {
        return of(fonts() + colours() + text("report.css"));
    }

    /** A style sheet of its own for a page that shows only this text, with no more of the fonts than that needs. */
    static PageStyle make(String file, String shown, String more) {
        return of(face(FontFile.REGULAR.subset(shown), 400)
                + face(FontFile.SEMIBOLD.subset(shown), 600)
                + colours()
                + text(file)
                + more);
    }

    private static PageStyle of(String css) {
        String policy = "default-src 'none'; style-src 'sha256-" + sha256(css) + "'; font-src data:; base-uri 'none'; "
                + "form-action 'none'";
        return new PageStyle(css, policy);
    }

    private static String fonts() {
        return face(FontFile.REGULAR.bytes(), 400) + face(FontFile.SEMIBOLD.bytes(), 600);
    }

    private static String face(byte[] font, int weight) {
        String data = Base64.getEncoder().encodeToString(font);
        return "@font-face{font-family:'Open Sans';font-weight:" + weight + ";src:url(data:font/ttf;base64," + data
                + ") format('truetype')}\n";
    }

    /** Night turns the page's colours and, by their paper colours, those of the charts in it. */
    private static String colours() {
        StringBuilder css =
                new StringBuilder(":root{").append(variables(Palette.PAPER)).append("}\n");
        css.append("@media screen and (prefers-color-scheme:dark){:root{")
                .append(variables(Palette.NIGHT))
                .append("}\n");
        for (Map.Entry<String, Color> role : Palette.PAPER.byRole().entrySet()) {
            Color paper = role.getValue();
            String drawn = "=\"rgb(" + paper.getRed() + "," + paper.getGreen() + "," + paper.getBlue() + ")\"]";
            String night = "{%s:var(--" + role.getKey() + ")}\n";
            css.append(".chart [fill").append(drawn).append(night.replace("%s", "fill"));
            css.append(".chart [stroke").append(drawn).append(night.replace("%s", "stroke"));
        }
        css.append(".chart [stroke=\"none\"]{stroke:none}\n.chart [fill=\"none\"]{fill:none}\n");
        return css.append("}\n").toString();
    }

    private static String variables(Palette palette) {
        StringBuilder css = new StringBuilder();
        palette.byRole()
                .forEach((role, colour) -> css.append("--")
                        .append(role)
                        .append(':')
                        .append(Palette.hex(colour))
                        .append(';'));
        return css.toString();
    }

    private static String text(String name) {
        return new String(bytes(PageStyle.class, name), StandardCharsets.UTF_8);
    }

    static byte[] bytes(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sha256(String css) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(css.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
    }
}
