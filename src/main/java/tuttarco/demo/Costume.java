package tuttarco.demo;

import java.awt.Color;
import java.util.Random;

/** What a player looks like; made up from a seed, so that no two are alike and all runs are. */
record Costume(Color skin, Color hair, Color clothes, Color trousers, Color wood, boolean longHair) {
    private static final Color[] SKIN = {
        new Color(0xF0CDB2), new Color(0xE3B48F), new Color(0xC98F66), new Color(0x9B6543), new Color(0x6F4630)
    };
    private static final Color[] HAIR = {
        new Color(0x2A2119), new Color(0x4B3524), new Color(0x7A5230), new Color(0xA98A5B), new Color(0x8C8A88)
    };
    private static final Color[] CLOTHES = {
        new Color(0x2E3440), new Color(0x3D4A5C), new Color(0x5B3A3E), new Color(0x33503F), new Color(0x4B4560)
    };
    private static final Color[] WOOD = {new Color(0x8A4B22), new Color(0x9A5A2A), new Color(0x74391C)};

    static Costume of(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 17);
        return new Costume(
                any(SKIN, random),
                any(HAIR, random),
                any(CLOTHES, random),
                new Color(0x23262C),
                any(WOOD, random),
                random.nextBoolean());
    }

    private static Color any(Color[] colours, Random random) {
        return colours[random.nextInt(colours.length)];
    }

    static Color shade(Color colour, double factor) {
        return new Color(
                channel(colour.getRed() * factor),
                channel(colour.getGreen() * factor),
                channel(colour.getBlue() * factor));
    }

    private static int channel(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }
}
