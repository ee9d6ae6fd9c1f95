package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The players of {@link TinyTake}, who change every half second without an end, in a rehearsal that stops twice: both bars,
 * bar 2 again after four seconds, and again from bar 1, this time with the bow turned.
 */
class RehearsalTest {
    private static final double RATE = 30;
    private static final String BEATS = """
            bar,beat,time_s
            1,1,0
            1,2,0.5
            1,3,1
            2,1,1.5
            2,2,2
            2,3,2.5
            2,1,6.5
            2,2,7
            2,3,7.5
            1,1,8.5
            1,2,9
            1,3,9.5
            2,1,10
            2,2,10.5
            2,3,11
            """;

    @TempDir
    static Path folder;

    private static Path take;

    @BeforeAll
    static void analyse() throws Exception {
        take = TinyTake.writeTexts(folder);
        TinyTake.writeClip(folder.resolve("clip.mkv"), (int) (11.5 * RATE), RATE);
        Files.writeString(folder.resolve("beats.csv"), BEATS);
        Shell shell = Shell.run("analyse", take, "--no-cache", "--out", folder.resolve("out"));
        assertEquals(0, shell.code(), shell.err());
    }

    private static List<String> lines(String name) throws IOException {
        return Files.readAllLines(folder.resolve("out").resolve(name));
    }

    @Test
    void aBarIsJudgedAsOftenAsItWasPlayed() throws IOException {
        List<String> ida = lines("beats.csv").stream()
                .filter(line -> line.startsWith("Desk 1 outside"))
                .map(line -> line.split(",", -1))
                .map(f -> f[1] + "." + f[2] + " " + f[3] + " " + f[4] + " " + f[7])
                .toList();
        assertEquals(
                List.of(
                        "1.1 0.0000 down with",
                        "1.2 0.5000 up with",
                        "1.3 1.0000 down with",
                        "2.1 1.5000 up with",
                        "2.2 2.0000 down with",
                        "2.3 2.5000 up with",
                        "2.1 6.5000 up with",
                        "2.2 7.0000 down with",
                        "2.3 7.5000 up with",
                        "1.1 8.5000 down against",
                        "1.2 9.0000 up against",
                        "1.3 9.5000 down against",
                        "2.1 10.0000 up against",
                        "2.2 10.5000 down against",
                        "2.3 11.0000 up against"),
                ida);
    }

    @Test
    void aDivergenceTellsWhichPlayingItWas() throws IOException {
        List<String> divergences = lines("divergences.csv");
        assertEquals(2, divergences.size());
        assertTrue(divergences.get(1).startsWith("1,1,2,3,Desk 1 outside; Desk 1 inside,marking,"), divergences.get(1));
        assertTrue(divergences.get(1).endsWith(",8.5000,11.0000,turned,,,,"), divergences.get(1));
        String report = Files.readString(folder.resolve("out/report.html"));
        assertTrue(
                report.contains("Desk 1 outside and Desk 1 inside turned in bars 1–2 (0:08.5)"),
                "the section chart's title");
        assertTrue(report.contains("<i> 0:06.5</i>"), "the second run of the section chart");
        assertTrue(report.contains("not seen back before the end"));
    }

    @Test
    void changesInTheStopHaveNoLag() throws IOException {
        List<Double> timesS = lines("lags.csv").stream()
                .skip(1)
                .map(line -> Double.parseDouble(line.split(",", -1)[3]))
                .toList();
        assertTrue(timesS.stream().anyMatch(t -> t > 8.5), "changes after the stops are paired");
        assertTrue(timesS.stream().noneMatch(t -> t >= 3 && t < 6.5), "those at 3.5 to 6 s are nobody's business");
    }

    @Test
    void beatsWrittenAreReadAsTheyWere() throws IOException {
        Path first = folder.resolve("first.csv");
        assertEquals(0, Shell.run("beats", take, "--out", first).code());
        List<String> written = Files.readAllLines(first);
        assertEquals("bar,beat,time_s,stderr_s,source", written.get(0));
        assertEquals("1,2,0.5,0.025,list", written.get(2));
        Path again =
                Files.writeString(folder.resolve("again.take.json"), TinyTake.JSON.replace("beats.csv", "first.csv"));
        Path second = folder.resolve("second.csv");
        assertEquals(0, Shell.run("beats", again, "--out", second).code());
        assertEquals(written, Files.readAllLines(second));
    }

    @Test
    void aBeatAloneIsRefusedInOneSentence() throws IOException {
        Files.writeString(folder.resolve("alone.csv"), BEATS.replace("2,2,7\n2,3,7.5\n", ""));
        Path alone =
                Files.writeString(folder.resolve("alone.take.json"), TinyTake.JSON.replace("beats.csv", "alone.csv"));
        Shell shell = Shell.run("analyse", alone, "--no-cache", "--out", folder.resolve("none"));
        assertEquals(3, shell.code());
        assertTrue(shell.err().contains("bar 2 beat 1 at 6.5 s alone between two stops"), shell.err());
    }
}
