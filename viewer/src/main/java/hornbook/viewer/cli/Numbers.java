package hornbook.viewer.cli;

import java.math.BigDecimal;
import picocli.CommandLine.TypeConversionException;

/** Reads the numbers of a line, and says in plain words what is none. */
final class Numbers {
    private Numbers() {}

    static BigDecimal decimal(String text) {
        try {
            return new BigDecimal(text.strip());
        } catch (NumberFormatException notOne) {
            throw new TypeConversionException("“" + text + "” is no number; write it as 42.50");
        }
    }

    static long number(String text) {
        try {
            return Long.parseLong(text.strip());
        } catch (NumberFormatException notOne) {
            throw new TypeConversionException("“" + text + "” is no whole number; write it as 12");
        }
    }

    static int whole(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notOne) {
            throw new TypeConversionException("“" + text + "” is no whole number; write it as 12");
        }
    }
}
