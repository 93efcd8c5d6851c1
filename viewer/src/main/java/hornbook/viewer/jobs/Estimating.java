package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.Estimate;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobChange;
import hornbook.shared.job.UsualWork;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What work is expected on a job, and how long it may take. */
public final class Estimating implements Acts {
    private final Supplier<Catalogue> catalogue;
    private final UsualWork usual;
    private final Supplier<Estimate> estimate;
    private final JobBook jobs;

    public Estimating(Supplier<Catalogue> catalogue, UsualWork usual, Supplier<Estimate> estimate, JobBook jobs) {
        this.catalogue = catalogue;
        this.usual = usual;
        this.estimate = estimate;
        this.jobs = jobs;
    }

    /** At first what such jobs usually have; once that is in view, a choice of more. */
    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.ESTIMATE,
                view -> view.expected() == null
                        ? Begin.onJob(this::first).on(view)
                        : Begin.onJob(this::more).on(view));
    }

    private Step first(JobPage page) {
        return new Step.Goes(model -> model.expected().usual(page.card()));
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

    /** The work such jobs usually have, as a list to begin with. */
    Expected usual(JobCard card) {
        return of(
                card,
                usual.tasks(card.kind(), card.instrument()).stream()
                        .map(task -> new TaskCount(task.task(), task.count()))
                        .filter(task -> occurs(task.task(), card.instrument()))
                        .toList());
    }

    private boolean occurs(String task, String instrument) {
        Task known = catalogue.get().tasks().get(task);
        return known != null && known.medianMinutes().containsKey(instrument);
    }

    Expected of(JobCard card, List<TaskCount> tasks) {
        String model = catalogue.get().models().containsKey(card.model()) ? card.model() : null;
        return new Expected(
                tasks,
                tasks.isEmpty()
                        ? null
                        : estimate.get().estimate(new EstimateQuestion(tasks, model, card.instrument(), null)));
    }

    /** Tells the owner so many minutes. */
    Step quote(String job, long minutes) {
        return Step.Does.only(() -> jobs.change(job, new JobChange(null, null, Math.toIntExact(minutes), null)));
    }
}
