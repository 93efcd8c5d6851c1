package hornbook.catalogue.estimate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.estimate.EstimateAnswer.FromJobs;
import hornbook.catalogue.estimate.EstimateAnswer.LeftOut;
import hornbook.catalogue.estimate.EstimateAnswer.Line;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Estimates minutes: ln(minutes / book) as the sum of a task's, instrument's, make's, model's, person's and job's own
 * slowness, each shrunk to nothing by how far such effects spread in this shop's clocks.
 */
public final class Estimate {
    private static final int FEW_JOBS = 10;
    private static final int LEFT_OUT_NAMED = 3;
    private static final int MOST_OF_A_TASK = 500;

    private final Catalogue catalogue;
    private final Book book;
    private final FarOff.Parted clocked;
    private final History history;

    public Estimate(Books books, Catalogue catalogue) {
        this(Clocks.of(books), catalogue);
    }

    Estimate(List<Clocked> clocked, Catalogue catalogue) {
        this(clocked, catalogue, null);
    }

    /** @param before an estimate from a little less of the same clocks */
    Estimate(List<Clocked> clocked, Catalogue catalogue, @Nullable Estimate before) {
        this.catalogue = catalogue;
        this.book = new Book(catalogue.tasks());
        this.clocked = new FarOff(book).part(clocked);
        this.history = new History(this.clocked.kept(), book, before == null ? null : before.history.effects());
    }

    /**
     * How long the work may take.
     *
     * @throws BadInput for a task or model that is not known, or a count below 1
     */
    public EstimateAnswer estimate(EstimateQuestion question) {
        Asked asked = asked(question);
        return answer(question.tasks(), asked.drawn(), jobs(asked.instrument(), asked.make(), asked.model()));
    }

    /** The quantiles of the sum alone, from fewer draws: for asking many times. */
    Draws roughly(EstimateQuestion question, int draws) {
        return new Draws(asked(question).drawn(), history, draws);
    }

    private record Asked(
            List<Draws.Drawn> drawn,
            String instrument,
            @Nullable String make,
            @Nullable Model model) {}

    private Asked asked(EstimateQuestion question) {
        if (question.tasks().isEmpty()) {
            throw new BadInput("no task was named: name one as --task task-pad-fit:24");
        }
        question.tasks().forEach(task -> book.task(task.task()));
        Model model = question.model() == null ? null : catalogue.named(Model.class, question.model());
        String instrument = instrument(question, model);
        String make = model == null ? null : model.make();
        String who = question.who() == null ? usual() : question.who();
        List<Draws.Drawn> drawn = new ArrayList<>();
        for (TaskCount task : question.tasks()) {
            drawn.add(drawn(task, instrument, make, model, who));
        }
        return new Asked(drawn, instrument, make, model);
    }

    private Draws.Drawn drawn(
            TaskCount asked, String instrument, @Nullable String make, @Nullable Model model, @Nullable String who) {
        Task task = book.task(asked.task());
        if (asked.count() < 1) {
            throw new BadInput(asked.count() + " of " + asked.task() + " cannot be done: name one or more");
        }
        if (asked.count() > MOST_OF_A_TASK) {
            throw new BadInput(asked.count() + " of " + asked.task() + " are not on one horn: name " + MOST_OF_A_TASK
                    + " or fewer");
        }
        double minutes = book.minutes(asked.task(), instrument)
                .orElseThrow(() -> new BadInput(asked.task() + " does not occur on " + instrument + ": leave it out"));
        int[] places = {
            history.place(History.TASK, asked.task()),
            history.place(History.INSTRUMENT, instrument),
            history.place(History.MAKE, make),
            history.place(History.MODEL, model == null ? null : model.id()),
            history.place(History.WHO, who)
        };
        return new Draws.Drawn(minutes * asked.count(), task.sigma(), places);
    }

    private EstimateAnswer answer(List<TaskCount> tasks, List<Draws.Drawn> drawn, FromJobs jobs) {
        Draws draws = new Draws(drawn, history, Draws.MANY);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            TaskCount task = tasks.get(i);
            lines.add(new Line(
                    task.task(),
                    book.task(task.task()).title(),
                    task.count(),
                    Math.round(draws.taskAt(i, 0.5)),
                    Math.round(draws.taskAt(i, 0.8)),
                    draws.share(i)));
        }
        return new EstimateAnswer(
                Math.round(draws.sumAt(0.5)),
                Math.round(draws.sumAt(0.8)),
                Math.round(drawn.stream().mapToDouble(Draws.Drawn::book).sum()),
                jobs,
                lines.stream()
                        .max(Comparator.comparingDouble(Line::share))
                        .orElseThrow()
                        .task(),
                lines,
                leftOut(),
                remarks(jobs));
    }

    private List<LeftOut> leftOut() {
        return clocked.leftOut().stream()
                .map(c -> new LeftOut(
                        c.job(),
                        c.task(),
                        c.count(),
                        c.minutes(),
                        Math.round(c.count()
                                * book.minutes(c.task(), c.instrument()).orElseThrow())))
                .toList();
    }

    private List<String> remarks(FromJobs jobs) {
        List<String> remarks = new ArrayList<>();
        if (jobs.all() == 0) {
            remarks.add("no clocks yet: this is the book's word alone");
        } else if (jobs.all() < FEW_JOBS) {
            remarks.add("from " + jobs.all() + " jobs only: the book still speaks loudest");
        }
        leftOut().stream().limit(LEFT_OUT_NAMED).map(Estimate::saying).forEach(remarks::add);
        int more = clocked.leftOut().size() - LEFT_OUT_NAMED;
        if (more > 0) {
            remarks.add("so are " + more + " more, all under left_out in the answer of --json");
        }
        return remarks;
    }

    private static String saying(LeftOut clock) {
        return clock.minutes() + " min for " + clock.task() + " on " + clock.job() + ", where the book says "
                + clock.bookMin()
                + ", is too far off to be believed and left out: put it right with “hornbook job count "
                + clock.job() + " " + clock.task() + " " + clock.count() + " --minutes MIN”";
    }

    /** How many jobs with clocks are behind the estimates. */
    int jobs() {
        return history.jobs(c -> true);
    }

    private FromJobs jobs(String instrument, @Nullable String make, @Nullable Model model) {
        return new FromJobs(
                history.jobs(c -> true),
                history.jobs(c -> c.instrument().equals(instrument)),
                history.jobs(c -> make != null && make.equals(c.make())),
                history.jobs(c -> model != null && model.id().equals(c.model())));
    }

    private String instrument(EstimateQuestion question, @Nullable Model model) {
        if (question.instrument() != null) {
            return instrument(question.instrument());
        }
        if (model != null && !model.instruments().isEmpty()) {
            return model.instruments().getFirst();
        }
        throw new BadInput("the instrument is not known: name it with --instrument alto, or the model with --model");
    }

    private String instrument(String named) {
        Trait family = catalogue.traits().get("family-member");
        if (family != null && family.value(named).isEmpty()) {
            List<String> known = family.values().stream().map(TraitValue::id).toList();
            throw new BadInput("“" + named + "” is no instrument that is known: "
                    + Nearest.of(named, known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("write one of " + String.join(", ", known)));
        }
        return named;
    }

    /** Who clocked most: the shop's owner, unless another is named. */
    private @Nullable String usual() {
        return clocked.kept().stream()
                .collect(Collectors.groupingBy(Clocked::who, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(null);
    }
}
