package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Takes of two bars: too little for any claim, enough for every file and refusal. */
class CompareCommandTest {
    @TempDir
    static Path given;

    @TempDir
    Path folder;

    private static Path take;

    @BeforeAll
    static void writeTake() throws Exception {
        take = TinyTake.write(given);
    }

    private static Path other(String name, String json) throws Exception {
        return Files.writeString(given.resolve(name + ".take.json"), json);
    }

    private void assertRefused(String why, Path second) {
        Shell shell = Shell.run("compare", take, second, "--out", folder.resolve("none"));
        assertEquals(3, shell.code(), shell.err());
        List<String> said = shell.errLines().stream()
                .filter(line -> !line.startsWith("Reading ") && !line.startsWith("The arms were followed"))
                .toList();
        assertEquals(1, said.size(), shell.err());
        assertTrue(said.get(0).contains(why), shell.err());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    @Test
    void pageDataAndChartAreWrittenAndTheUserIsToldWhere() throws Exception {
        Path again = other("again", TinyTake.JSON.replace("Three seconds", "Again"));
        Path out = folder.resolve("out");
        Shell shell = Shell.run("compare", take, again, "--out", out);
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains(out.resolve("compare.html").toString()), shell.out());
        assertTrue(Files.readString(out.resolve("compare.html")).contains("Nothing that could be told from chance"));
        assertTrue(Files.exists(out.resolve("charts/take-against-take.png")));
        assertTrue(Files.readAllLines(out.resolve("compare.csv")).size() > 1);
        assertEquals(
                new Shell(0, "", ""), Shell.run("compare", take, again, "--quiet", "--out", folder.resolve("quiet")));
    }

    @Test
    void takesWithNothingInCommonAreRefusedInOneSentence() throws Exception {
        assertRefused(
                "'Three seconds' and 'Three seconds' have no player of the same label in common",
                other("others", TinyTake.JSON.replace("Ida", "Kim").replace("Jon", "Lea")));
        Files.writeString(
                given.resolve("later.csv"),
                TinyTake.BEATS.replace("\n2,", "\n4,").replace("\n1,", "\n3,"));
        Files.writeString(given.resolve("later.bowing.txt"), "part Later\nmetre 3/4\n3: d u d\n4: u d u\n");
        assertRefused(
                "have no bar in common",
                other(
                        "later",
                        TinyTake.JSON
                                .replace("beats.csv", "later.csv")
                                .replace("part.bowing.txt", "later.bowing.txt")));
        assertRefused(
                "nobars.take.json says nothing of bars",
                other("nobars", TinyTake.JSON.replaceFirst("(?s),\\s*\"part\".*", "}")));
    }

    @Test
    void oneTakeAloneIsNotUnderstood() {
        assertEquals(
                2, Shell.run("compare", take, "--out", folder.resolve("out")).code());
    }
}
