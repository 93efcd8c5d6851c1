package hornbook.viewer.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day as ISO 8601 writes it. */
final class Day implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException notOne) {
            throw new TypeConversionException("\"" + text + "\" is not a day; write it as in 2026-09-30");
        }
    }
}
