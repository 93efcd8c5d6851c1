package hornbook.catalogue.edit;

/**
 * Something that can be filled in.
 *
 * @param text what the field then holds
 * @param title what a person calls it
 */
public record Choice(String text, String title) {}
