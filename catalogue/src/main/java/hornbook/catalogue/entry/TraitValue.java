package hornbook.catalogue.entry;

/**
 * One thing a trait can be.
 *
 * @param id as written in files and commands
 * @param description in plain words
 */
public record TraitValue(String id, String description) {

    static TraitValue from(Fields in) {
        return new TraitValue(in.text("id"), in.text("description"));
    }
}
