package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.catalogue.diagnose.DiagnoseAnswer.NextCheck;
import hornbook.catalogue.diagnose.DiagnoseQuestion;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.viewer.diagnose.DiagnoseView.Said;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What the pane knows and does, without a widget. Of several questions under way the newest counts. */
public final class DiagnoseModel {
    private final Work work;
    private final DiagnoseAsked asked;
    private final Latest asking;
    private final BiConsumer<String, List<String>> plan;
    private final Shown<DiagnoseView> shown = new Shown<>(DiagnoseView.NOTHING, DiagnoseView::saying);

    /** @param plan takes a job and the tasks that are to be done on it */
    public DiagnoseModel(Work work, DiagnoseAsked asked, BiConsumer<String, List<String>> plan) {
        this.work = work;
        this.asked = asked;
        this.asking = work.latest();
        this.plan = plan;
    }

    DiagnoseView view() {
        return shown.now();
    }

    void onChange(Consumer<DiagnoseView> draw) {
        shown.onChange(draw);
    }

    /** The horn of a job, with what its owner complained of. The same job again goes on where it was. */
    public void about(String job) {
        if (!job.equals(view().complaint().job())) {
            asking.ask(progress -> asked.complaint(job), shown.ends(this::about));
        }
    }

    /** A horn that is on no job. */
    public void about(Complaint complaint) {
        shown.show(view().about(complaint));
        if (!complaint.words().isBlank()) {
            ask();
        }
    }

    /** These words now; what was checked for others is forgotten. */
    void ask(String words) {
        shown.show(view().asking(words.strip()));
        ask();
    }

    private void ask() {
        DiagnoseView now = view();
        DiagnoseQuestion question = new DiagnoseQuestion(
                now.symptom(), now.answers(), now.passed(), now.complaint().model());
        asking.ask(
                progress -> asked.told(question, now.complaint().instrument()),
                shown.ends(told -> shown.show(view().with(told))));
    }

    /** The next check said yes or no; null where it did not tell. */
    void answer(@Nullable Boolean yes) {
        Told told = view().told();
        NextCheck next = told == null ? null : told.answer().next();
        if (next != null) {
            shown.show(view().answering(new Said(next.id(), next.question(), yes)));
            ask();
        }
    }

    void takeBack(String check) {
        shown.show(view().without(check));
        ask();
    }

    void takeBackLast() {
        if (!view().checks().isEmpty()) {
            takeBack(view().checks().getLast().check());
        }
    }

    /** Makes what cures the likeliest cause the job's work. */
    void plan() {
        String job = view().complaint().job();
        EstimateAnswer time = view().told() == null ? null : view().told().time();
        if (job != null && time != null) {
            plan.accept(
                    job, time.lines().stream().map(EstimateAnswer.Line::task).toList());
        }
    }

    /** Writes the likeliest cause down on the job. */
    void found() {
        String job = view().complaint().job();
        Told told = view().told();
        Cure cure = told == null ? null : told.answer().cure();
        if (job == null || told == null || cure == null) {
            return;
        }
        String words = told.answer().causes().getFirst().text();
        work.write(
                progress -> {
                    asked.found(job, cure, words);
                    return words;
                },
                shown.ends(done -> shown.show(view().saying("Written down on " + job + ": " + done + "."))));
    }
}
