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
 */
record Expected(List<TaskCount> tasks, @Nullable EstimateAnswer answer) {
    /** Keeps its own copy. */
    Expected {
        tasks = List.copyOf(tasks);
    }

    /** One more or less of a task; one that is not there is added, one that comes to none leaves. */
    List<TaskCount> changed(String task, int by) {
        List<TaskCount> now = new ArrayList<>();
        boolean there = false;
        for (TaskCount line : tasks) {
            there |= line.task().equals(task);
            int count = line.task().equals(task) ? line.count() + by : line.count();
            if (count > 0) {
                now.add(new TaskCount(line.task(), count));
            }
        }
        if (!there && by > 0) {
            now.add(new TaskCount(task, by));
        }
        return now;
    }
}
