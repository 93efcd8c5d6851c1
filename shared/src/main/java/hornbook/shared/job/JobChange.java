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

    /** It waits, goes on, or is declined. */
    public static JobChange to(JobStatus status) {
        return new JobChange(status, null, null, null);
    }

    String title() {
        return quotedMin != null ? "quote " + quotedMin + " min for" : promised != null ? "promise" : "change";
    }

    Job made(Job on) {
        return new Job(
                on.id(),
                on.horn(),
                on.kind(),
                on.tookIn(),
                promised == null ? on.promised() : promised,
                on.done(),
                status == null ? on.status() : status,
                on.complaint(),
                on.quirksMet(),
                on.went(),
                on.wentNote(),
                quotedMin == null ? on.quotedMin() : quotedMin,
                on.minutesTotal(),
                on.ownerCode(),
                note == null ? on.note() : note);
    }
}
