package tuttarco.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.swing.JFrame;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.bow.BowDirection;
import tuttarco.chart.BowSigns;
import tuttarco.chart.Palette;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Counts;
import tuttarco.playback.TimedOut;
import tuttarco.video.ClipWriter;
import tuttarco.video.SoundFormat;

/**
 * A clip of 1920x1080 at 30 pictures a second and 12 Mbit/s, with sound, played in a window with the signs of twelve
 * players over it: {@code xvfb-run mvn test -Pbenchmark -Dtest=PlaybackBenchmark}. Nothing is asserted about speed.
 */
@NeedsScreen
@Tag("benchmark")
class PlaybackBenchmark {
    private static final int WIDTH_PX = 1920;
    private static final int HEIGHT_PX = 1080;
    private static final int PER_S = 30;
    private static final int SECONDS = 10;
    private static final int PLAYERS = 12;

    /** Threads that take less are left out, milliseconds a picture. */
    private static final double LEAST_TOLD_MS = 0.2;

    @TempDir
    static Path folder;

    private static Optional<Path> written = Optional.empty();

    private double worstMs;

    /** A grained picture that wanders, as a hand-held phone's does, and twelve spots that move in it. */
    private static Path clip() throws Exception {
        if (written.isPresent()) {
            return written.get();
        }
        Path file = folder.resolve("section.mp4");
        Random random = new Random(1);
        BufferedImage ground = new BufferedImage(WIDTH_PX + 40, HEIGHT_PX + 40, BufferedImage.TYPE_3BYTE_BGR);
        for (int y = 0; y < ground.getHeight(); y++) {
            for (int x = 0; x < ground.getWidth(); x++) {
                int shade = 90 + (x / 40 + y / 40) % 2 * 40 + random.nextInt(24);
                ground.setRGB(x, y, new Color(shade, shade, shade - 20).getRGB());
            }
        }
        BufferedImage picture = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_3BYTE_BGR);
        try (ClipWriter writer = ClipWriter.open(
                file, WIDTH_PX, HEIGHT_PX, PER_S, 12_000_000, Optional.of(SoundFormat.mono(48_000)))) {
            for (int i = 0; i < SECONDS * PER_S; i++) {
                Graphics2D g = picture.createGraphics();
                g.drawImage(ground, (int) (-20 + 15 * Math.sin(i / 30.0)), (int) (-20 + 10 * Math.cos(i / 20.0)), null);
                g.setColor(new Color(180, 120, 80));
                for (int player = 0; player < PLAYERS; player++) {
                    Point2D seat = seat(player);
                    g.fillOval((int) (seat.getX() + 90 * Math.sin(i / 8.0 + player)), (int) seat.getY(), 120, 60);
                }
                g.dispose();
                writer.frame((double) i / PER_S, picture);
            }
            float[] tone = new float[SECONDS * 48_000];
            for (int i = 0; i < tone.length; i++) {
                tone[i] = (float) (0.3 * Math.sin(2 * Math.PI * 440 * i / 48_000.0));
            }
            writer.sound(tone);
            writer.finish();
        }
        written = Optional.of(file);
        return file;
    }

    private static Point2D seat(int player) {
        return new Point2D.Double(200 + player % 4 * 450, 180 + player / 4 * 320);
    }

    /** A sign, a frame and a name for each player, as the review draws them. */
    private void signs(Graphics2D g, double timeS, AffineTransform pictureToView, ClipPlayer player) {
        Palette palette = Theme.worn().palette();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (int i = 0; i < PLAYERS; i++) {
            Point2D seat = seat(i);
            Rectangle box = pictureToView
                    .createTransformedShape(new Rectangle((int) seat.getX() - 100, (int) seat.getY() - 60, 380, 280))
                    .getBounds();
            g.setColor(palette.with());
            g.setStroke(new BasicStroke(2));
            g.drawRoundRect(box.x, box.y, box.width, box.height, 8, 8);
            g.setColor(palette.ground());
            g.fillRoundRect(box.x + 4, box.y + 4, 40, 40, 8, 8);
            g.setColor(palette.ink());
            BowDirection direction = (int) (timeS * 2 + i) % 2 == 0 ? BowDirection.DOWN : BowDirection.UP;
            g.fill(BowSigns.of(direction, box.x + 24, box.y + 24, 26, 4));
            g.drawString("Desk " + (1 + i / 2), box.x + 50, box.y + 24);
        }
        if (player.playing()) {
            worstMs = Math.max(worstMs, Math.abs(player.soundS() - timeS) * 1000);
        }
    }

    /** Processor time of the program's own threads by their names; decoding goes on in others. */
    private static Map<String, Double> threadsMs() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Map<String, Double> ms = new TreeMap<>();
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (thread != null) {
                ms.merge(thread.getThreadName(), threads.getThreadCpuTime(thread.getThreadId()) / 1e6, Double::sum);
            }
        }
        return ms;
    }

    private static String sinceThen(Map<String, Double> beforeMs) {
        return threadsMs().entrySet().stream()
                .map(e -> Map.entry(
                        e.getKey(), (e.getValue() - beforeMs.getOrDefault(e.getKey(), 0.0)) / (SECONDS * PER_S)))
                .filter(e -> e.getValue() >= LEAST_TOLD_MS)
                .map(e -> String.format(Locale.ROOT, "%s %.1f", e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource({"1340, 710, 0.5", "1340, 710, 1", "2060, 1240, 1", "3840, 2160, 1"})
    void aSectionPlays(int widthPx, int heightPx, double speed) throws Exception {
        Path clip = clip();
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        PictureView view = GuiActionRunner.execute(PictureView::new);
        JFrame frame = GuiActionRunner.execute(() -> {
            Theme.NIGHT.apply();
            JFrame made = new JFrame("benchmark");
            made.add(view, BorderLayout.CENTER);
            made.add(new Transport("review", view, Optional::empty), BorderLayout.SOUTH);
            made.setSize(new Dimension(widthPx, heightPx));
            made.setVisible(true);
            return made;
        });
        EventThreadWatch watch = EventThreadWatch.get();
        try (ClipPlayer player = TimedOut.open(clip, view)) {
            GuiActionRunner.execute(() -> {
                view.watch(Optional.of(player));
                view.overlay((g, timeS, pictureToView) -> signs(g, timeS, pictureToView, player));
            });
            player.speed(speed);
            for (String run : new String[] {"first", "second"}) {
                Counts before = player.counts();
                worstMs = 0;
                watch.forget();
                Map<String, Double> threadsMs = threadsMs();
                long cpuNs = machine.getProcessCpuTime();
                player.play();
                while (player.playing()) {
                    Thread.sleep(20);
                }
                Counts counts = player.counts();
                System.out.printf(
                        Locale.ROOT,
                        "%dx%d at %.2f, %s: shown %d, dropped %d; sound to picture when shown %.0f ms, when painted"
                                + " %.0f ms at worst; processor %.1f ms a picture, the event thread's %.1f ms of it, %.1f ms at longest; load"
                                + " %.1f%n",
                        widthPx,
                        heightPx,
                        speed,
                        run,
                        counts.shown() - before.shown(),
                        counts.dropped() - before.dropped(),
                        counts.worstOffsetMs(),
                        worstMs,
                        (machine.getProcessCpuTime() - cpuNs) / 1e6 / (SECONDS * PER_S),
                        watch.allMs() / (SECONDS * PER_S),
                        watch.longestMs(),
                        machine.getSystemLoadAverage());
                System.out.println("  of it, ms a picture: " + sinceThen(threadsMs));
                assertTrue(counts.shown() > before.shown(), "nothing was played");
            }
        } finally {
            GuiActionRunner.execute(frame::dispose);
        }
    }
}
