package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Seller;
import hornbook.shared.job.Intake;
import hornbook.shared.job.TakeIn;
import hornbook.shared.shop.Horn;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A horn comes in: what the owner says, and what is agreed at the counter. */
public final class TakingIn implements Acts {
    private static final List<Choice> KINDS = Given.choices(TakeIn.KINDS.toArray(String[]::new));
    private static final List<Choice> MEMBERS =
            Given.choices("alto", "tenor", "soprano", "baritone", "sopranino", "c-melody", "bass", "other");

    private static final String NEW = "new";
    private static final Field COMPLAINT = Field.text("complaint", "What is wrong, in the owner's words", "");
    private static final Field KIND = Field.choice("kind", "Kind of job", KINDS).holding("partial");
    private static final Field PROMISED = Field.number("promised", PromisedDay.LABEL, "");
    private static final Field QUOTED = Field.number("quoted", "Quoted, minutes", "");
    private static final Field CONSENT =
            Field.text("consent", "The owner agrees to (what cannot be undone, or leaves a mark)", "");
    private static final Field CAME_WITH =
            Field.text("note", "What came with it: neck, case, loose parts; earlier repairs", "");

    private final Intake intake;
    private final Supplier<Catalogue> catalogue;
    private final PromisedDay days;
    private final HornsHere here;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    public TakingIn(Intake intake, Supplier<Catalogue> catalogue, PromisedDay days, HornsHere here) {
        this.intake = intake;
        this.catalogue = catalogue;
        this.days = days;
        this.here = here;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(Act.TAKE_IN, Begin.anywhere(() -> new Step.Reads(this::which)));
    }

    private Step which() {
        List<Option> horns = new ArrayList<>();
        horns.add(new Option(NEW, "A horn not here before", "nothing typed, Enter"));
        horns.addAll(here.options());
        return new Step.Picks(
                Pick.byWords("Which horn? Type its model, name, serial or owner's code; Enter for a new one", horns),
                this::asked);
    }

    private Step asked(String chosen) {
        Horn known = here.horn(chosen).orElse(null);
        return new Step.Asks(known == null ? fresh() : again(known), answers -> {
            String job = takeIn(known, answers);
            return model -> model.inView().open(job);
        });
    }

    private static Ask fresh() {
        return new Ask(
                "A horn comes in",
                "Take it in",
                COMPLAINT,
                Field.choice("instrument", "Instrument", MEMBERS),
                KIND,
                Field.number("serial", "Serial, doubtful digits as ?", ""),
                Field.number("mark", "Name on it", ""),
                PROMISED,
                QUOTED,
                CONSENT,
                CAME_WITH,
                Field.number("owner", "Owner's code, never a name", ""));
    }

    private Ask again(Horn horn) {
        String owner = horn.ownerCode() == null ? "" : horn.ownerCode();
        return new Ask(
                "Comes in again: " + here.title(horn) + ", " + horn.id(),
                "Take it in",
                COMPLAINT,
                KIND,
                PROMISED,
                QUOTED,
                CONSENT,
                CAME_WITH,
                Field.number("owner", "Owner's code, never a name", owner));
    }

    private String takeIn(@Nullable Horn known, Answers answers) {
        return intake.job(intake.takeIn(new TakeIn(
                known == null ? null : known.id(),
                known == null ? answers.text("instrument") : known.instrument(),
                known == null ? answers.text("serial") : known.serial(),
                known == null ? Given.orNull(seller(answers.text("mark"))) : known.soldAs(),
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
