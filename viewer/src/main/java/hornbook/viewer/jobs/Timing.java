package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.job.Clocks;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Standing;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What was worked: how many of a task, and its minutes, put right; minutes that no clock saw. */
public final class Timing implements Acts {
    private static final String ANOTHER = "another";

    private final Clocks clocks;
    private final Supplier<Catalogue> catalogue;

    public Timing(Clocks clocks, Supplier<Catalogue> catalogue) {
        this.clocks = clocks;
        this.catalogue = catalogue;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(Act.TIMES, Begin.onJob(page -> choice(page.card())));
    }

    private Step choice(JobCard card) {
        List<Option> options = new ArrayList<>();
        card.standing()
                .clocks()
                .forEach(clock ->
                        options.add(new Option(clock.task(), title(clock.task()), clock.count() + ", its clock runs")));
        card.tasks().stream()
                .filter(line -> options.stream().noneMatch(o -> o.value().equals(line.task())))
                .map(line -> new Option(line.task(), title(line.task()), line.count() + ", " + line.minutes() + " min"))
                .forEach(options::add);
        options.add(new Option(ANOTHER, "Minutes that no clock saw", ""));
        return new Step.Picks(
                new Pick("How many, and how long? A digit", options),
                task -> task.equals(ANOTHER) ? untold(card) : putRight(card, task));
    }

    private String title(String task) {
        return catalogue.get().title(task);
    }

    private Step putRight(JobCard card, String task) {
        int count = Math.max(
                card.tasks().stream()
                        .filter(line -> line.task().equals(task))
                        .mapToInt(JobCard.TaskLine::count)
                        .max()
                        .orElse(1),
                card.standing().clocks().stream()
                        .filter(c -> c.task().equals(task))
                        .mapToInt(Standing.Clock::count)
                        .max()
                        .orElse(1));
        int minutes = card.tasks().stream()
                .filter(line -> line.task().equals(task))
                .mapToInt(JobCard.TaskLine::minutes)
                .sum();
        return Step.ask(
                new Ask(
                        title(task),
                        "Put it right",
                        Field.number("count", "How many cups, keys, screws", count + ""),
                        Field.number("minutes", "Minutes clocked so far", minutes + "")),
                a -> clocks.putRight(card.id(), task, a.whole("count", "how many"), a.whole("minutes", "minutes")));
    }

    private Step untold(JobCard card) {
        List<Option> options = catalogue.get().tasks().values().stream()
                .map(task -> new Option(task.id(), task.title(), task.unit()))
                .toList();
        return new Step.Picks(
                new Pick("What was worked on? A digit, or a few letters", options),
                task -> Step.ask(
                        new Ask(
                                title(task) + ", without a clock",
                                "Write it down",
                                Field.number("minutes", "Minutes", ""),
                                Field.number("count", "How many cups, keys, screws", "1")),
                        answers -> told(card.id(), task, answers)));
    }

    private void told(String job, String task, Answers a) {
        clocks.told(job, task, a.whole("count", "how many"), a.whole("minutes", "minutes"), null, clocks.usual());
    }
}
