package tuttarco.demo;

import java.awt.Color;
import java.util.Random;

/** What tells one drawn player from another. */
record Looks(Color skin, Color hair, Color coat, Color trousers, Color varnish, boolean longHair) {
    private static final Color[] SKINS = {
        new Color(0xE8BFA0), new Color(0xD9A585), new Color(0xB88062), new Color(0xF0CDB4), new Color(0x8F5F45)
    };
    private static final Color[] HAIRS = {
        new Color(0x3A2A20), new Color(0x6B4A2F), new Color(0xA98652), new Color(0x2A2526), new Color(0x8C8A88)
    };
    private static final Color[] COATS = {
        new Color(0x3D4A63), new Color(0x5A4560), new Color(0x46584C), new Color(0x4A4A50), new Color(0x6A4A44)
    };
    private static final Color[] VARNISHES = {new Color(0xA4572A), new Color(0xB8692F), new Color(0x8E4526)};

    static Looks of(Random random) {
        return new Looks(
                pick(SKINS, random),
                pick(HAIRS, random),
                pick(COATS, random),
                new Color(0x2E2F36),
                pick(VARNISHES, random),
                random.nextBoolean());
    }

    private static Color pick(Color[] from, Random random) {
        return from[random.nextInt(from.length)];
    }
}
