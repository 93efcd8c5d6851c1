package hornbook.shared.year;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.View;
import hornbook.shared.year.YearAnswer.KindLine;
import hornbook.shared.year.YearAnswer.TaskLine;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the clocks said.
 *
 * @param all every clock there is
 * @param of those of the year
 */
record Hours(List<TaskTime> all, List<TaskTime> of, Map<String, String> kindOfJob) {
    static Hours of(View view, List<Job> jobs, Period in) {
        List<TaskTime> all = view.all(TaskTime.class);
        Map<String, String> kinds = new HashMap<>();
        jobs.forEach(job -> kinds.put(job.id(), job.kind()));
        return new Hours(all, all.stream().filter(time -> in.holds(time.date())).toList(), kinds);
    }

    int minutes() {
        return of.stream().mapToInt(TaskTime::minutes).sum();
    }

    List<KindLine> kinds(List<Job> done) {
        Map<String, Integer> minutes = of.stream()
                .collect(Collectors.groupingBy(
                        time -> kindOfJob.getOrDefault(time.job(), ""), Collectors.summingInt(TaskTime::minutes)));
        Map<String, Integer> jobs = new HashMap<>();
        done.forEach(job -> {
            jobs.merge(job.kind(), 1, Integer::sum);
            minutes.putIfAbsent(job.kind(), 0);
        });
        return minutes.entrySet().stream()
                .map(kind -> new KindLine(kind.getKey(), jobs.getOrDefault(kind.getKey(), 0), kind.getValue()))
                .sorted(Comparator.comparingInt(KindLine::minutes).reversed().thenComparing(KindLine::kind))
                .toList();
    }

    List<TaskLine> tasks() {
        Map<String, List<TaskTime>> byTask = of.stream().collect(Collectors.groupingBy(TaskTime::task));
        return byTask.entrySet().stream()
                .map(task -> new TaskLine(
                        task.getKey(),
                        (int) task.getValue().stream()
                                .map(TaskTime::job)
                                .distinct()
                                .count(),
                        task.getValue().stream().mapToInt(TaskTime::minutes).sum()))
                .sorted(Comparator.comparingInt(TaskLine::minutes).reversed().thenComparing(TaskLine::task))
                .toList();
    }
}
