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
import tuttarco.chart.SectionStrip;

/**
 * A page's style sheet with its colours and fonts put in, its script, and the policy that lets these in, pictures and fonts
 * that stand in the page itself, the take's video beside it, and nothing else.
 *
 * @param policy a content security policy
 */
public record PageStyle(String css, String script, String policy) {
    /** Of a page without script. */
    static PageStyle still() {
        String css = look();
        return new PageStyle(css, "", policy(css, ""));
    }

    /** Of a page that can be asked for its moments. */
    static PageStyle moving() {
        String css = look() + SectionStrip.css() + text("strip.css");
        String script = text("report.js");
        String more = "script-src " + hash(script) + "; img-src data:; media-src 'self'; ";
        return new PageStyle(css, script, policy(css, more));
    }

    /** Of a page that shows only this text, by a style sheet of its own, with no more of the fonts than that needs. */
    static PageStyle still(String file, String shown) {
        String css = face(FontFile.REGULAR.subset(shown), 400)
                + face(FontFile.SEMIBOLD.subset(shown), 600)
                + colours()
                + text(file);
        return new PageStyle(css, "", policy(css, ""));
    }

    private static String look() {
        return fonts() + colours() + text("report.css");
    }

    private static String policy(String css, String more) {
        return "default-src 'none'; style-src " + hash(css) + "; font-src data:; " + more
                + "base-uri 'none'; form-action 'none'";
    }

    private static String fonts() {
        return face(FontFile.REGULAR.bytes(), 400) + face(FontFile.SEMIBOLD.bytes(), 600);
    }

    private static String face(byte[] font, int weight) {
        String data = Base64.getEncoder().encodeToString(font);
        return "@font-face{font-family:'Open Sans';font-weight:" + weight + ";src:url(data:font/ttf;base64," + data
                + ") format('truetype')}\n";
    }

    /** Night turns the page's colours and, by their paper colours, those of the charts in it, also where a piece shows another. */
    private static String colours() {
        StringBuilder css =
                new StringBuilder(":root{").append(variables(Palette.PAPER)).append("}\n");
        css.append("@media screen and (prefers-color-scheme:dark){:root{")
                .append(variables(Palette.NIGHT))
                .append("}\n");
        for (Map.Entry<String, Color> role : Palette.PAPER.byRole().entrySet()) {
            Color paper = role.getValue();
            String drawn = "=\"" + drawn(paper) + "\"]";
            String night = "{%s:var(--" + role.getKey() + ")}\n";
            css.append("[fill").append(drawn).append(night.replace("%s", "fill"));
            css.append("[stroke").append(drawn).append(night.replace("%s", "stroke"));
        }
        css.append("[stroke=\"none\"]{stroke:none}\n[fill=\"none\"]{fill:none}\n");
        css.append("}\n@media print{[fill=\"")
                .append(drawn(Palette.PAPER.ground()))
                .append("\"]{fill:none}}\n");
        for (String role : Palette.PAPER.byRole().keySet()) {
            css.append(".fill-%s{fill:var(--%s)}\n.line-%s{fill:none;stroke:var(--%s)}\n".replace("%s", role));
        }
        return css.toString();
    }

    /** A colour as charts are drawn with it. */
    private static String drawn(Color colour) {
        return "rgb(" + colour.getRed() + "," + colour.getGreen() + "," + colour.getBlue() + ")";
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

    /** By which a policy knows a text. */
    private static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
    }
}
