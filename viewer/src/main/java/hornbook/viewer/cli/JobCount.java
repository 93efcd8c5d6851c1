package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What was clocked is put right. */
@Command(
        name = "count",
        header = "Puts right how many cups, keys, screws a clocked task had, and its minutes.",
        footer = "hornbook job count j-0237 task-teardown 2")
final class JobCount extends OnJob {
    @Parameters(index = "1", paramLabel = "TASK", description = "What was worked on.")
    String task = "";

    @Parameters(index = "2", paramLabel = "N", description = "How many.")
    int count;

    @Option(names = "--minutes", paramLabel = "MIN", description = "All its minutes so far; as clocked if left out.")
    @Nullable
    Integer minutes;

    JobCount(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        int clocked = workshop.jobs().job(job).stream()
                .flatMap(card -> card.tasks().stream())
                .filter(line -> line.task().equals(task))
                .mapToInt(JobCard.TaskLine::minutes)
                .sum();
        return workshop.clocks().putRight(job, task, count, minutes == null ? clocked : minutes);
    }
}
