package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * What is usually found, for spotting slips and surprises, not for passing or failing a horn.
 *
 * @param text as the trade says it
 * @param low where it is a number
 * @param high where it is a number
 */
public record Usual(
        String text, @Nullable Double low, @Nullable Double high) {

    static Usual from(Fields in) {
        return new Usual(in.text("text"), in.optionalNumber("low"), in.optionalNumber("high"));
    }
}
