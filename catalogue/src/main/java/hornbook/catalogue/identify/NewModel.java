package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Years;
import org.jspecify.annotations.Nullable;

/**
 * A model that no entry describes yet, as its first horn shows it.
 *
 * @param make id of a make, or with {@code makeIsNew} a name that no entry has yet
 * @param pattern the maker's name for it, or the shop's where the maker's is not known
 * @param years when it was made; null takes the horn's own year
 */
public record NewModel(
        String make,
        boolean makeIsNew,
        String pattern,
        @Nullable Years years) {}
