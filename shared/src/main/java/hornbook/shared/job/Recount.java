package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Writing;
import java.util.List;

/** Puts right what was clocked on a task of a job. */
final class Recount {
    private final Writing w;

    Recount(Writing w) {
        this.w = w;
    }

    /** @throws BadInput where nothing was clocked on it */
    void of(String job, String task, int count, int minutes) {
        List<RunningClock> running = w.where(RunningClock.class, "job", job).stream()
                .filter(clock -> clock.task().equals(task))
                .toList();
        List<TaskTime> times = w.where(TaskTime.class, "job", job).stream()
                .filter(time -> time.task().equals(task))
                .toList();
        if (running.isEmpty() && times.isEmpty() || times.isEmpty() && minutes > 0) {
            throw new BadInput("nothing was clocked on " + task + " of " + job
                    + ": write minutes down with “hornbook job told " + job + " " + task + "”");
        }
        running.forEach(clock -> w.put(new RunningClock(clock.id(), job, task, count, clock.since(), clock.who())));
        int left = minutes;
        for (TaskTime time : times) {
            boolean last = time.equals(times.getLast());
            int its = last ? left : Math.min(time.minutes(), left);
            left -= its;
            w.put(new TaskTime(time.id(), job, task, count, time.part(), time.date(), its, time.who()));
        }
    }
}
