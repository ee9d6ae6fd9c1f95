package tuttarco.chart;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;
import tuttarco.compare.BarAgreement;

/** Writes a bar's printed number where an axis counts bars from 0. */
final class BarFormat extends NumberFormat {
    private final transient List<BarAgreement> bars;

    BarFormat(List<BarAgreement> bars) {
        this.bars = bars;
    }

    @Override
    public StringBuffer format(double value, StringBuffer out, FieldPosition position) {
        return format(Math.round(value), out, position);
    }

    @Override
    public StringBuffer format(long value, StringBuffer out, FieldPosition position) {
        return value >= 0 && value < bars.size()
                ? out.append(bars.get((int) value).bar())
                : out;
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        throw new UnsupportedOperationException("axes are only written");
    }
}
