package hornbook.shared.job;

import java.time.LocalDate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A job that is not handed back, in short.
 *
 * @param minutes clocked so far, all tasks together
 * @param lastTask what was clocked last, to go on with
 */
public record OnBench(
        String id,
        String horn,
        String model,
        String instrument,
        String serial,
        @Nullable String soldAs,
        String kind,
        String status,
        String complaint,
        LocalDate tookIn,
        @Nullable LocalDate promised,
        @Nullable Integer quotedMin,
        int minutes,
        @Nullable String lastTask,
        Standing standing) {

    /** The same with model and seller's name as a person calls them. */
    public OnBench calling(UnaryOperator<String> titles) {
        return new OnBench(
                id,
                horn,
                titles.apply(model),
                instrument,
                serial,
                soldAs == null ? null : titles.apply(soldAs),
                kind,
                status,
                complaint,
                tookIn,
                promised,
                quotedMin,
                minutes,
                lastTask,
                standing);
    }
}
