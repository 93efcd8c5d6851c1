package hornbook.catalogue.hornmap;

import org.jspecify.annotations.Nullable;

/**
 * What is to be known about a reading, before and after it is taken.
 *
 * @param unit of the reading; empty where it is words
 * @param usual range on the instrument, as the trade says it; empty where none is known
 * @param how it is taken
 * @param consent what it does to the horn that needs the owner's yes
 * @param outside whether the value lies outside; false where that cannot be told
 * @param means what such a value suggests; set where it lies outside
 */
public record Usualness(
        String what,
        String title,
        String unit,
        String usual,
        String how,
        @Nullable String consent,
        boolean outside,
        @Nullable String means) {

    /** The question that a value outside raises, in words; what was read is kept all the same. */
    public String question(String value) {
        return value + " " + unit + " is outside the usual " + usual + ": " + means + ". It is written down as read.";
    }
}
