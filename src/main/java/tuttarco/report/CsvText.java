package tuttarco.report;

import java.io.IOException;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** How all CSV files are written: commas, line feeds, UTF-8, a decimal point, a heading line. */
final class CsvText {
    /**
     * Where a spreadsheet would begin to reckon: before what OWASP (CSV Injection) names, their wide forms included, blanks
     * before it not counted; at the beginning, or after what other spreadsheets part cells by.
     */
    private static final Pattern FORMULA =
            Pattern.compile("(?:^|(?<=[;\\t\\r\\n]))(?=[\\s\\p{Z}]*[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20])");

    private CsvText() {}

    static CSVPrinter printer(Appendable out, String... headings) throws IOException {
        return CSVFormat.DEFAULT
                .builder()
                .setRecordSeparator('\n')
                .setHeader(headings)
                .get()
                .print(out);
    }

    /** Somebody's words, or several joined by a semicolon, as text: what begins like a formula gets an apostrophe before it. */
    static String label(String label) {
        return FORMULA.matcher(label).replaceAll("'");
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
