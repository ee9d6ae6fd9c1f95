package tuttarco.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import tuttarco.score.Practice;

/** Reads a bowing practice by its word. */
final class PracticeOption implements ITypeConverter<Practice> {
    @Override
    public Practice convert(String value) {
        return Practice.ofWord(value)
                .orElseThrow(
                        () -> new TypeConversionException("'" + value + "' is no practice; choose violins or viols"));
    }
}
