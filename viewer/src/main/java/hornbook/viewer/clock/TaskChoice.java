package hornbook.viewer.clock;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Stage;
import hornbook.catalogue.entry.Task;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.OnBench;
import hornbook.shared.job.UsualWork;
import hornbook.viewer.pick.Option;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The tasks that a clock may run on, the likeliest first: the one last clocked, then what such jobs usually have and this
 * one has not had yet, stage by stage, then all others.
 */
public final class TaskChoice {
    private final Supplier<Catalogue> catalogue;
    private final Jobs jobs;
    private final UsualWork usual;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    public TaskChoice(Supplier<Catalogue> catalogue, Jobs jobs, UsualWork usual) {
        this.catalogue = catalogue;
        this.jobs = jobs;
        this.usual = usual;
    }

    /** What a task, or a model, is called. */
    public String title(String task) {
        return task.equals("unlisted")
                ? "not placed"
                : catalogue.get().entry(task).map(Entry::title).orElse(task);
    }

    /** How many cups, keys, screws such a job usually has of it; 1 where that is not known. */
    int count(OnBench job, String task) {
        return task.equals(job.lastTask())
                ? jobs.job(job.id()).stream()
                        .flatMap(card -> card.tasks().stream())
                        .filter(line -> line.task().equals(task))
                        .mapToInt(JobCard.TaskLine::count)
                        .max()
                        .orElse(1)
                : usual.tasks(job.kind(), job.instrument()).stream()
                        .filter(line -> line.task().equals(task))
                        .mapToInt(UsualWork.UsualTask::count)
                        .findFirst()
                        .orElse(1);
    }

    List<Option> options(OnBench job) {
        Catalogue known = catalogue.get();
        Map<String, Integer> stages = order(known);
        Set<String> clocked = jobs.job(job.id()).stream()
                .flatMap(card -> card.tasks().stream())
                .map(JobCard.TaskLine::task)
                .collect(Collectors.toSet());
        List<Task> tasks = new ArrayList<>(known.tasks().values());
        Set<String> usually = usual.tasks(job.kind(), job.instrument()).stream()
                .map(UsualWork.UsualTask::task)
                .collect(Collectors.toSet());
        tasks.sort(Comparator.comparing((Task task) -> !task.id().equals(job.lastTask()))
                .thenComparing(task -> !usually.contains(task.id()) || clocked.contains(task.id()))
                .thenComparing(task -> stages.getOrDefault(task.stage(), Integer.MAX_VALUE)));
        return tasks.stream()
                .filter(task -> task.medianMinutes().containsKey(job.instrument())
                        || task.medianMinutes().isEmpty()
                        || !usually.isEmpty() && usually.contains(task.id())
                        || task.id().equals(job.lastTask())
                        || rare(known, job.instrument()))
                .map(task -> option(known, task, job))
                .toList();
    }

    /** The book knows no minutes at all for a rare member of the family: then nothing is left out. */
    private static boolean rare(Catalogue known, String instrument) {
        return known.tasks().values().stream()
                .noneMatch(task -> task.medianMinutes().containsKey(instrument));
    }

    private static Map<String, Integer> order(Catalogue known) {
        Map<String, Integer> order = new LinkedHashMap<>();
        known.stages().values().forEach(stage -> order.put(stage.id(), stage.order()));
        return order;
    }

    private static Option option(Catalogue known, Task task, OnBench job) {
        String stage = known.entry(task.stage())
                .filter(Stage.class::isInstance)
                .map(Entry::title)
                .orElse("");
        return new Option(task.id(), task.title(), task.id().equals(job.lastTask()) ? "go on, " + stage : stage);
    }
}
