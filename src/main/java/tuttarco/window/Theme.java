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
        defaults.put("Component.borderColor", Palette.hex(between(palette.rule(), palette.secondary())));
        defaults.put("Separator.foreground", Palette.hex(palette.rule()));
        defaults.put("Component.focusWidth", "2");
        defaults.put("Component.arc", "4");
        defaults.put("Button.arc", "4");
        defaults.put("ScrollBar.width", "12");
        return defaults;
    }

    private static Color between(Color one, Color other) {
        return new Color(
                (one.getRed() + other.getRed()) / 2,
                (one.getGreen() + other.getGreen()) / 2,
                (one.getBlue() + other.getBlue()) / 2);
    }
}
