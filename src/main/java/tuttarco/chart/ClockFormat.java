package tuttarco.chart;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Writes seconds as minutes and seconds: {@code 0:42}. */
final class ClockFormat extends NumberFormat {
    @Override
    public StringBuffer format(double timeS, StringBuffer out, FieldPosition position) {
        return format(Math.round(timeS), out, position);
    }

    @Override
    public StringBuffer format(long timeS, StringBuffer out, FieldPosition position) {
        return out.append(timeS / 60).append(timeS % 60 < 10 ? ":0" : ":").append(timeS % 60);
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        throw new UnsupportedOperationException("axes are only written");
    }
}
