package hornbook.viewer.jobs;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The work that is expected on a job, and how long it may take.
 *
 * @param answer missing until it was reckoned, or while no task is listed
 * @param planned whether the job's books hold it; else it is what such jobs usually have
 */
record Expected(List<TaskCount> tasks, @Nullable EstimateAnswer answer, boolean planned) {

    /** Keeps its own copy. */
    Expected {
        tasks = List.copyOf(tasks);
    }

    /** With so many of a task; one that is not there is added, one that comes to none stays with a count of none. */
    List<TaskCount> with(String task, int count) {
        List<TaskCount> now = new ArrayList<>(tasks);
        int at = tasks.stream().map(TaskCount::task).toList().indexOf(task);
        if (at < 0) {
            now.add(new TaskCount(task, count));
        } else {
            now.set(at, new TaskCount(task, Math.max(count, 0)));
        }
        return now;
    }
}
