package hornbook.shared.job;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A horn with its jobs, newest first. */
public record HornCard(
        String id,
        String model,
        @Nullable String make,
        String instrument,
        String serial,
        @Nullable String soldAs,
        @Nullable Integer yearAbout,
        String identifiedBy,
        String sureness,
        @Nullable LocalDate firstSeen,
        String note,
        List<PastJob> jobs) {

    /** A job in a line. */
    public record PastJob(
            String id,
            LocalDate tookIn,
            String kind,
            String status,
            String complaint,
            @Nullable String went) {}
}
