package tuttarco.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import tuttarco.bow.Instrument;
import tuttarco.seats.Facing;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/** Reads a player from {@code NAME:x,y,w,h:INSTRUMENT[:FACING]}; the name may hold colons. */
final class PlayerOption implements ITypeConverter<Player> {
    private static final Pattern FORM =
            Pattern.compile("(?<name>.+):(?<x>\\d{1,6}),(?<y>\\d{1,6}),(?<w>\\d{1,6}),(?<h>\\d{1,6})"
                    + ":(?<instrument>[^:]+)(:(?<facing>[^:]+))?");

    @Override
    public Player convert(String value) {
        Matcher form = FORM.matcher(value);
        if (!form.matches()) {
            throw new TypeConversionException(
                    "'" + value
                            + "' is not NAME:x,y,w,h:INSTRUMENT[:FACING] with whole pixels, as in 'Ida:30,45,390,265:violin:camera'");
        }
        Instrument instrument = new InstrumentOption().convert(form.group("instrument"));
        String word =
                Optional.ofNullable(form.group("facing")).orElse(Facing.AUTO).toLowerCase(Locale.ROOT);
        if (!Facing.words().contains(word)) {
            throw new TypeConversionException(
                    "'" + form.group("facing") + "' is no facing; choose from " + String.join(", ", Facing.words()));
        }
        try {
            SeatBox seat = new SeatBox(number(form, "x"), number(form, "y"), number(form, "w"), number(form, "h"));
            return new Player(form.group("name"), 1, Place.OUTSIDE, instrument, seat, Facing.ofWord(word), false);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("'" + value + "': " + e.getMessage());
        }
    }

    private static int number(Matcher form, String group) {
        return Integer.parseInt(form.group(group));
    }
}
