package hornbook.viewer.jobs;

import hornbook.catalogue.called.JobWords;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Stage;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.hornmap.Lessons;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.OnBench;
import hornbook.viewer.jobs.JobPage.StageLine;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** The jobs as they are read: the bench, and one job on its page; ids turned into names. */
public final class JobSheets {
    private final Jobs jobs;
    private final AfterCare after;
    private final Supplier<Catalogue> catalogue;
    private final Supplier<Lessons> lessons;
    private final UnaryOperator<String> owners;

    /**
     * Catalogue and lessons are asked each time, as the shop's own entries may have changed.
     *
     * @param owners the owner's code of a job, empty where none was told
     */
    public JobSheets(
            Jobs jobs,
            AfterCare after,
            Supplier<Catalogue> catalogue,
            Supplier<Lessons> lessons,
            UnaryOperator<String> owners) {
        this.jobs = jobs;
        this.after = after;
        this.catalogue = catalogue;
        this.lessons = lessons;
        this.owners = owners;
    }

    /** Jobs not handed back, and jobs whose horn should come by again. */
    record Bench(List<OnBench> jobs, List<AfterCare.Due> due) {}

    Bench bench() {
        return new Bench(
                jobs.onBench().stream().map(on -> on.calling(this::title)).toList(), after.due());
    }

    String title(String id) {
        return words().title(id);
    }

    JobWords words() {
        return new JobWords(catalogue.get());
    }

    Optional<JobPage> page(String id) {
        return jobs.job(id).map(this::page);
    }

    private JobPage page(JobCard card) {
        return new JobPage(
                card,
                horn(card),
                owners.apply(card.id()),
                stages(card),
                lessons.get().of(card.id()).orElse(null));
    }

    private String horn(JobCard card) {
        String sold = card.soldAs() == null || card.soldAs().isBlank() ? "" : ", sold as " + title(card.soldAs());
        String model = card.model().equals("unlisted")
                ? card.instrument().substring(0, 1).toUpperCase(Locale.ROOT)
                        + card.instrument().substring(1) + ", not placed"
                : title(card.model());
        String serial = card.serial().isBlank() ? "" : ", " + card.serial();
        return model + sold + serial;
    }

    private List<StageLine> stages(JobCard card) {
        Catalogue known = catalogue.get();
        return known.stages().values().stream()
                .sorted(Comparator.comparingInt(Stage::order))
                .map(stage -> stage(known, stage, card))
                .toList();
    }

    private static StageLine stage(Catalogue known, Stage stage, JobCard card) {
        int minutes = card.tasks().stream()
                .filter(task -> stage.id().equals(stageOf(known, task.task())))
                .mapToInt(JobCard.TaskLine::minutes)
                .sum();
        boolean running =
                card.standing().clocks().stream().anyMatch(clock -> stage.id().equals(stageOf(known, clock.task())));
        return new StageLine(stage.id(), stage.title(), minutes, running);
    }

    private static String stageOf(Catalogue known, String task) {
        Task found = known.tasks().get(task);
        return found == null ? "" : found.stage();
    }
}
