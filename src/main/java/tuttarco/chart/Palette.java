package tuttarco.chart;

import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The colours of a page, by what they are for. Shapes carry the meaning; colour only helps.
 *
 * <p>Contrast with the ground, WCAG 2 ratio, paper / night: ink 14.7 / 13.9, with 8.2 / 7.1, against 3.3 / 7.5 (marks and
 * fills only), secondary 4.5 / 6.4, accent 7.3 / 7.3.
 *
 * @param ink text and axes
 * @param with a bow that goes with the marking or the leader
 * @param against a bow that goes against it
 * @param secondary what is unsure or unseen, and words of second rank
 * @param accent links and focus
 * @param rule thin lines between beats and players
 * @param heavy the heavy sign on a filled cell
 * @param shade the cell of a down-bow, so that the two directions differ by lightness too
 */
public record Palette(
        Color ground,
        Color ink,
        Color with,
        Color against,
        Color secondary,
        Color accent,
        Color rule,
        Color heavy,
        Color shade) {
    public static final Palette PAPER = new Palette(
            new Color(0xFBFAF7),
            new Color(0x22252B),
            new Color(0x17545C),
            new Color(0xD96A1E),
            new Color(0x6E747E),
            new Color(0x8C3B1F),
            new Color(0xDCD9D1),
            new Color(0x1B1E24),
            new Color(0xE3EBE9));

    public static final Palette NIGHT = new Palette(
            new Color(0x1B1E23),
            new Color(0xECEAE4),
            new Color(0x5FB6BF),
            new Color(0xF09A4A),
            new Color(0x9AA1AC),
            new Color(0xE39B74),
            new Color(0x3A3F47),
            new Color(0x1B1E24),
            new Color(0x26363B));

    /** The colours by the name a style sheet calls them. */
    public Map<String, Color> byRole() {
        Map<String, Color> roles = new LinkedHashMap<>();
        roles.put("ground", ground);
        roles.put("ink", ink);
        roles.put("with", with);
        roles.put("against", against);
        roles.put("secondary", secondary);
        roles.put("accent", accent);
        roles.put("rule", rule);
        roles.put("heavy", heavy);
        roles.put("shade", shade);
        return roles;
    }

    /** As style sheets write it: {@code #1b1e23}. */
    public static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
    }
}
