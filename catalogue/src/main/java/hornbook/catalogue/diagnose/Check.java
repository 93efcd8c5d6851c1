package hornbook.catalogue.diagnose;

import org.jspecify.annotations.Nullable;

/**
 * A check that may be made.
 *
 * @param chance that it finds the cause
 * @param minutes bench minutes, without the set-up
 * @param setUp what must be ready first; checks of the same set-up share it
 * @param setUpMinutes to make it ready, once
 */
record Check(
        String id, double chance, double minutes, @Nullable String setUp, double setUpMinutes) {}
