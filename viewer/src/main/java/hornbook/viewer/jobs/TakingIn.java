package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Seller;
import hornbook.shared.job.Intake;
import hornbook.shared.job.TakeIn;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** A horn comes in: what the owner says, and what is agreed at the counter. */
public final class TakingIn implements Acts {
    private static final List<Choice> KINDS = Given.choices(TakeIn.KINDS.toArray(String[]::new));
    private static final List<Choice> MEMBERS =
            Given.choices("alto", "tenor", "soprano", "baritone", "sopranino", "c-melody", "bass", "other");

    private final Intake intake;
    private final Supplier<Catalogue> catalogue;
    private final PromisedDay days;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    public TakingIn(Intake intake, Supplier<Catalogue> catalogue, PromisedDay days) {
        this.intake = intake;
        this.catalogue = catalogue;
        this.days = days;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.TAKE_IN,
                Begin.anywhere(() -> new Step.Asks(question(), answers -> {
                    String job = takeIn(answers);
                    return model -> model.inView().open(job);
                })));
    }

    private static Ask question() {
        return new Ask(
                "A horn comes in",
                "Take it in",
                Field.text("complaint", "What is wrong, in the owner's words", ""),
                Field.choice("instrument", "Instrument", MEMBERS),
                Field.choice("kind", "Kind of job", KINDS).holding("partial"),
                Field.number("serial", "Serial, doubtful digits as ?", ""),
                Field.number("mark", "Name on it", ""),
                Field.number("promised", PromisedDay.LABEL, ""),
                Field.number("quoted", "Quoted, minutes", ""),
                Field.text("consent", "The owner agrees to (what cannot be undone, or leaves a mark)", ""),
                Field.text("note", "What came with it: neck, case, loose parts; earlier repairs", ""),
                Field.number("owner", "Owner's code, never a name", ""),
                Field.number("horn", "Here before? Its number, as h-194", ""));
    }

    private String takeIn(Answers answers) {
        return intake.job(intake.takeIn(new TakeIn(
                Given.orNull(answers.text("horn")),
                answers.text("instrument"),
                answers.text("serial"),
                Given.orNull(seller(answers.text("mark"))),
                answers.text("kind"),
                answers.needed("complaint", "what is wrong"),
                days.read(answers.text("promised")),
                Given.minutes(answers, "quoted"),
                Given.orNull(answers.text("owner")),
                Given.orNull(answers.text("consent")),
                answers.text("note"))));
    }

    /** A seller known by that name, else the name as it is. */
    private String seller(String name) {
        return catalogue.get().sellers().values().stream()
                .filter(seller -> seller.title().equalsIgnoreCase(name))
                .map(Seller::id)
                .findFirst()
                .orElse(name);
    }
}
