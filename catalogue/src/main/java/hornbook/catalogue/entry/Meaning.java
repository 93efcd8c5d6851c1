package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * One thing a term means.
 *
 * @param same id of an entry, `trait=value`, a word of the trade, or a standard designation
 * @param kind synonym, spelling, misspelling, abbreviation, plural, or a language
 */
public record Meaning(String same, String kind, @Nullable String note) {

    static Meaning from(Fields in) {
        return new Meaning(in.text("same"), in.text("kind"), in.optionalText("note"));
    }
}
