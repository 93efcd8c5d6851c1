package hornbook.viewer.cli;

import hornbook.shared.job.JobChange;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** It is agreed otherwise with the owner. */
@Command(
        name = "change",
        header = "Quotes, promises, lets wait, goes on with or declines a job.",
        footer = "hornbook job change j-0243 --quoted 1700 --promised 2026-11-09")
final class JobAgree extends OnJob {
    @Option(names = "--status", paramLabel = "S", description = "open, waiting or declined.")
    @Nullable
    String status;

    @Option(names = "--quoted", paramLabel = "MIN", description = "Minutes told to the owner.")
    @Nullable
    Integer quoted;

    @Option(names = "--promised", paramLabel = "DATE", converter = Day.class, description = "The day promised.")
    @Nullable
    LocalDate promised;

    @Option(names = "--note", paramLabel = "WORDS", description = "A note, in place of the old one.")
    @Nullable
    String note;

    JobAgree(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        JobStatus wanted = status == null
                ? null
                : OneOf.of(JobStatus.OPEN, JobStatus.WAITING, JobStatus.DECLINED)
                        .read(status, "is no status that can be agreed; “hornbook job close” ends a job");
        return workshop.jobBook().change(job, new JobChange(wanted, promised, quoted, note));
    }
}
