package tuttarco.chart;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;

/** Writes names, such as the printed numbers of bars, where an axis counts from 0. */
final class NamesFormat extends NumberFormat {
    private static final long serialVersionUID = 1L;

    private final transient List<String> names;

    NamesFormat(List<String> names) {
        this.names = names;
    }

    @Override
    public StringBuffer format(double value, StringBuffer out, FieldPosition position) {
        return format(Math.round(value), out, position);
    }

    @Override
    public StringBuffer format(long value, StringBuffer out, FieldPosition position) {
        return value >= 0 && value < names.size() ? out.append(names.get((int) value)) : out;
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        throw new UnsupportedOperationException("axes are only written");
    }
}
