package tuttarco.cli;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import tuttarco.bow.Instrument;

/** Reads an instrument by its word. */
final class InstrumentOption implements ITypeConverter<Instrument> {
    @Override
    public Instrument convert(String value) {
        return Instrument.ofWord(value.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new TypeConversionException("'" + value + "' is no instrument; choose from "
                        + Arrays.stream(Instrument.values())
                                .map(Instrument::word)
                                .collect(Collectors.joining(", "))));
    }
}
