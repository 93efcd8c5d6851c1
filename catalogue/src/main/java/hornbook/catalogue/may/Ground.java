package hornbook.catalogue.may;

import org.jspecify.annotations.Nullable;

/**
 * One entry that holds.
 *
 * @param entry id of the use-on entry
 * @param assumed true where the trait was not looked at and this is the worst it can be
 * @param instead what to do, or use, instead
 * @param see id of the quirk that says more
 */
public record Ground(
        String entry,
        String trait,
        String value,
        Allowed verdict,
        String why,
        @Nullable String instead,
        @Nullable String see,
        boolean assumed,
        String source) {}
