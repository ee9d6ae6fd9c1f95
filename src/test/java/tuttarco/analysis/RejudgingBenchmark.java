package tuttarco.analysis;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tuttarco.corrections.Correction;
import tuttarco.corrections.CorrectionLog;
import tuttarco.corrections.LogEntry;
import tuttarco.strokes.StrokeKind;

/**
 * How long it takes to judge a section anew after a correction: {@code mvn test -Pbenchmark -Dtest=RejudgingBenchmark}.
 * Nothing is asserted about speed.
 */
@Tag("benchmark")
class RejudgingBenchmark {
    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    /** Twelve players over five minutes at 120 beats a minute, a stroke a beat; one correction more each time. */
    @Test
    void twelvePlayersOverFiveMinutes() throws Exception {
        List<String> labels =
                IntStream.rangeClosed(1, 12).mapToObj(i -> "Player " + i).toList();
        Uncorrected read = ReadByHand.take(Path.of("."), labels, 600, 0.5);
        Analysis analysis = Analysis.standard("benchmark");
        List<LogEntry> entries = new ArrayList<>();
        for (int run = 0; run < 20; run++) {
            Correction correction = new Correction.StrokeSet("Player 2", 10 * run, 10 * run + 0.5, StrokeKind.UP);
            entries.add(new LogEntry.Done(new UUID(0, run), Instant.EPOCH, correction, Map.of()));
            long cpuNs = PROCESS.getProcessCpuTime();
            long wallNs = System.nanoTime();
            analysis.judged(read, new CorrectionLog(entries, List.of(), Optional.empty()));
            System.out.printf(
                    Locale.ROOT,
                    "judged anew, time %d: %.2f s of processor time, %.2f s by the clock%n",
                    run + 1,
                    (PROCESS.getProcessCpuTime() - cpuNs) / 1e9,
                    (System.nanoTime() - wallNs) / 1e9);
        }
    }
}
