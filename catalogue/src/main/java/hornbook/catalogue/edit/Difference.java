package hornbook.catalogue.edit;

import org.jspecify.annotations.Nullable;

/**
 * What would be otherwise.
 *
 * @param field where, as problems name it, but lines of a list by what they are called
 * @param before what it says now; missing where it says nothing
 * @param after what it would say; missing where it would say nothing
 */
public record Difference(
        String field, @Nullable String before, @Nullable String after) {}
