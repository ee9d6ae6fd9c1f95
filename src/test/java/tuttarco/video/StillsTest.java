package tuttarco.video;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StillsTest {
    @TempDir
    Path folder;

    private List<Integer> kept(int frames, int least) throws Exception {
        Path file = folder.resolve(frames + ".mkv");
        List<Double> timesS = IntStream.range(0, frames).mapToObj(i -> i / 25.0).toList();
        TestClips.write(file, timesS, timeS -> TestClips.plain(64, 64, (int) Math.round(timeS * 25)));
        try (Clip clip = Clip.open(file);
                Stills stills = Stills.of(clip, least)) {
            for (Frame frame : stills.frames()) {
                assertEquals(frame.index(), frame.picture().getRaster().getSample(8, 8, 0), "its own picture");
            }
            return stills.frames().stream().map(Frame::index).toList();
        }
    }

    @Test
    void picturesLieEvenlyOverAClipOfAnyLength() throws Exception {
        assertEquals(List.of(0, 1, 2), kept(3, 4));
        assertEquals(List.of(0, 1, 2, 3, 4, 5, 6), kept(7, 4));
        assertEquals(List.of(1, 3, 5, 7), kept(8, 4));
        assertEquals(List.of(3, 7, 11, 15, 19), kept(20, 4));
        assertEquals(List.of(15, 31, 47, 63, 79, 95), kept(100, 4));
    }

    @Test
    void anInterruptedThreadStops() throws Exception {
        kept(5, 4);
        try (Clip clip = Clip.open(folder.resolve("5.mkv"))) {
            Thread.currentThread().interrupt();
            assertThrows(InterruptedException.class, () -> Stills.of(clip, 4));
        }
    }
}
