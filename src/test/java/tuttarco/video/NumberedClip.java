package tuttarco.video;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** A clip whose every picture bears its number, counted from 0, as bars that are light or dark: the first counts 1, the next 2. */
public final class NumberedClip {
    public static final int WIDTH_PX = 160;
    public static final int HEIGHT_PX = 96;
    private static final int BARS = 10;
    private static final int SOUND_PER_S = 48_000;

    private NumberedClip() {}

    /** So many times a second, from 0 on. */
    public static List<Double> evenly(int pictures, double perS) {
        return IntStream.range(0, pictures).mapToObj(i -> i / perS).toList();
    }

    /**
     * Writes one picture a presentation time.
     *
     * @param sound from seconds to samples; empty for a clip without sound
     * @param soundS how long it sounds, seconds
     */
    public static Path write(Path file, List<Double> timesS, Optional<DoubleUnaryOperator> sound, double soundS)
            throws Exception {
        try (ClipWriter writer = ClipWriter.open(
                file, WIDTH_PX, HEIGHT_PX, 30, 400_000, sound.map(any -> SoundFormat.mono(SOUND_PER_S)))) {
            for (int i = 0; i < timesS.size(); i++) {
                writer.frame(timesS.get(i), picture(i));
            }
            if (sound.isPresent()) {
                float[] samples = new float[(int) (soundS * SOUND_PER_S)];
                for (int i = 0; i < samples.length; i++) {
                    samples[i] = (float) sound.get().applyAsDouble((double) i / SOUND_PER_S);
                }
                writer.sound(samples);
            }
            writer.finish();
        }
        return file;
    }

    public static BufferedImage picture(int number) {
        BufferedImage picture = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = picture.createGraphics();
        for (int bar = 0; bar < BARS; bar++) {
            g.setColor((number >> bar & 1) == 1 ? Color.LIGHT_GRAY : Color.DARK_GRAY);
            g.fillRect(bar * WIDTH_PX / BARS, 0, WIDTH_PX / BARS, HEIGHT_PX);
        }
        g.dispose();
        return picture;
    }

    /** The number that a picture bears, of whatever size. */
    public static int numberIn(BufferedImage picture) {
        int number = 0;
        for (int bar = 0; bar < BARS; bar++) {
            int x = (2 * bar + 1) * picture.getWidth() / (2 * BARS);
            Color middle = new Color(picture.getRGB(x, picture.getHeight() / 2));
            number |= middle.getGreen() > 128 ? 1 << bar : 0;
        }
        return number;
    }
}
