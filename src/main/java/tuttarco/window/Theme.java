package tuttarco.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import tuttarco.chart.Palette;
import tuttarco.chart.Type;

/** The look of the window: paper by day, dark by night; colours and type are those of the charts. */
public enum Theme {
    PAPER(Palette.PAPER),
    NIGHT(Palette.NIGHT);

    private final Palette palette;

    Theme(Palette palette) {
        this.palette = palette;
    }

    public Palette palette() {
        return palette;
    }

    /** Dresses all windows, those that are open too. On the event thread. */
    public void apply() {
        FlatLaf.setGlobalExtraDefaults(defaults());
        UIManager.put("defaultFont", UIScale.applyCustomScaleFactor(new FontUIResource(Type.body())));
        if (this == PAPER) {
            FlatLightLaf.setup();
        } else {
            FlatDarkLaf.setup();
        }
        FlatLaf.updateUI();
    }

    /** The theme that is worn now. */
    public static Theme worn() {
        return FlatLaf.isLafDark() ? NIGHT : PAPER;
    }

    private Map<String, String> defaults() {
        Map<String, String> defaults = new LinkedHashMap<>();
        defaults.put("@background", Palette.hex(palette.ground()));
        defaults.put("@foreground", Palette.hex(palette.ink()));
        defaults.put("@disabledForeground", Palette.hex(palette.secondary()));
        defaults.put("@accentColor", Palette.hex(palette.accent()));
        String edge = Palette.hex(edge(palette.rule(), palette.secondary()));
        defaults.put("Component.borderColor", edge);
        defaults.put("ScrollBar.thumb", edge);
        defaults.put("Separator.foreground", Palette.hex(palette.rule()));
        defaults.put("Component.focusWidth", "2");
        defaults.put("Component.arc", "4");
        defaults.put("Button.arc", "4");
        defaults.put("ScrollBar.width", "12");
        return defaults;
    }

    /** Edges of controls: a quarter of one, three of the other, 3.2 and 4.7 to the ground (WCAG 2 asks for 3). */
    private static Color edge(Color one, Color other) {
        return new Color(
                (one.getRed() + 3 * other.getRed()) / 4,
                (one.getGreen() + 3 * other.getGreen()) / 4,
                (one.getBlue() + 3 * other.getBlue()) / 4);
    }
}
