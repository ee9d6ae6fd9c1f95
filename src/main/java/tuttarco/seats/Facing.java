package tuttarco.seats;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a player's chest points, as seen in the picture, in steps of 45 degrees.
 *
 * <p>The azimuth counts clockwise as seen from above: 0 points into the picture (away), 90 to the picture's right, 180 to
 * the camera, 270 to the picture's left.
 */
public enum Facing {
    AWAY(0),
    AWAY_RIGHT(45),
    RIGHT(90),
    CAMERA_RIGHT(135),
    CAMERA(180),
    CAMERA_LEFT(225),
    LEFT(270),
    AWAY_LEFT(315);

    /** The word for a facing that is not declared but seen. */
    public static final String AUTO = "auto";

    private final int azimuthDeg;

    Facing(int azimuthDeg) {
        this.azimuthDeg = azimuthDeg;
    }

    public int azimuthDeg() {
        return azimuthDeg;
    }

    /** Whether more of the back than of the chest is seen. */
    public boolean away() {
        return this == AWAY || this == AWAY_LEFT || this == AWAY_RIGHT;
    }

    /** The facing in the picture flipped left to right, as front cameras show it. */
    public Facing mirrored() {
        return values()[(values().length - ordinal()) % values().length];
    }

    /** The word used in files and on the command line: {@code camera}, {@code camera-left} and so on. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All words that may stand for a facing, {@link #AUTO} first. */
    public static List<String> words() {
        return Stream.concat(Stream.of(AUTO), Arrays.stream(values()).map(Facing::word))
                .toList();
    }

    public static Optional<Facing> ofWord(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }
}
