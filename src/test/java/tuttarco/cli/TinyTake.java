package tuttarco.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import tuttarco.video.TestClips;

/** A take of three seconds: two players whose bow hands, textured discs, change direction every half second. */
public final class TinyTake {
    static final String JSON = """
            {
              "version": 1,
              "title": "Three seconds",
              "video": "clip.mkv",
              "bowing": "unified",
              "players": [
                {"label": "Ida", "desk": 1, "place": "outside", "instrument": "violin",
                 "seat": {"x": 0, "y": 0, "width": 160, "height": 160}, "facing": "camera", "leader": true},
                {"label": "Jon", "desk": 1, "place": "inside", "instrument": "violin",
                 "seat": {"x": 160, "y": 0, "width": 160, "height": 160}, "facing": "camera"}
              ],
              "part": "part.bowing.txt",
              "beats": {"file": "beats.csv"}
            }
            """;
    static final String PART = "part Three seconds\nmetre 3/4\n1: d u d\n2: u d u\n";
    static final String BEATS = "bar,beat,time_s\n1,1,0\n1,2,0.5\n1,3,1\n2,1,1.5\n2,2,2\n2,3,2.5\n";

    private static final int SEAT_PX = 160;
    private static final int HAND_PX = 15;
    private static final double SWING_PX = 22;
    private static final double PERIOD_S = 1;
    private static final int GRAIN_PX = 5;

    private TinyTake() {}

    /** Writes the take and all it names; returns the take file. */
    static Path write(Path folder) throws Exception {
        writeClip(folder.resolve("clip.mkv"), 90, 30);
        return writeTexts(folder);
    }

    /** Writes all but the clip; returns the take file. */
    public static Path writeTexts(Path folder) throws IOException {
        Files.writeString(folder.resolve("part.bowing.txt"), PART);
        Files.writeString(folder.resolve("beats.csv"), BEATS);
        return Files.writeString(folder.resolve("tiny.take.json"), JSON);
    }

    public static void writeClip(Path file, int frames, double framesPerS) throws Exception {
        int[][] ground = texture(1);
        int[][] hand = texture(2);
        DoubleFunction<BufferedImage> picture = timeS -> picture(ground, hand, timeS);
        TestClips.write(file, timesS(frames, framesPerS), picture);
    }

    static void writeBlackClip(Path file) throws Exception {
        TestClips.write(file, timesS(60, 30), timeS -> TestClips.plain(2 * SEAT_PX, SEAT_PX, 0));
    }

    private static List<Double> timesS(int frames, double framesPerS) {
        return IntStream.range(0, frames).mapToObj(i -> i / framesPerS).toList();
    }

    private static int[][] texture(int seed) {
        Random random = new Random(seed);
        int[][] shades = new int[SEAT_PX][SEAT_PX];
        for (int y = 0; y < SEAT_PX; y++) {
            for (int x = 0; x < SEAT_PX; x++) {
                boolean corner = x % GRAIN_PX == 0 && y % GRAIN_PX == 0;
                shades[y][x] = corner ? 60 + random.nextInt(140) : shades[y - y % GRAIN_PX][x - x % GRAIN_PX];
            }
        }
        return shades;
    }

    /** Both hands leave the strings towards the picture's lower left, as a violinist's who faces the camera. */
    private static BufferedImage picture(int[][] ground, int[][] hand, double timeS) {
        double run = -Math.cos(2 * Math.PI * timeS / PERIOD_S);
        int handX = SEAT_PX / 2 - (int) Math.round(SWING_PX * run);
        int handY = SEAT_PX / 2 + (int) Math.round(SWING_PX * run / 2);
        BufferedImage image = new BufferedImage(2 * SEAT_PX, SEAT_PX, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < SEAT_PX; y++) {
            for (int x = 0; x < SEAT_PX; x++) {
                boolean inHand = Math.hypot(x - handX, y - handY) < HAND_PX;
                int shade = inHand ? hand[y - handY + SEAT_PX / 2][x - handX + SEAT_PX / 2] : ground[y][x];
                image.getRaster().setSample(x, y, 0, shade);
                image.getRaster().setSample(x + SEAT_PX, y, 0, shade);
            }
        }
        return image;
    }
}
