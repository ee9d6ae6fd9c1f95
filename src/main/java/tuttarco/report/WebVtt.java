package tuttarco.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import tuttarco.files.Plain;

/** Text that appears with a video, in WebVTT (W3C, WebVTT: The Web Video Text Tracks Format, 2019). */
final class WebVtt {
    private static final int MS_IN_S = 1000;

    private WebVtt() {}

    /**
     * What is shown for some time. The text may hold anything; each of its lines becomes one of the cue's.
     *
     * @param fromS seconds of the clip
     */
    record Cue(double fromS, double toS, List<String> lines) {
        Cue {
            lines = List.copyOf(lines);
            if (!(fromS < toS)) {
                throw new IllegalArgumentException("a cue lasts, not from " + fromS + " to " + toS + " s");
            }
            if (lines.isEmpty() || lines.stream().anyMatch(String::isBlank)) {
                throw new IllegalArgumentException("a cue says something in each line");
            }
        }

        /** The part of it that lies in the clip, which begins at zero; at least a millisecond, or nothing. */
        private Optional<Cue> inClip() {
            double startS = Math.max(0, fromS);
            return ms(startS) < ms(toS) ? Optional.of(new Cue(startS, toS, lines)) : Optional.empty();
        }

        private String written() {
            return stamp(fromS) + " --> " + stamp(toS) + "\n"
                    + lines.stream().map(WebVtt::harmless).collect(Collectors.joining("\n")) + "\n";
        }
    }

    /** Writes a file of cues, those that begin first before others, those that hold others before these; of those alike the first given first. */
    static void write(List<Cue> cues, Path file) throws IOException {
        StringBuilder text = new StringBuilder("WEBVTT\n");
        cues.stream()
                .map(Cue::inClip)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingLong((Cue c) -> ms(c.fromS()))
                        .thenComparing(c -> ms(c.toS()), Comparator.reverseOrder()))
                .forEach(c -> text.append('\n').append(c.written()));
        Files.writeString(file, text);
    }

    /** {@code hh:mm:ss.ttt}. */
    private static String stamp(double timeS) {
        long ms = ms(timeS);
        long s = ms / MS_IN_S;
        return String.format(Locale.ROOT, "%02d:%02d:%02d.%03d", s / 3600, s / 60 % 60, s % 60, ms % MS_IN_S);
    }

    private static long ms(double timeS) {
        return Math.round(timeS * MS_IN_S);
    }

    private static String harmless(String text) {
        return Plain.line(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
