package tuttarco.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is given, the user gets an exit code and one sentence, and no folder is left behind. */
class HostileInputTest {
    private static final String TAKE = "tiny.take.json";
    private static final String PART = "part.bowing.txt";
    private static final String BEATS = "beats.csv";
    private static final String CLIP = "clip.mkv";
    private static final int INPUT = 3;
    private static final int NOTHING_READ = 4;

    @TempDir
    static Path given;

    @TempDir
    Path around;

    private Path folder;

    /** Does harm to a good take's folder. */
    interface Harm {
        void to(Path folder) throws Exception;
    }

    @BeforeAll
    static void writeClip() throws Exception {
        TinyTake.writeClip(given.resolve(CLIP), 30, 30);
    }

    @BeforeEach
    void layOutAGoodTake() throws IOException {
        folder = Files.createDirectory(around.resolve("take"));
        Files.copy(given.resolve(CLIP), folder.resolve(CLIP));
        TinyTake.writeTexts(folder);
    }

    private static final Path REFUSED = Path.of("src/test/resources/tuttarco/musicxml/parts");

    private static Named<Harm> text(String name, String file, String content) {
        return Named.of(name, folder -> Files.writeString(folder.resolve(file), content));
    }

    private static Named<Harm> take(String name, String good, String bad) {
        assertTrue(TinyTake.JSON.contains(good), good);
        return text(name, TAKE, TinyTake.JSON.replaceFirst(Pattern.quote(good), bad));
    }

    private static Named<Harm> cut(String name, String file, int bytes) {
        return Named.of(name, folder -> {
            byte[] whole = Files.readAllBytes(folder.resolve(file));
            Files.write(folder.resolve(file), Arrays.copyOf(whole, bytes));
        });
    }

    private static Named<Harm> part(String name, String document) {
        return Named.of(name, folder -> {
            Files.writeString(folder.resolve("part.musicxml"), document);
            Files.writeString(folder.resolve(TAKE), TinyTake.JSON.replace(PART, "part.musicxml"));
        });
    }

    /** One of the files that the reader's own tests refuse. */
    private static Named<Harm> part(String name, Path file) throws IOException {
        return part(name, Files.readString(file));
    }

