package hornbook.viewer.jobs;

import hornbook.catalogue.hornmap.Lessons;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.Closing;
import hornbook.shared.job.Ended;
import hornbook.shared.job.Standing;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Went;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** A job ends: how it went, what it taught, the horn goes back, and comes by once more. Closing is one deed. */
public final class Ending implements Acts {
    private final Closing closing;
    private final AfterCare after;
    private final Supplier<Lessons> lessons;

    /** @param lessons asked each time, as the shop's own entries may have changed */
    public Ending(Closing closing, AfterCare after, Supplier<Lessons> lessons) {
        this.closing = closing;
        this.after = after;
        this.lessons = lessons;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.CLOSE,
                Begin.onJob(page -> Step.ask(question(page), answers -> close(page, answers))),
                Act.TEACH,
                Begin.onJob(page ->
                        Step.Does.only(() -> lessons.get().teach(page.card().id()))),
                Act.HAND_BACK,
                Begin.onJob(
                        page -> Step.Does.only(() -> after.handBack(page.card().id()))),
                Act.FOLLOW_UP,
                Begin.onJob(this::followUp));
    }

    private Ask question(JobPage page) {
        List<Field> fields = new ArrayList<>();
        fields.add(Field.text("sentence", "How it went, in a sentence: what should the next one know?", ""));
        fields.add(Field.choice("grade", "It went", Given.choices("smooth", "fair", "rough")));
        fields.add(Field.choice(
                "back",
                "The horn",
                List.of(new Choice("stays", "stays here for now"), new Choice("goes", "goes back to its owner now"))));
        if (page.lesson() != null) {
            fields.add(Field.choice(
                    "teach",
                    "Its model's entry learns: "
                            + String.join("; ", page.lesson().says()),
                    List.of(new Choice("yes", "yes, with this job as source"), new Choice("no", "no"))));
        }
        String clock = page.card().standing().clocks().isEmpty() ? "" : " (its clock stops)";
        AfterCare.Visit settled = after.visit();
        String visit = ". The list asks for it to come by " + settled.from() + " to " + settled.until();
        return new Ask("Close " + page.card().id() + clock + visit, fields, "Close it", null);
    }

    private void close(JobPage page, Answers answers) {
        forgotten(page);
        String job = page.card().id();
        Ended how = new Ended(
                Went.valueOf(answers.text("grade").toUpperCase(Locale.ROOT)),
                answers.text("sentence"),
                answers.text("back").equals("goes"));
        if (answers.text("teach").equals("yes")) {
            closing.close(job, how, lessons.get().with(job));
        } else {
            closing.close(job, how);
        }
    }

    /** A clock that was forgotten is asked about where it can be answered. */
    private static void forgotten(JobPage page) {
        page.card().standing().clocks().stream()
                .filter(Standing.Clock::forgotten)
                .findFirst()
                .ifPresent(clock -> {
                    throw new BadInput("a clock has run on " + page.card().id() + " since " + clock.since()
                            + ": stop it first (Ctrl+J) and say how long it really took");
                });
    }

    private Step followUp(JobPage page) {
        return Step.ask(
                new Ask(
                        "The settling-in check",
                        "Write it down",
                        Field.choice(
                                "found",
                                "How it held",
                                List.of(
                                        new Choice("held", "all held"),
                                        new Choice("moved", "something moved"),
                                        new Choice("came-back", "it came back"))),
                        Field.text("words", "What moved and why", "")),
                answers -> after.followUp(page.card().id(), answers.text("found"), answers.text("words")));
    }
}
