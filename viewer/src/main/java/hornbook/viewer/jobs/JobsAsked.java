package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Stage;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.catalogue.hornmap.Lesson;
import hornbook.catalogue.hornmap.Usualness;
import hornbook.catalogue.hornmap.Usuals;
import hornbook.catalogue.identify.Question;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.search.Hit;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.OnBench;
import hornbook.shared.job.UsualWork.UsualPart;
import hornbook.shared.shop.ShopTool;
import hornbook.viewer.jobs.JobPage.StageLine;
import hornbook.viewer.widget.Words;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the screen Jobs asks: each question of the room that answers it, ids turned into names. */
public final class JobsAsked {
    private static final int PARTS = 9;

    private final Workshop shop;

    public JobsAsked(Workshop shop) {
        this.shop = shop;
    }

    String title(String id) {
        return id.equals("unlisted")
                ? "not placed"
                : shop.catalogue().entry(id).map(Entry::title).orElse(id);
    }

    List<OnBench> bench() {
        return shop.jobs().onBench().stream().map(on -> on.calling(this::title)).toList();
    }

    List<AfterCare.Due> due() {
        return shop.afterCare().due();
    }

    Optional<JobPage> page(String id) {
        return shop.jobs().job(id).map(this::page);
    }

    private JobPage page(JobCard card) {
        String sold = card.soldAs() == null || card.soldAs().isBlank() ? "" : ", sold as " + title(card.soldAs());
        String model = card.model().equals("unlisted")
                ? Words.sentence(card.instrument() + ", not placed").replaceFirst("[.]$", "")
                : title(card.model());
        String serial = card.serial().isBlank() ? "" : ", " + card.serial();
        Optional<Lesson> lesson = shop.lessons().of(card.id());
        return new JobPage(card, model + sold + serial, stages(card), lesson.orElse(null));
    }

    private List<StageLine> stages(JobCard card) {
        Catalogue known = shop.catalogue();
        return known.stages().values().stream()
                .sorted(Comparator.comparingInt(Stage::order))
                .map(stage -> new StageLine(
                        stage.id(),
                        stage.title(),
                        card.tasks().stream()
                                .filter(task -> stage.id().equals(stageOf(known, task.task())))
                                .mapToInt(JobCard.TaskLine::minutes)
                                .sum(),
                        card.standing().clocks().stream()
                                .anyMatch(clock -> stage.id().equals(stageOf(known, clock.task())))))
                .toList();
    }

    private static String stageOf(Catalogue known, String task) {
        Task found = known.tasks().get(task);
        return found == null ? "" : found.stage();
    }

    /** Past jobs on this horn, its model, its seller's kin, its make; nearest first. */
    List<PastJob> kin(JobCard card) {
        boolean anybody = card.model().equals("unlisted")
                && (card.soldAs() == null || card.soldAs().isBlank());
        if (anybody) {
            return List.of();
        }
        return shop.brief().answer(BriefQuestion.of(Question.of(List.of()).about(card.horn()))).jobs().stream()
                .filter(past -> !past.id().equals(card.id()))
                .toList();
    }

    /** The work such jobs usually have, as a list to begin with. */
    List<TaskCount> usualWork(JobCard card) {
        return shop.usualWork().tasks(card.kind(), card.instrument()).stream()
                .map(task -> new TaskCount(task.task(), task.count()))
                .filter(task -> occurs(task.task(), card.instrument()))
                .toList();
    }

    private boolean occurs(String task, String instrument) {
        Task known = shop.catalogue().tasks().get(task);
        return known != null && known.medianMinutes().containsKey(instrument);
    }

    Expected expected(JobCard card, List<TaskCount> tasks) {
        String model = shop.catalogue().models().containsKey(card.model()) ? card.model() : null;
        return new Expected(
                tasks,
                tasks.isEmpty()
                        ? null
                        : shop.estimate().estimate(new EstimateQuestion(tasks, model, card.instrument(), null)));
    }

    List<UsualPart> usualParts(String job) {
        return shop.usualWork().parts(job, PARTS);
    }

    /** Lots that the search box finds. */
    List<Hit> lots(String words) {
        return found(words, "lot");
    }

    /** Past jobs that the search box finds. */
    List<Hit> jobs(String words) {
        return found(words, "job");
    }

    private List<Hit> found(String words, String kind) {
        return shop.search()
                .find(new hornbook.indexer.search.Question(words, PARTS, Set.of(kind)))
                .hits();
    }

    /** Everything that can be found on an instrument, and what is usual. */
    List<Usualness> findings(String instrument) {
        return shop.usuals().all(instrument);
    }

    Optional<Usualness> usual(String what, String instrument, String where, String value) {
        Double number = value.matches("-?\\d+([.,]\\d+)?") ? Double.valueOf(value.replace(',', '.')) : null;
        Usuals usuals = shop.usuals();
        return usuals.of(what, instrument, where, number);
    }

    /** What can be met or observed: traits, faults, quirks. */
    Catalogue catalogue() {
        return shop.catalogue();
    }

    /** The gauges of the shop. */
    List<ShopTool> gauges() {
        return shop.books().all(ShopTool.class).stream()
                .filter(tool ->
                        !tool.errorMm().isBlank() || tool.id().matches(".*(gauge|caliper|micrometer|rule|pin).*"))
                .toList();
    }

    Path photo(String file) {
        return shop.books().folder().resolve("photos").resolve(file);
    }
}
