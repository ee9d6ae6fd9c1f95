package tuttarco.analysis;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tuttarco.bow.BowDirection;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;
import tuttarco.video.Clip;
import tuttarco.video.Frame;
import tuttarco.video.TestClips;

/**
 * A section on real pixels: a piece of one clip of 480x360 pixels in 4x3 tiles, each delayed by a known number of frames. It
 * plays to its end and back again, over and over: nothing leaps, and on the way back each stroke goes the other way.
 *
 * @param fromS where the piece begins in the one clip, seconds; {@code lengthS} how long it is
 * @param times how often it plays
 */
public record TiledSection(List<Player> players, double framesPerS, double fromS, double lengthS, int times) {
    private static final int COLUMNS = 4;
    private static final int ROWS = 3;
    private static final int WIDTH_PX = 480;
    private static final int HEIGHT_PX = 360;

    /** Tiles that are late by one stroke, so that most of their strokes go against the leader's. */
    private static final Set<Integer> TURNED = Set.of(6, 11);

    /**
     * The usual stroke of the even piece of violin-room: nine tenths of the time, as its truth has it, go against the
     * leader's at this delay, more than at any other.
     */
    private static final int STROKE_FRAMES = 28;

    /** In violin-room, from the first change of bow to the end of the fourth stroke, the strokes are about even. */
    private static final int EVEN_FROM = 2;

    private static final int EVEN_TO = 120;

    /** Delays of up to eight frames, in an order without a pattern; the leader has none. */
    private static int delayFrames(int tile) {
        return TURNED.contains(tile) ? STROKE_FRAMES : tile * 5 % 9;
    }

    /** Writes the whole clip as often as said, one time to its end, the next time back. */
    public static TiledSection write(Path clipFile, Path tiled, int times) throws Exception {
        return write(clipFile, tiled, 0, Integer.MAX_VALUE, times);
    }

    /** Writes the even strokes of violin-room. */
    static TiledSection even(Path violinRoom, Path tiled, int times) throws Exception {
        return write(violinRoom, tiled, EVEN_FROM, EVEN_TO, times);
    }

    private static TiledSection write(Path clipFile, Path tiled, int from, int to, int times) throws Exception {
        List<BufferedImage> pictures = new ArrayList<>();
        double framesPerS;
        try (Clip clip = Clip.open(clipFile)) {
            framesPerS = clip.facts().framesPerS();
            int index = 0;
            for (Optional<Frame> frame = clip.next(); frame.isPresent() && index < to; frame = clip.next()) {
                if (index++ >= from) {
                    pictures.add(frame.get().picture());
                }
            }
        }
        List<Double> timesS = IntStream.range(0, times * pictures.size())
                .mapToObj(i -> i / framesPerS)
                .toList();
        TestClips.write(tiled, timesS, timeS -> tile(pictures, (int) Math.round(timeS * framesPerS)));
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
        return new TiledSection(players, framesPerS, from / framesPerS, pictures.size() / framesPerS, times);
    }

    private static BufferedImage tile(List<BufferedImage> pictures, int index) {
        BufferedImage all = new BufferedImage(COLUMNS * WIDTH_PX, ROWS * HEIGHT_PX, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D canvas = all.createGraphics();
        for (int tile = 0; tile < COLUMNS * ROWS; tile++) {
            int own = Math.floorMod(index - delayFrames(tile), 2 * pictures.size());
            BufferedImage picture = pictures.get(Math.min(own, 2 * pictures.size() - 1 - own));
            canvas.drawImage(picture, tile % COLUMNS * WIDTH_PX, tile / COLUMNS * HEIGHT_PX, null);
        }
        canvas.dispose();
        return all;
    }

    double delayMs(Player player) {
        return 1000 * delayFrames(players.indexOf(player)) / framesPerS;
    }

    List<Player> turned() {
        return players.stream().filter(p -> TURNED.contains(players.indexOf(p))).toList();
    }

    /** What a reader without fault would read, by the truth of the one clip, in which there is nothing but strokes. */
    List<Reading> truth(Path truthFile) throws IOException {
        List<Reading> readings = new ArrayList<>();
        for (Player player : players) {
            List<TruthSpan> spans = TruthSpan.read(truthFile, player.label());
            double delayS = delayMs(player) / 1000;
            List<Stroke> strokes = IntStream.range(-1, times)
                    .boxed()
                    .flatMap(time -> spans.stream()
                            .flatMap(span -> cut(span.startS() - fromS, span.endS() - fromS, span.kind(), lengthS))
                            .map(stroke -> played(stroke, time, delayS)))
                    .sorted(Comparator.comparingDouble(Stroke::startS))
                    .flatMap(s -> cut(s.startS(), s.endS(), s.kind(), times * lengthS))
                    .toList();
            readings.add(new Reading(player, strokes));
        }
        return readings;
    }

    private Stroke played(Stroke stroke, int time, double delayS) {
        double atS = time * lengthS + delayS;
        BowDirection direction = stroke.kind().direction().orElseThrow();
        return Math.floorMod(time, 2) == 0
                ? new Stroke(atS + stroke.startS(), atS + stroke.endS(), stroke.kind(), 1)
                : new Stroke(
                        atS + lengthS - stroke.endS(),
                        atS + lengthS - stroke.startS(),
                        StrokeKind.of(direction.opposite()),
                        1);
    }

    private static Stream<Stroke> cut(double startS, double endS, StrokeKind kind, double lengthS) {
        double fromS = Math.max(0, startS);
        double toS = Math.min(lengthS, endS);
        return fromS < toS ? Stream.of(new Stroke(fromS, toS, kind, 1)) : Stream.empty();
    }
}
