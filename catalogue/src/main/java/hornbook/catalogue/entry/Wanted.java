package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * A tool, part or supply that a quirk asks for.
 *
 * @param note which of it, where that matters
 */
public record Wanted(String id, @Nullable String note) {

    static Wanted from(Fields in) {
        return new Wanted(in.text("id"), in.optionalText("note"));
    }
}
