package hornbook.shared.job;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What changes about a job; what is null stays.
 *
 * @param quotedMin minutes told to the owner
 */
public record JobChange(
        @Nullable JobStatus status,
        @Nullable LocalDate promised,
        @Nullable Integer quotedMin,
        @Nullable String note) {

    public JobChange {
        TakeIn.quotable(quotedMin);
    }

    /** It waits, goes on, or is declined. */
    public static JobChange to(JobStatus status) {
        return new JobChange(status, null, null, null);
    }

    String title() {
        return quotedMin != null ? "quote " + quotedMin + " min for" : promised != null ? "promise" : "change";
    }

    Job made(Job on) {
        return on.agreed(
                status == null ? on.status() : status,
                promised == null ? on.promised() : promised,
                quotedMin == null ? on.quotedMin() : quotedMin,
                note == null ? on.note() : note);
    }
}
