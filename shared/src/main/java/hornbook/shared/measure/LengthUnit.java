package hornbook.shared.measure;

import java.util.Locale;
import java.util.Optional;

/** A unit in which a length is written; each is a whole number of nanometres. */
public enum LengthUnit {
    MILLIMETRE(1_000_000),
    CENTIMETRE(10_000_000),
    MICROMETRE(1_000),
    /** 25.4 mm exactly (ISO 31-1, the inch of 1959). */
    INCH(25_400_000),
    /** A thousandth of an inch. */
    THOU(25_400);

    private final long nanometres;

    LengthUnit(long nanometres) {
        this.nanometres = nanometres;
    }

    /** How many nanometres one of these is. */
    public long nanometres() {
        return nanometres;
    }

    /** The unit a word or sign stands for; a trailing full stop and case are ignored. Empty if it is none of ours. */
    public static Optional<LengthUnit> named(String word) {
        return Optional.ofNullable(
                switch (word.toLowerCase(Locale.ROOT).replaceFirst("\\.$", "")) {
                    case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> MILLIMETRE;
                    case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> CENTIMETRE;
                    case "um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers" ->
                        MICROMETRE;
                    case "\"", "''", "in", "inch", "inches" -> INCH;
                    case "thou", "thous" -> THOU;
                    default -> null;
                });
    }
}
