package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.score.Bar;
import tuttarco.score.Metre;
import tuttarco.score.Part;

class WebVttTest {
    /**
     * WebVTT (W3C), section 4: the signature; then blocks after a blank line, each a line of timings {@code hh:mm:ss.ttt} and
     * lines of text in which {@code &} begins a character reference and {@code <} a tag, of which there is none.
     */
    private static final Pattern SYNTAX = Pattern.compile("WEBVTT\n"
            + "(\n\\d{2,}:[0-5]\\d:[0-5]\\d\\.\\d{3} --> \\d{2,}:[0-5]\\d:[0-5]\\d\\.\\d{3}\n"
            + "(?:(?!.*-->)(?:[^&<\r\n]|&(?:amp|lt|gt);)+\n)+)*");

    @TempDir
    Path folder;

    private String written(WebVtt.Cue... cues) throws Exception {
        Path file = folder.resolve("some.vtt");
        WebVtt.write(List.of(cues), file);
        String text = Files.readString(file);
        assertTrue(SYNTAX.matcher(text).matches(), text);
        return text;
    }

    private static WebVtt.Cue cue(double fromS, double toS, String... lines) {
        return new WebVtt.Cue(fromS, toS, List.of(lines));
    }

    @Test
    void timesAreWrittenAsTheStandardSaysForHoursToo() throws Exception {
        assertEquals(
                "WEBVTT\n\n00:00:01.250 --> 00:01:02.000\nHere\n\n100:00:00.000 --> 100:00:00.001\nStill\n",
                written(cue(360_000, 360_000.001, "Still"), cue(1.25, 61.9996, "Here")));
    }

    @Test
    void nothingIsAFileToo() throws Exception {
        assertEquals("WEBVTT\n", written());
    }

    @Test
    void whatHoldsOthersComesBeforeThem() throws Exception {
        String text = written(cue(2, 3, "inner"), cue(2, 4, "outer"), cue(1, 5, "all"));
        assertTrue(text.indexOf("all") < text.indexOf("outer") && text.indexOf("outer") < text.indexOf("inner"), text);
    }

    @Test
    void whatLiesBeforeTheClipIsCutOff() throws Exception {
        assertEquals(
                "WEBVTT\n\n00:00:00.000 --> 00:00:00.500\npart\n",
                written(cue(-2, -1, "none"), cue(-1, 0.5, "part"), cue(3, 3.0001, "too short")));
    }

    @Test
    void textIsTextWhateverItHolds() throws Exception {
        assertTrue(written(cue(0, 1, "<b>A & B</b> --> C\n\u202Eend"))
                .endsWith("\n&lt;b&gt;A &amp; B&lt;/b&gt; --&gt; C??end\n"));
    }

    @Test
    void aCueLastsAndSaysSomething() {
        assertThrows(IllegalArgumentException.class, () -> cue(1, 1, "a"));
        assertThrows(IllegalArgumentException.class, () -> cue(Double.NaN, 1, "a"));
        assertThrows(IllegalArgumentException.class, () -> cue(0, 1));
        assertThrows(IllegalArgumentException.class, () -> cue(0, 1, "a", " "));
    }

    /** What another program makes of a file: FFmpeg's reader of WebVTT. */
    private static List<String> readByFfmpeg(Path file) {
        List<String> cues = new ArrayList<>();
        try (AVFormatContext context = new AVFormatContext(null);
                AVPacket packet = avcodec.av_packet_alloc()) {
            AVInputFormat anyFormat = null;
            AVDictionary noOptions = null;
            assertEquals(0, avformat.avformat_open_input(context, file.toString(), anyFormat, noOptions));
            assertEquals("webvtt", context.iformat().name().getString());
            while (avformat.av_read_frame(context, packet) >= 0) {
                byte[] text = new byte[packet.size()];
                packet.data().get(text);
                cues.add(packet.pts() + "+" + packet.duration() + " " + new String(text, StandardCharsets.UTF_8));
                avcodec.av_packet_unref(packet);
            }
            avformat.avformat_close_input(context);
        }
        return cues;
    }

    @Test
    void anotherReaderReadsTheSame() throws Exception {
        written(cue(1.25, 2, "Desk 1: turned", "Bar 3"), cue(0.5, 4, "B & \u00e9"));
        assertEquals(
                List.of("500+3500 B &amp; \u00e9", "1250+750 Desk 1: turned\nBar 3"),
                readByFfmpeg(folder.resolve("some.vtt")));
    }

    @Nested
    class OfSpots extends OutputContract {
        @Override
        Output output() {
            return new Captions();
        }

        @Test
        void aSpotIsSaidForAsLongAsItLasts() throws Exception {
            String text = written(Fixtures.unified());
            ReportModel.Spot first =
                    new SpotWords(Fixtures.unified().comparison()).inOrder().get(0);
            assertTrue(text.contains("\n" + first.players().get(0)), text);
            assertTrue(text.contains(first.what() + "\n" + first.where() + " (" + first.sure() + ")\n"), text);
        }

        @ParameterizedTest
        @MethodSource("takes")
        void isWebVtt(AnalysedTake take) throws Exception {
            assertTrue(SYNTAX.matcher(written(take)).matches());
        }
    }

    @Nested
    class OfBars extends OutputContract {
        @Override
        Output output() {
            return new Chapters();
        }

        @ParameterizedTest
        @MethodSource("takes")
        void isWebVtt(AnalysedTake take) throws Exception {
            assertTrue(SYNTAX.matcher(written(take)).matches());
        }

        private static Bar bar(String number, Optional<String> mark) {
            return new Bar(number, new Metre(2, 4), 1, 2, mark);
        }

        private static List<Beat> beats(double startS, String... bars) {
            List<Beat> beats = new ArrayList<>();
            for (String bar : bars) {
                beats.add(new Beat(bar, 1, startS + beats.size()));
                beats.add(new Beat(bar, 2, startS + beats.size()));
            }
            return beats;
        }

        /** Played from the beginning, then again from the last bar but one; a mark stands in bars 2 and 4. */
        @Test
        void barsLieInTheirRehearsalMarksAndTheseEndWhereThePlayingStopped() {
            Part part = new Part(
                    "Viola",
                    List.of(
                            bar("1", Optional.empty()),
                            bar("2", Optional.of("A")),
                            bar("3", Optional.empty()),
                            bar("4", Optional.of("B"))),
                    List.of());
            BeatMap beats = BeatMap.ofStretches(List.of(beats(0, "1", "2", "3", "4"), beats(20, "3", "4")));
            assertEquals(
                    List.of(
                            cue(2, 6, "Rehearsal mark A"),
                            cue(6, 8, "Rehearsal mark B"),
                            cue(22, 24, "Rehearsal mark B"),
                            cue(0, 2, "Bar 1"),
                            cue(2, 4, "Bar 2"),
                            cue(4, 6, "Bar 3"),
                            cue(6, 8, "Bar 4"),
                            cue(20, 22, "Bar 3"),
                            cue(22, 24, "Bar 4")),
                    Chapters.of(beats, Optional.of(part)));
        }

        @Test
        void strokesOfTheLeaderAreNoChapters() {
            BeatMap strokes = new BeatMap(List.of(Beat.ofLeader(1, 0.5), Beat.ofLeader(2, 1)));
            assertEquals(List.of(), Chapters.of(strokes, Optional.empty()));
        }
    }
}
