package tuttarco.report;

import java.io.IOException;
import java.nio.file.Path;

/** {@code report.html}: one page that needs no other file, no script and no network. */
public final class ReportPage implements Output {
    @Override
    public String name() {
        return Outputs.PAGE;
    }

    @Override
    public void write(AnalysedTake take, Path folder) throws IOException {
        Pages.write("report.jte", new ReportWords(take).model(), folder.resolve(name()));
    }
}
