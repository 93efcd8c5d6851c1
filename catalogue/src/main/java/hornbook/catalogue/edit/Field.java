package hornbook.catalogue.edit;

import java.util.Locale;

/**
 * One thing that a kind of entry says.
 *
 * @param name as written in the file
 * @param about what is to be filled in; may be empty
 * @param needed whether an entry cannot do without it
 */
public record Field(String name, String about, boolean needed, Shape shape) {
    /** As a person reads it: {@code Other names}. */
    public String title() {
        return title(name);
    }

    /** A name as written in a file, as a person reads it. */
    public static String title(String name) {
        String words = name.replace('_', ' ');
        return words.isEmpty() ? "(none)" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