    private static Named<Harm> archive(String name, String path, byte[] content) {
        return Named.of(name, folder -> {
            try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(folder.resolve("part.mxl")))) {
                zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
                zip.write(("<container><rootfiles><rootfile full-path=\"" + path + "\"/></rootfiles></container>")
                        .getBytes(StandardCharsets.UTF_8));
                zip.putNextEntry(new ZipEntry(path));
                zip.write(content);
            }
            Files.writeString(folder.resolve(TAKE), TinyTake.JSON.replace(PART, "part.mxl"));
        });
    }

    private static String score(String entities) {
        return "<?xml version=\"1.0\"?><!DOCTYPE score-partwise [" + entities + "]><score-partwise version=\"4.0\">"
                + "<part-list><score-part id=\"P1\"><part-name>&x;</part-name></score-part></part-list>"
                + "<part id=\"P1\"><measure number=\"1\"><attributes><divisions>1</divisions><time><beats>3</beats>"
                + "<beat-type>4</beat-type></time></attributes><note><rest/><duration>3</duration></note></measure>"
                + "</part></score-partwise>";
    }

    private static String bomb() {
        StringBuilder entities = new StringBuilder("<!ENTITY x0 \"bowing\">");
        for (int i = 1; i <= 12; i++) {
            entities.append("<!ENTITY x" + i + " \"" + ("&x" + (i - 1) + ";").repeat(10) + "\">");
        }
        return score(entities + "<!ENTITY x \"&x12;\">");
    }

    private static void png(Path file) throws IOException {
        ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    }

    static Stream<Named<Harm>> badTakes() {
        return Stream.of(
                text("empty take", TAKE, ""),
                text("blank take", TAKE, " \n"),
                text("take that is no JSON", TAKE, "violins"),
                text("take that is a list", TAKE, "[]"),
                text("take nested a hundred thousand deep", TAKE, "[".repeat(100_000)),
                cut("truncated take", TAKE, 200),
                Named.of("picture renamed to take", folder -> png(folder.resolve(TAKE))),
                Named.of("no take", folder -> Files.delete(folder.resolve(TAKE))),
                Named.of("take that is a folder", folder -> {
                    Files.delete(folder.resolve(TAKE));
                    Files.createDirectory(folder.resolve(TAKE));
                }),
                take("unknown version", "\"version\": 1", "\"version\": 99"),
                take("unknown field", "\"title\"", "\"colour\": 1, \"title\""),
                take("seat at NaN", "\"x\": 0", "\"x\": NaN"),
                take("seat at 1e999", "\"x\": 0", "\"x\": 1e999"),
                take("seat at a number of a million digits", "\"x\": 0", "\"x\": " + "9".repeat(900_000)),
                take("desk beyond all numbers", "\"desk\": 1", "\"desk\": 99999999999"),
                take("tempo of 1e999", "\"file\": \"beats.csv\"", "\"tempo_bpm\": 1e999, \"start_s\": 0"),
                take("tempo of zero", "\"file\": \"beats.csv\"", "\"tempo_bpm\": 0, \"start_s\": 0"),
                take("tempo near zero", "\"file\": \"beats.csv\"", "\"tempo_bpm\": 1e-300, \"start_s\": 0"),
                take(
                        "anchor in a bar of escapes",
                        "\"beats.csv\"",
                        "\"beats.csv\", \"anchors\": [{\"bar\": \"\\\\u001b[2J\", \"time_s\": 1}]"),
                take(
                        "anchor at 1e999",
                        "\"beats.csv\"",
                        "\"beats.csv\", \"anchors\": [{\"bar\": 1, \"time_s\": 1e999}]"),
                take(
                        "anchor at the far end",
                        "\"beats.csv\"",
                        "\"beats.csv\", \"anchors\": [{\"bar\": 1, \"time_s\": 86400}]"),
                take("two leaders", "\"facing\": \"camera\"}", "\"facing\": \"camera\", \"leader\": true}"),
                take("two players of one name", "\"Jon\"", "\"Ida\""),
                text("no players", TAKE, TinyTake.JSON.replaceAll("(?s)\"players\": \\[.*\\]", "\"players\": []")),
                take("seat outside the picture", "\"x\": 160", "\"x\": 161"),
                take("seat beyond all pictures", "\"x\": 160", "\"x\": 2147483647"),
                take("label with control characters", "\"Jon\"", "\"Jon\\\\u001b[2J\\\\n\""),
                take("path that leaves the folder", "\"clip.mkv\"", "\"../clip.mkv\""),
                take("path from the root", "\"clip.mkv\"", "\"/etc/passwd\""),
                take("path with a NUL", "\"clip.mkv\"", "\"clip\\\\u0000.mkv\""),
                Named.of("link that leaves the folder", folder -> {
                    Path outside = folder.resolveSibling(BEATS);
                    Files.move(folder.resolve(BEATS), outside);
                    Files.createSymbolicLink(folder.resolve(BEATS), outside);
                }));
    }

    static Stream<Named<Harm>> badParts() throws IOException {
        return Stream.of(
                part("part cut off", REFUSED.resolve("cut-off.musicxml")),
                part("part of another schema", REFUSED.resolve("other-schema.musicxml")),
                part("part with a negative duration", REFUSED.resolve("negative-duration.musicxml")),
                part("part without divisions", REFUSED.resolve("no-divisions.musicxml")),
                part("part with overlapping notes", REFUSED.resolve("overlapping-voice.musicxml")),
                archive("archive with a path outside", "../part.musicxml", new byte[0]),
                archive("archive packed 1000 to 1", "part.musicxml", new byte[80 << 20]),
                archive("archive whose score is none", "part.musicxml", new byte[] {'P', 'K'}),
                Named.of("bow text over the part that is none", folder -> {
                    Files.writeString(folder.resolve("over.bowing.txt"), "1: \u001b[2J\n");
                    String over = "{\"file\": \"" + PART + "\", \"over\": \"over.bowing.txt\"}";
                    Files.writeString(folder.resolve(TAKE), TinyTake.JSON.replace("\"" + PART + "\"", over));
                }),
                text("empty part", PART, ""),
                text("part that is no bow text", PART, "\u0000\u001b[2J\n"),
                text("part with huge numbers", PART, "metre 3/4\n1-999999999: d99999999x99999999\n"),
                part("part with an external entity", score("<!ENTITY x SYSTEM \"file:///etc/passwd\">")),
                part("part with an entity bomb", bomb()),
                part("part that is no XML", "bowing"),
                text("empty beats", BEATS, ""),
                text("beats with NaN", BEATS, TinyTake.BEATS.replace("1.5", "NaN")),
                text("beats with 1e999", BEATS, TinyTake.BEATS.replace("1.5", "1e999")),
                text("beats out of order", BEATS, TinyTake.BEATS.replace("1.5", "0.7")),
                text("beats with an open quote", BEATS, TinyTake.BEATS.replace("1.5", "\"1.5")),
                Named.of("beats that are a picture", folder -> png(folder.resolve(BEATS))));
    }

    static Stream<Named<Harm>> badClips() {
        return Stream.of(
                Named.of("no video", folder -> Files.delete(folder.resolve(CLIP))),
                text("empty video", CLIP, ""),
                text("video that is text", CLIP, "down up down up\n".repeat(99)),
                text("video that is a playlist", CLIP, "#EXTM3U\n#EXTINF:1,\nfile:///etc/passwd\n"),
                Named.of("video that is a picture", folder -> png(folder.resolve(CLIP))),
                cut("video cut to 100 bytes", CLIP, 100));
    }

    private void assertRefused(Shell shell, int... codes) {
        assertAll(
                () -> assertTrue(
                        Arrays.stream(codes).anyMatch(c -> c == shell.code()), shell.code() + ": " + shell.err()),
                () -> assertEquals("", shell.out()),
                () -> assertEquals(1, shell.errLines().size(), shell.err()),
                () -> assertFalse(shell.err().isBlank()),
                () -> assertTrue(shell.err().strip().chars().noneMatch(Character::isISOControl), shell.err()),
                () -> assertFalse(
                        shell.err().contains("Exception") || shell.err().contains("\tat "), shell.err()),
                () -> assertTrue(shell.err().length() < 600, shell.err()),
                () -> assertEquals(List.of(), left()));
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(
                            p -> p.endsWith("out") || p.getFileName().toString().startsWith("."))
                    .toList();
        }
    }

    private Shell analyse() {
        return Shell.run("analyse", folder.resolve(TAKE), "--show-names", "--out", folder.resolve("out"));
    }

    private Shell strokes(String player) {
        return Shell.run("strokes", folder.resolve(CLIP), "--player", player, "--out", folder.resolve("out"));
    }

    @ParameterizedTest
    @MethodSource({"badTakes", "badParts", "badClips"})
    void aTakeThatIsNotValidIsRefusedInOneSentence(Harm harm) throws Exception {
        harm.to(folder);
        assertRefused(analyse(), INPUT);
    }

    @ParameterizedTest
    @MethodSource("badClips")
    void aVideoThatIsNoneIsRefusedInOneSentence(Harm harm) throws Exception {
        harm.to(folder);
        assertRefused(strokes("Ida:0,0,160,160:violin:camera"), INPUT);
    }

    @Test
    void aClipCutBeforeItsFirstFrameIsRefused() throws Exception {
        byte[] whole = Files.readAllBytes(folder.resolve(CLIP));
        Files.write(folder.resolve(CLIP), Arrays.copyOf(whole, firstCluster(whole)));
        assertRefused(analyse(), INPUT, NOTHING_READ);
        assertRefused(strokes("Ida:0,0,160,160:violin:camera"), INPUT, NOTHING_READ);
    }

    /** Where the frames begin: a Matroska cluster's identifier is 1F 43 B6 75 (RFC 9559, section 5.1.3). */
    private static int firstCluster(byte[] matroska) {
        byte[] id = {0x1f, 0x43, (byte) 0xb6, 0x75};
        for (int i = 0; i + id.length <= matroska.length; i++) {
            if (Arrays.equals(id, Arrays.copyOfRange(matroska, i, i + id.length))) {
                return i;
            }
        }
        throw new AssertionError("the clip holds no cluster");
    }

    @Test
    void aBlackClipShowsNobody() throws Exception {
        TinyTake.writeBlackClip(folder.resolve(CLIP));
        assertRefused(analyse(), NOTHING_READ);
        assertRefused(strokes("Ida:0,0,160,160:violin:camera"), NOTHING_READ);
    }

    @Test
    void aNameThatTurnsTheTextIsQuotedHarmlessly() throws Exception {
        Shell shell = strokes("\u202eadI:200,0,160,160:violin:camera");
        assertRefused(shell, INPUT);
        assertTrue(shell.err().contains("?adI"), shell.err());
    }

    @Test
    void aSeatOutsideThePictureIsRefusedWithItsPlaceInTheTake() throws Exception {
        Files.writeString(folder.resolve(TAKE), TinyTake.JSON.replace("\"x\": 160", "\"x\": 161"));
        Shell shell = analyse();
        assertRefused(shell, INPUT);
        assertTrue(shell.err().contains(TAKE + ": players[1].seat: "), shell.err());
    }

    @Test
    void aLabelOfHtmlIsTextInTheReport() throws Exception {
        String label = "<script>alert('a')</script> & \"Jon\"";
        Files.writeString(
                folder.resolve(TAKE), TinyTake.JSON.replace("\"Jon\"", "\"" + label.replace("\"", "\\\"") + "\""));
        Shell shell = analyse();
        assertEquals(0, shell.code(), shell.err());
        String html = Files.readString(folder.resolve("out/report.html"));
        assertFalse(html.contains("<script>alert"), "the label became a script");
        assertTrue(Jsoup.parse(html).text().contains(label), "the label is not shown as it is");
    }
}
