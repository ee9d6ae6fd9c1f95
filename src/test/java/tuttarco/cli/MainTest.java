package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    private static final String IDA = "Ida:0,0,100,100:violin:camera";

    @TempDir
    Path folder;

    private static void assertUsage(Shell shell, String says) {
        assertAll(
                () -> assertEquals(2, shell.code()),
                () -> assertEquals("", shell.out()),
                () -> assertEquals(1, shell.errLines().size(), shell.err()),
                () -> assertTrue(shell.err().contains(says), shell.err()),
                () -> assertTrue(shell.err().strip().endsWith(" --help'."), shell.err()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''                           | Say what to do
            dance                        | dance
            --loudly                     | --loudly
            analyse                      | TAKE
            analyse a.take.json          | --out
            analyse --out                | --out
            analyse --out d a b          | 'b'
            analyse --loudly a --out d   | --loudly
            strokes clip.mp4 --out d     | --player
            demo                         | --out
            analyse a --out d --cache    | --cache
            analyse a --out d --cache c --no-cache | --no-cache
            bowing a.musicxml            | --out
            bowing a.musicxml --out a.txt                        | .bowing.txt
            bowing a.musicxml --out a.bowing.txt --practice odd  | violins or viols
            seats clip.mp4               | --out
            seats clip.mp4 --out seats.json                      | .take.json
            seats clip.mp4 --out .take.json                      | .take.json
            seats clip.mp4 --out a.take.json --instrument flute  | violin, viola, cello, bass, viol
            seats clip.mp4 --out a.take.json --leader up         | --leader
            """)
    void aCommandLineThatIsNotUnderstoodSaysWhyAndWhereToLook(String line, String says) {
        assertUsage(Shell.run((Object[]) (line.isEmpty() ? new String[0] : line.split(" ", -1))), says);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Ida                                | NAME:x,y,w,h:INSTRUMENT[:FACING]
            ''                                 | NAME:x,y,w,h:INSTRUMENT[:FACING]
            :0,0,9,9:violin:camera             | NAME:x,y,w,h:INSTRUMENT[:FACING]
            Ida:0,0,9:violin:camera            | NAME:x,y,w,h:INSTRUMENT[:FACING]
            Ida:-1,0,9,9:violin:camera         | NAME:x,y,w,h:INSTRUMENT[:FACING]
            Ida:NaN,0,9,9:violin:camera        | NAME:x,y,w,h:INSTRUMENT[:FACING]
            Ida:0,0,99999999999,9:violin:left  | NAME:x,y,w,h:INSTRUMENT[:FACING]
            Ida:0,0,0,9:violin:camera          | width and a height
            Ida:0,0,9,9:flute:camera           | violin, viola, cello, bass, viol
            Ida:0,0,9,9:violin:sideways        | 'sideways' is no facing; choose from auto, away,
            Ida:0,0,9,9:violin:                | NAME:x,y,w,h:INSTRUMENT[:FACING]
            """)
    void aPlayerIsRefusedWithTheFormOrTheChoice(String player, String says) {
        assertUsage(Shell.run("strokes", "clip.mp4", "--player", player, "--out", folder.resolve("out")), says);
    }

    @Test
    void aMessageIsWholeHoweverLongAndOnOneLine() {
        String longName = "I".repeat(150) + "\u001b[2J\n" + "a".repeat(150);
        Shell shell = Shell.run("strokes", "clip.mp4", "--player", longName, "--out", folder);
        assertUsage(shell, "as in 'Ida:30,45,390,265:violin:camera'");
        assertFalse(shell.err().contains("\u001b"));
    }

    @Test
    void playersOfOneNameCantBeToldApart() {
        assertUsage(
                Shell.run("strokes", "clip.mp4", "--player", IDA, "--player", IDA, "--out", folder),
                "Each player needs a name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Desk 2: inside", "a:1,2,3,4:violin:camera", "@ida", "-x"})
    void aNameMayHoldColonsAndSigns(String name) {
        Path video = folder.resolve("missing.mp4");
        Shell shell = Shell.run("strokes", video, "--player=" + name + ":0,0,9,9:VIOLIN:Camera", "--out", folder);
        assertEquals(3, shell.code(), shell.err());
        assertTrue(shell.err().contains("missing.mp4"), shell.err());
    }

    /** The command line is understood; only the video is not there. */
    @ParameterizedTest
    @ValueSource(strings = {"Ida:0,0,9,9:violin:auto", "Ida:0,0,9,9:violin:AUTO", "Ida:0,0,9,9:violin"})
    void aFacingMayBeLeftToTheProgram(String player) {
        Path video = folder.resolve("missing.mp4");
        Shell shell = Shell.run("strokes", video, "--player", player, "--out", folder);
        assertEquals(3, shell.code(), shell.err());
        assertEquals(1, shell.errLines().size(), shell.err());
        assertTrue(shell.err().contains("missing.mp4"), shell.err());
    }

    /** An argument that begins with @ is a name like any other, and no file of further arguments. */
    @Test
    void argumentsAreNotReadFromFiles() throws Exception {
        Path list = Files.writeString(folder.resolve("list"), "--version");
        assertUsage(Shell.run("@" + list), "@" + list.getParent());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "analyse --help", "strokes -h", "seats -h", "demo --help"})
    void helpIsGivenOnRequest(String line) {
        Shell shell = Shell.run((Object[]) line.split(" "));
        assertEquals(0, shell.code());
        assertEquals("", shell.err());
        assertTrue(shell.out().startsWith("Usage: tuttarco"), shell.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "analyse --help", "strokes --help"})
    void helpNamesWhatScriptsRelyOn(String line) {
        String help = Shell.run((Object[]) line.split(" ")).out();
        String[] words = switch (line) {
            case "--help" ->
                new String[] {"analyse", "beats", "seats", "strokes", "demo", "  2 ", "  3 ", "  4 ", "  5 ", "130"};
            case "analyse --help" -> new String[] {"TAKE", "--out", "--cache", "--no-cache", "--quiet", "--version"};
            default ->
                new String[] {
                    "VIDEO", "--player", "INSTRUMENT", "FACING", "auto", "--out", "--cache", "--no-cache", "--quiet"
                };
        };
        for (String word : words) {
            assertTrue(help.contains(word), word + " is missing in " + help);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "analyse --version", "strokes -V"})
    void theVersionIsToldOnRequest(String line) {
        Shell shell = Shell.run((Object[]) line.split(" "));
        assertEquals(0, shell.code());
        assertTrue(shell.out().matches("tuttarco \\S+\\R"), shell.out());
    }
}
