package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.pose.PackedModel;
import tuttarco.video.TestClips;

/** Whatever is given, the user gets an exit code and one sentence, and nothing is written unless seats were found. */
class SeatsCommandTest {
    @TempDir
    Path folder;

    private void assertRefused(int code, String says, Path video, Path out) throws Exception {
        List<Path> before = listed();
        Shell shell = Shell.run("seats", video, "--quiet", "--out", out);
        assertEquals(code, shell.code(), shell.err());
        assertEquals("", shell.out());
        assertEquals(1, shell.errLines().size(), shell.err());
        assertTrue(shell.err().contains(says), shell.err());
        assertEquals(before, listed());
    }

    private List<Path> listed() throws Exception {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.sorted().toList();
        }
    }

    @Test
    void whereNobodyIsSeenNothingIsWritten() throws Exception {
        PackedModel.orSkip();
        Path video = folder.resolve("grey.mkv");
        TestClips.write(video, List.of(0.0, 0.04, 0.08, 0.12), timeS -> TestClips.plain(160, 120, 90));
        assertRefused(4, "Nobody in grey.mkv clearly bows", video, folder.resolve("a.take.json"));
    }

    @Test
    void aVideoThatIsMissingOrNoneIsNamed() throws Exception {
        PackedModel.orSkip();
        assertRefused(3, "missing.mp4", folder.resolve("missing.mp4"), folder.resolve("a.take.json"));
        Path text = Files.writeString(folder.resolve("text.mp4"), "no video");
        assertRefused(3, "text.mp4", text, folder.resolve("a.take.json"));
    }

    @Test
    void aVideoOutsideTheTakesFolderCantBeNamedInIt() throws Exception {
        Path video = Files.writeString(folder.resolve("clip.mp4"), "never read");
        assertRefused(5, "outside its own folder", video, folder.resolve("below/a.take.json"));
    }

    @Test
    void aFileInTheWayIsLeftAsItIs() throws Exception {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        assertRefused(5, "name a folder instead", file.resolve("clip.mp4"), file.resolve("a.take.json"));
        assertEquals("mine", Files.readString(file));
        assertFalse(Files.isDirectory(file));
    }
}
