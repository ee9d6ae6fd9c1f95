package tuttarco.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import tuttarco.chart.BowMotion;
import tuttarco.chart.Chart;
import tuttarco.chart.ChartFiles;
import tuttarco.seats.Player;

/** {@code charts/KEY.png} and {@code charts/KEY.svg} of every chart; the players' are bow-01, bow-02 in section order. */
public final class Charts implements Output {
    @Override
    public String name() {
        return "charts";
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        Path charts = Files.createDirectories(folder.resolve(name()));
        for (Chart chart : TakeCharts.ofSection(take)) {
            write(chart, charts);
        }
        Optional<Chart> lags = TakeCharts.lagByPlayer(take);
        if (lags.isPresent()) {
            write(lags.get(), charts);
        }
        for (Player player : take.comparison().players()) {
            Optional<BowMotion> motion = TakeCharts.ofPlayer(take, player);
            if (motion.isPresent()) {
                write(motion.get(), charts);
            }
        }
    }

    static void write(Chart chart, Path folder) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(folder.resolve(chart.key() + ".png")))) {
            ChartFiles.writePng(chart, out);
        }
        Files.writeString(folder.resolve(chart.key() + ".svg"), ChartFiles.svgFile(chart));
    }
}
