package hornbook.viewer.cli;

import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Work is planned. */
@Command(
        name = "plan",
        header = "Plans work on a job: what its estimate begins from. A count of 0 takes a task off.",
        footer = "hornbook job plan j-0243 task-teardown task-pad-fit:24")
final class JobPlan extends OnJob {
    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "TASK[:COUNT]",
            description = "A task, by name or id, and how many.")
    List<String> tasks = List.of();

    JobPlan(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (TaskCount task : TaskNamed.all(tasks, workshop.catalogue())) {
            if (task.count() < 0) {
                throw new BadInput(task.count() + " of " + task.task()
                        + " is fewer than none: write how many are planned, or 0 for none");
            }
            counts.put(task.task(), task.count());
        }
        return workshop.plannedWork().plan(job, counts);
    }
}
