package tuttarco.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.video.NumberedClip;

/** Stills of a clip whose pictures bear numbers. */
class StillsTest {
    @TempDir
    Path folder;

    private Stills stills() throws Exception {
        Path clip =
                NumberedClip.write(folder.resolve("numbered.mp4"), NumberedClip.evenly(100, 25), Optional.empty(), 0);
        return new Stills(clip, FacesToBlur.none(), share -> {});
    }

    @Test
    void eachIsThePictureSeenThen() throws Exception {
        List<Optional<byte[]>> jpegs = stills().jpegs(List.of(3.0, 0.0, 1.219, 1.221, 60.0, -1.0), 80);
        assertEquals(6, jpegs.size());
        List<Integer> numbers = List.of(75, 0, 30, 30);
        for (int i = 0; i < numbers.size(); i++) {
            BufferedImage still =
                    ImageIO.read(new ByteArrayInputStream(jpegs.get(i).orElseThrow()));
            assertEquals(numbers.get(i), NumberedClip.numberIn(still));
            assertEquals(80, still.getWidth());
            assertEquals(48, still.getHeight());
        }
        assertEquals(List.of(Optional.empty(), Optional.empty()), jpegs.subList(4, 6));
    }

    @Test
    void theyAreNeverLargerThanTheClipAndTellNothingMore() throws Exception {
        byte[] jpeg = stills().jpegs(List.of(1.0), 4000).get(0).orElseThrow();
        assertEquals(
                NumberedClip.WIDTH_PX,
                ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth());
        String bytes = new String(jpeg, StandardCharsets.ISO_8859_1);
        assertTrue(bytes.contains("JFIF"));
        assertFalse(bytes.contains("Exif") || bytes.contains("http:"));
    }

    @Test
    void theyCanBeStopped() throws Exception {
        Stills stills = stills();
        Thread.currentThread().interrupt();
        assertThrows(InterruptedException.class, () -> stills.jpegs(List.of(1.0), 80));
    }
}
