package hornbook.catalogue.entry;

/**
 * A place in an entry that names another entry, or a trait with a value of it.
 *
 * @param field where it stands
 * @param id what it names
 * @param value the value of the trait, or empty where only the id is named
 */
record Link(String field, String id, String value) {
    Link(String field, String id) {
        this(field, id, "");
    }
}
