package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tuttarco.beats.Beat;
import tuttarco.demo.SoundCatalogue;

/** A rendered section is played, someone talks, and it goes on from an earlier bar: when is known. */
class BeatsHeardTest {
    @TempDir
    Path folder;

    private static SoundCatalogue.Listed scene(String name) {
        return SoundCatalogue.all().stream()
                .filter(listed -> listed.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theBeatsOfATakeAreHeardAndWritten() throws Exception {
        SoundCatalogue.Listed rehearsed = scene("rehearsed");
        Path take = rehearsed.writeSound(folder);
        Path out = folder.resolve("heard.csv");

        Shell shell = Shell.run("beats", take, "--out", out);

        assertEquals(0, shell.code(), shell.err());
        List<String> lines = Files.readAllLines(out);
        assertEquals("bar,beat,time_s,stderr_s,source", lines.get(0));
        List<Beat> truth = rehearsed.beats().beats();
        assertEquals(84, truth.size());
        int near = 0;
        for (Beat beat : truth) {
            near += lines.stream().anyMatch(line -> isNear(beat, line)) ? 1 : 0;
        }
        assertTrue(near >= 0.85 * truth.size(), near + " of " + truth.size() + " within 100 ms");
    }

    private static boolean isNear(Beat beat, String line) {
        String[] cells = line.split(",", -1);
        return cells[0].equals(beat.bar())
                && cells[1].equals(Integer.toString(beat.beat()))
                && Math.abs(Double.parseDouble(cells[2]) - beat.timeS()) <= 0.1
                && Double.parseDouble(cells[3]) > 0
                && cells[4].equals("sound");
    }

    @Test
    void aTakeWithAnotherPartIsRefusedInOneSentenceAndLeavesNothing() throws Exception {
        Path take = scene("heard-slow").writeSound(folder);
        scene("heard-basses").writeSound(folder);
        Files.writeString(take, Files.readString(take).replace("heard-slow.wav", "heard-basses.wav"));
        Path out = folder.resolve("heard.csv");

        Shell shell = Shell.run("beats", take, "--out", out);

        assertEquals(ExitCode.INPUT.number(), shell.code());
        assertEquals(1, shell.errLines().size(), shell.err());
        assertTrue(shell.err().contains("heard-basses.wav does not fit the part Violet Hour"), shell.err());
        assertTrue(Files.notExists(out));
    }
}
