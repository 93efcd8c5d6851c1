package hornbook.catalogue.identify;

/**
 * A look at a horn whose model is sure.
 *
 * @param horn its id, so that it can be left out when that horn is asked about
 */
record Taught(String horn, Seen seen) {}
