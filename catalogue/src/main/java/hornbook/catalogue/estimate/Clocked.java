package hornbook.catalogue.estimate;

import org.jspecify.annotations.Nullable;

/**
 * What a clock says of one task on one job.
 *
 * @param minutes for the whole count
 * @param make null where not placed
 * @param model null where not placed
 */
record Clocked(
        String job,
        String task,
        String instrument,
        @Nullable String make,
        @Nullable String model,
        String who,
        int count,
        int minutes) {}
