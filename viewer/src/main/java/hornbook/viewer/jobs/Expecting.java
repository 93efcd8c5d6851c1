package hornbook.viewer.jobs;

import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.job.JobCard;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The work expected on the job in view, changed task by task; its minutes follow. */
final class Expecting {
    private final Shown<JobsView> shown;
    private final Estimating estimating;
    private final Latest asking;

    Expecting(Work work, Shown<JobsView> shown, Estimating estimating) {
        this.shown = shown;
        this.estimating = estimating;
        this.asking = work.latest();
    }

    /** What such jobs usually have. */
    void usual(JobCard card) {
        asking.ask(
                progress -> estimating.usual(card),
                shown.ends(now -> shown.show(shown.now().expecting(now))));
    }

    /** These as well, once each, where they are not listed yet. */
    void and(JobPage page, List<String> more) {
        Expected before = Objects.requireNonNullElse(shown.now().expected(), Expected.NOTHING);
        List<TaskCount> tasks = new ArrayList<>(before.tasks());
        more.stream().filter(task -> count(task) == 0).forEach(task -> tasks.add(new TaskCount(task, 1)));
        reckon(page, tasks);
    }

    private void reckon(JobPage page, List<TaskCount> tasks) {
        asking.ask(
                progress -> estimating.of(page.card(), tasks),
                shown.ends(now -> shown.show(shown.now().expecting(now))));
    }

    /** One more of a task. */
    void add(String task) {
        change(task, count(task) + 1);
    }

    private int count(String task) {
        Expected before = shown.now().expected();
        return before == null
                ? 0
                : before.tasks().stream()
                        .filter(line -> line.task().equals(task))
                        .mapToInt(TaskCount::count)
                        .sum();
    }

    /** So many of a task are expected; none takes it off the list. */
    void change(String task, int count) {
        JobPage page = shown.now().page();
        Expected before = shown.now().expected();
        if (page != null && before != null) {
            reckon(page, before.with(task, count));
        }
    }
}
