package hornbook.shared.year;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import java.time.LocalDate;

/** The days that are reckoned in, both ends included. */
record Period(LocalDate from, LocalDate to) {
    boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** Whether a job was handed back in it. */
    boolean doneIn(Job job) {
        return job.status() == JobStatus.DONE && job.done() != null && holds(job.done());
    }
}
