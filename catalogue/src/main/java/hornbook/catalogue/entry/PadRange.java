package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * Usual pad sizes of a cup, mm.
 *
 */
public record PadRange(double low, double high, @Nullable String note) {

    static PadRange from(Fields in) {
        return new PadRange(in.number("low"), in.number("high"), in.optionalText("note"));
    }
}
