package hornbook.catalogue.estimate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A list of work on a horn.
 *
 * @param model id of its model, null where not known or not listed
 * @param instrument as a value of {@code family-member}; null takes the model's
 * @param who initials of who works; null takes who clocked most
 */
public record EstimateQuestion(
        List<TaskCount> tasks,
        @Nullable String model,
        @Nullable String instrument,
        @Nullable String who) {

    /** A task, and how many cups, keys, screws: they go well or badly together. */
    public record TaskCount(String task, int count) {}
}
