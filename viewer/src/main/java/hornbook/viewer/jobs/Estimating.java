package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.Estimate;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobCard.PlannedLine;
import hornbook.shared.job.JobChange;
import hornbook.shared.job.PlannedWork;
import hornbook.shared.job.UsualWork;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What work is expected on a job, and how long it may take. */
public final class Estimating implements Acts {
    private final Supplier<Catalogue> catalogue;
    private final UsualWork usual;
    private final Supplier<Estimate> estimate;
    private final PlannedWork planned;
    private final JobBook jobs;

    public Estimating(
            Supplier<Catalogue> catalogue,
            UsualWork usual,
            Supplier<Estimate> estimate,
            PlannedWork planned,
            JobBook jobs) {
        this.catalogue = catalogue;
        this.usual = usual;
        this.estimate = estimate;
        this.planned = planned;
        this.jobs = jobs;
    }

    /** At first what is planned, or such jobs usually have; once that is in view, a choice of more. */
    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.ESTIMATE,
                view -> view.expected() == null
                        ? Begin.onJob(Estimating::list).on(view)
                        : Begin.onJob(this::more).on(view));
    }

    private static Step list(JobPage page) {
        return new Step.Goes(model -> model.expected().begin(page.card()));
    }

    private Step more(JobPage page) {
        JobCard card = page.card();
        List<Option> options = catalogue.get().tasks().values().stream()
                .filter(task -> task.medianMinutes().containsKey(card.instrument()))
                .map(task -> new Option(task.id(), task.title(), task.unit()))
                .toList();
        return new Step.Picks(
                new Pick("Which work is expected too? A digit, or a few letters", options),
                task -> new Step.Goes(model -> model.expected().add(task)));
    }

    /** What is planned on the job; where nothing is, what such jobs usually have. */
    Expected first(JobCard card) {
        List<TaskCount> tasks = counted(planned.of(card.id()));
        return tasks.isEmpty() ? of(card, usual(card), false) : of(card, tasks, true);
    }

    static List<TaskCount> planned(JobCard card) {
        return counted(card.planned());
    }

    private static List<TaskCount> counted(List<PlannedLine> lines) {
        return lines.stream()
                .map(line -> new TaskCount(line.task(), line.count()))
                .toList();
    }

    private List<TaskCount> usual(JobCard card) {
        return usual.tasks(card.kind(), card.instrument()).stream()
                .map(task -> new TaskCount(task.task(), task.count()))
                .filter(task -> occurs(task.task(), card.instrument()))
                .toList();
    }

    private boolean occurs(String task, String instrument) {
        Task known = catalogue.get().tasks().get(task);
        return known != null && known.medianMinutes().containsKey(instrument);
    }

    /** So many of each are planned; a count of none takes a task off. */
    Expected plan(JobCard card, List<TaskCount> tasks) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        tasks.forEach(task -> counts.put(task.task(), task.count()));
        planned.plan(card.id(), counts);
        return first(card);
    }

    /** Once each, where they are not planned yet. */
    Expected and(JobCard card, List<String> more) {
        List<String> before = card.planned().stream().map(PlannedLine::task).toList();
        List<TaskCount> missing = more.stream()
                .filter(task -> !before.contains(task))
                .map(task -> new TaskCount(task, 1))
                .toList();
        return missing.isEmpty() ? first(card) : plan(card, missing);
    }

    private Expected of(JobCard card, List<TaskCount> tasks, boolean inBooks) {
        String model = catalogue.get().models().containsKey(card.model()) ? card.model() : null;
        return new Expected(
                tasks,
                tasks.isEmpty()
                        ? null
                        : estimate.get().estimate(new EstimateQuestion(tasks, model, card.instrument(), null)),
                inBooks);
    }

    /** Tells the owner so many minutes. */
    Step quote(String job, long minutes) {
        return Step.Does.only(() -> jobs.change(job, new JobChange(null, null, Math.toIntExact(minutes), null)));
    }
}
