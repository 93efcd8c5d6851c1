package hornbook.catalogue.edit;

/**
 * An own file that was set aside, as it can be mended.
 *
 * @param file path below the folder of entries
 * @param draft what it says
 */
public record Mend(String file, Draft draft) {}
