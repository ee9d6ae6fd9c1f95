package tuttarco.analysis;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.video.Clip;
import tuttarco.video.Frame;
import tuttarco.video.TestClips;

/** A section on real pixels: one clip of 480x360 pixels in 4x3 tiles, each delayed by a known number of frames. */
public record TiledSection(List<Player> players, double framesPerS) {
    private static final int COLUMNS = 4;
    private static final int ROWS = 3;
    private static final int WIDTH_PX = 480;
    private static final int HEIGHT_PX = 360;

    /** Delays of up to eight frames, in an order without a pattern; the leader has none. */
    private static int delayFrames(int tile) {
        return tile * 5 % 9;
    }

    static TiledSection write(Path clipFile, Path tiled) throws Exception {
        return write(clipFile, tiled, 1);
    }

    /** Plays the clip several times over, for a longer one. */
    public static TiledSection write(Path clipFile, Path tiled, int copies) throws Exception {
        List<BufferedImage> pictures = new ArrayList<>();
        double framesPerS;
        try (Clip clip = Clip.open(clipFile)) {
            framesPerS = clip.facts().framesPerS();
            for (Optional<Frame> frame = clip.next(); frame.isPresent(); frame = clip.next()) {
                pictures.add(frame.get().picture());
            }
        }
        List<Double> timesS = IntStream.range(0, copies * pictures.size())
                .mapToObj(i -> i / framesPerS)
                .toList();
        TestClips.write(tiled, timesS, timeS -> tile(pictures, (int) Math.round(timeS * framesPerS) % pictures.size()));
        List<Player> players = new ArrayList<>();
        for (int tile = 0; tile < COLUMNS * ROWS; tile++) {
            players.add(new Player(
                    "tile " + tile,
                    1 + tile / 2,
                    tile % 2 == 0 ? Place.OUTSIDE : Place.INSIDE,
                    Instrument.VIOLIN,
                    new SeatBox(tile % COLUMNS * WIDTH_PX + 30, tile / COLUMNS * HEIGHT_PX + 45, 390, 265),
                    Optional.of(Facing.CAMERA),
                    tile == 0));
        }
        return new TiledSection(players, framesPerS);
    }

    double delayMs(Player player) {
        return 1000 * delayFrames(players.indexOf(player)) / framesPerS;
    }

    private static BufferedImage tile(List<BufferedImage> pictures, int index) {
        BufferedImage all = new BufferedImage(COLUMNS * WIDTH_PX, ROWS * HEIGHT_PX, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D canvas = all.createGraphics();
        for (int tile = 0; tile < COLUMNS * ROWS; tile++) {
            BufferedImage own = pictures.get(Math.max(0, index - delayFrames(tile)));
            canvas.drawImage(own, tile % COLUMNS * WIDTH_PX, tile / COLUMNS * HEIGHT_PX, null);
        }
        canvas.dispose();
        return all;
    }
}
