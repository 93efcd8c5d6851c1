package hornbook.viewer.knowledge;

/**
 * An entry in the list.
 *
 * @param own whether it is the shop's own
 */
record Line(String id, String title, boolean own) {}
