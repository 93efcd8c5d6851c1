package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * One step of taking a model down, as it went on a job.
 *
 * @param step counted from 1
 * @param job the shop's job it comes from
 */
public record TakingDown(
        int step,
        String piece,
        String how,
        @Nullable String reason,
        @Nullable String job) {

    static TakingDown from(Fields in) {
        return new TakingDown(
                in.whole("step"), in.text("piece"), in.text("how"), in.optionalText("reason"), in.optionalText("job"));
    }
}
