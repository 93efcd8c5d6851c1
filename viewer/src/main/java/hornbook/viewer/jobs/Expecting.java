package hornbook.viewer.jobs;

import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.job.JobCard;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.function.Supplier;

/** The work planned on the job in view, changed task by task in its books; its minutes follow. */
final class Expecting {
    private final Shown<JobsView> shown;
    private final Estimating estimating;
    private final Work work;
    private final Latest asking;

    Expecting(Work work, Shown<JobsView> shown, Estimating estimating) {
        this.work = work;
        this.shown = shown;
        this.estimating = estimating;
        this.asking = work.latest();
    }

    /** What is planned on the job; what such jobs usually have where nothing is. */
    void begin(JobCard card) {
        asking.ask(
                progress -> estimating.first(card),
                shown.ends(now -> shown.show(shown.now().expecting(now))));
    }

    /** These as well, once each, where they are not planned yet. */
    void and(JobPage page, List<String> more) {
        plan(() -> estimating.and(page.card(), more));
    }

    /** What is listed is planned from now on. */
    void keep() {
        JobPage page = shown.now().page();
        Expected listed = shown.now().expected();
        if (page != null && listed != null) {
            plan(() -> estimating.plan(page.card(), listed.tasks()));
        }
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

    /** So many of a task are planned, beside what is listed; none takes it off the list. */
    void change(String task, int count) {
        JobPage page = shown.now().page();
        Expected before = shown.now().expected();
        if (page == null || before == null) {
            return;
        }
        List<TaskCount> now = before.with(task, count);
        List<TaskCount> left = now.stream().filter(line -> line.count() > 0).toList();
        // At once, so that the next press of a key counts on from here; the minutes follow.
        shown.show(shown.now().expecting(new Expected(left, before.answer(), true)));
        plan(() -> estimating.plan(page.card(), now));
    }

    private void plan(Supplier<Expected> deed) {
        work.write(
                progress -> deed.get(), shown.ends(now -> shown.show(shown.now().expecting(now))));
    }

    /** The job was asked for again: what is planned may be otherwise, as after an undo. */
    void follow(JobPage page) {
        Expected before = shown.now().expected();
        if (before != null
                && before.planned()
                && !Estimating.planned(page.card()).equals(before.tasks())) {
            begin(page.card());
        }
    }
}
