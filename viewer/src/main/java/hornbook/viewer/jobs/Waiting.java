package hornbook.viewer.jobs;

import hornbook.shared.job.StandingBook;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import java.time.Duration;
import java.util.Map;

/** What a job stands waiting for: a timer for what soaks or dries, where its pieces are. */
public final class Waiting implements Acts {
    private final StandingBook standing;

    public Waiting(StandingBook standing) {
        this.standing = standing;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(Act.TIMER, Begin.onJob(this::timer), Act.WHERE, Begin.onJob(this::where));
    }

    private Step timer(JobPage page) {
        return Step.ask(
                new Ask(
                        "Something soaks, dries or sets",
                        "Write it down",
                        Field.text("what", "What", ""),
                        Field.number("minutes", "For how many minutes", "")),
                answers -> soak(page.card().id(), answers));
    }

    private void soak(String job, Answers answers) {
        int minutes = answers.whole("minutes", "for how many minutes");
        if (minutes <= 0) {
            throw new BadInput("for how many minutes: name one or more");
        }
        standing.timer(job, answers.needed("what", "what"), Duration.ofMinutes(minutes));
    }

    private Step where(JobPage page) {
        return Step.ask(
                new Ask(
                        "Where the horn or a piece of it is",
                        "Write it down",
                        Field.text("piece", "Piece", "horn"),
                        Field.text("where", "Where", ""),
                        Field.text("waits", "What it waits for", "")),
                a -> standing.whereabouts(
                        page.card().id(),
                        a.needed("piece", "the piece"),
                        a.needed("where", "where it is"),
                        a.text("waits")));
    }

    /** It is done soaking, or no longer wanted. */
    Step ready(String timer) {
        return Step.Does.only(() -> standing.timerDone(timer));
    }
}
