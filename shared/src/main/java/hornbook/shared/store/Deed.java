package hornbook.shared.store;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a person did: one transaction with its feed lines.
 *
 * @param undoOf the deed that this one takes back
 * @param undoneBy the deed that took this one back
 */
public record Deed(
        long number,
        String title,
        LocalDate day,
        @Nullable Long undoOf,
        @Nullable Long undoneBy) {}
