package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * From a year to a year, both included.
 *
 * @param from missing where not known
 * @param to missing where still made or not known
 */
public record Years(@Nullable Integer from, @Nullable Integer to) {

    static Years from(Fields in) {
        return new Years(in.optionalWhole("from"), in.optionalWhole("to"));
    }
}
