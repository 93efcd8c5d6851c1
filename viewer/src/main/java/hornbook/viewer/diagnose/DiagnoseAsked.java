package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.catalogue.diagnose.DiagnoseAnswer.NextCheck;
import hornbook.catalogue.diagnose.DiagnoseAnswer.TaskLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.ToolLine;
import hornbook.catalogue.diagnose.DiagnoseQuestion;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Look;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.diagnose.Told.ToolPlace;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the pane asks of the shop, and the one thing it writes down. Each call may take a while. */
public final class DiagnoseAsked {
    private final Workshop shop;

    public DiagnoseAsked(Workshop shop) {
        this.shop = shop;
    }

    /** The complaint of a job, in its owner's words. */
    Complaint complaint(String job) {
        JobCard card = shop.jobs().job(job).orElseThrow(() -> new BadInput("There is no job " + job + "."));
        return new Complaint(card.complaint(), known(card.model()), card.instrument(), job);
    }

    private @Nullable String known(@Nullable String model) {
        return model != null && shop.catalogue().models().containsKey(model) ? model : null;
    }

    Told told(DiagnoseQuestion question, String instrument) {
        DiagnoseAnswer answer = shop.diagnose().answer(question);
        NextCheck next = answer.next();
        return new Told(
                answer,
                next == null
                        ? List.of()
                        : next.tools().stream().map(this::place).toList(),
                time(answer.cure(), question.model(), instrument));
    }

    private ToolPlace place(ToolLine tool) {
        return shop.tools()
                .tool(tool.id())
                .map(card -> new ToolPlace(card.title(), card.lies(), card.label(), true))
                .orElseGet(() -> new ToolPlace(tool.title(), null, "", false));
    }

    private @Nullable EstimateAnswer time(@Nullable Cure cure, @Nullable String model, String instrument) {
        List<TaskCount> tasks = cure == null
                ? List.of()
                : cure.tasks().stream()
                        .map(TaskLine::id)
                        .filter(task -> occurs(task, instrument))
                        .map(task -> new TaskCount(task, 1))
                        .toList();
        return tasks.isEmpty() ? null : shop.estimate().estimate(new EstimateQuestion(tasks, model, instrument, null));
    }

    private boolean occurs(String task, String instrument) {
        Task known = shop.catalogue().tasks().get(task);
        return known != null && known.medianMinutes().containsKey(instrument);
    }

    /** Writes the cause down as a finding: the next complaint of that kind finds it sooner. */
    void found(String job, Cure cure, String words) {
        shop.jobBook().find(job, new Look(cure.cause(), "", "found", "", false, null, words));
    }
}
