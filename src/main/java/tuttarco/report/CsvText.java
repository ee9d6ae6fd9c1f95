package tuttarco.report;

import java.io.IOException;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** How all CSV files are written: commas, line feeds, UTF-8, a decimal point, a heading line. */
final class CsvText {
    private static final String FORMULA_STARTS = "=+-@\t";

    private CsvText() {}

    static CSVPrinter printer(Appendable out, String... headings) throws IOException {
        return CSVFormat.DEFAULT
                .builder()
                .setRecordSeparator('\n')
                .setHeader(headings)
                .get()
                .print(out);
    }

    /** A label that a spreadsheet takes for text: one that begins like a formula gets an apostrophe before it. */
    static String label(String label) {
        return !label.isEmpty() && FORMULA_STARTS.indexOf(label.charAt(0)) >= 0 ? "'" + label : label;
    }

    /** Seconds to a tenth of a millisecond. */
    static String seconds(double timeS) {
        return String.format(Locale.ROOT, "%.4f", timeS);
    }

    /** A probability to two figures that count. */
    static String probability(double p) {
        return String.format(Locale.ROOT, "%.2g", p);
    }

    /** A share, or another small number, to three decimals. */
    static String share(double share) {
        return String.format(Locale.ROOT, "%.3f", share);
    }
}
