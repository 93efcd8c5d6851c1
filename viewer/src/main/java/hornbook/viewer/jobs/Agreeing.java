package hornbook.viewer.jobs;

import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobChange;
import hornbook.shared.shop.JobStatus;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import java.util.Locale;
import java.util.Map;

/** What is agreed with the owner: minutes, the day, whether it goes on. */
public final class Agreeing implements Acts {
    private final JobBook jobs;
    private final PromisedDay days;

    public Agreeing(JobBook jobs, PromisedDay days) {
        this.jobs = jobs;
        this.days = days;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.QUOTE,
                Begin.onJob(page -> Step.ask(question(page.card()), answers -> agree(page.card(), answers))));
    }

    private static Ask question(JobCard card) {
        return new Ask(
                "What is agreed",
                "Write it down",
                Field.number("quoted", "Quoted, minutes", card.quotedMin() == null ? "" : card.quotedMin() + ""),
                Field.number("promised", PromisedDay.LABEL, card.promised() == null ? "" : card.promised() + ""),
                Field.choice("status", "It is", Given.choices("open", "waiting", "declined"))
                        .holding(card.status()),
                Field.text("note", "Note", card.note()));
    }

    private void agree(JobCard card, Answers answers) {
        JobStatus status = JobStatus.valueOf(answers.text("status").toUpperCase(Locale.ROOT));
        jobs.change(
                card.id(),
                new JobChange(
                        status,
                        days.read(answers.text("promised")),
                        Given.minutes(answers, "quoted"),
                        answers.text("note")));
    }
}
