package hornbook.catalogue.identify;

import org.jspecify.annotations.Nullable;

/**
 * What one answer weighs.
 *
 * @param answer as written
 * @param trait id; null for serial and name
 * @param logs natural logarithm of the likelihood by entry, unlisted last, tempered
 */
record Piece(String answer, @Nullable String trait, double[] logs) {}
