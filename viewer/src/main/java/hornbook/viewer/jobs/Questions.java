package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.hornmap.Usualness;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.ShopTool;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What must be known before an act is done. */
final class Questions {
    private static final List<Choice> KINDS = choices("overhaul", "partial", "regulate", "quick", "neck", "body");
    private static final List<Choice> MEMBERS =
            choices("alto", "tenor", "soprano", "baritone", "sopranino", "c-melody", "bass", "other");
    private static final String DAY = "Promised: day as 2026-10-12, or in so many days";

    private Questions() {}

    static Ask takeIn() {
        return new Ask(
                "A horn comes in",
                "Take it in",
                Field.text("complaint", "What is wrong, in the owner's words", ""),
                Field.choice("instrument", "Instrument", MEMBERS),
                Field.choice("kind", "Kind of job", KINDS).holding("partial"),
                Field.number("serial", "Serial, doubtful digits as ?", ""),
                Field.number("mark", "Name on it", ""),
                Field.number("promised", DAY, ""),
                Field.number("quoted", "Quoted, minutes", ""),
                Field.number("owner", "Owner's code, never a name", ""),
                Field.number("horn", "Here before? Its number, as h-194", ""));
    }

    /** Empty for acts that are done at once or begin with a choice. */
    static Optional<Ask> before(Act act, JobPage page) {
        return switch (act) {
            case DOWN ->
                ask(
                        "The next step of taking down, as it went",
                        Field.text("piece", "What came off", ""),
                        Field.text("how", "How", ""),
                        Field.text("why", "Why then and not later", ""));
            case TIMER ->
                ask(
                        "Something soaks, dries or sets",
                        Field.text("what", "What", ""),
                        Field.number("minutes", "For how many minutes", ""));
            case WHERE ->
                ask(
                        "Where the horn or a piece of it is",
                        Field.text("piece", "Piece", "horn"),
                        Field.text("where", "Where", ""),
                        Field.text("waits", "What it waits for", ""));
            case YES ->
                ask(
                        "The owner's yes to what cannot be undone or leaves a mark",
                        Field.text("what", "To what", ""),
                        Field.number("by", "Who said so: a code, never a name", ""));
            case QUOTE -> Optional.of(agree(page.card()));
            case CLOSE -> Optional.of(close(page));
            case FOLLOW_UP ->
                ask(
                        "The settling-in check",
                        Field.choice(
                                "found",
                                "How it held",
                                List.of(
                                        new Choice("held", "all held"),
                                        new Choice("moved", "something moved"),
                                        new Choice("came-back", "it came back"))),
                        Field.text("words", "What moved and why", ""));
            default -> Optional.empty();
        };
    }

    private static Optional<Ask> ask(String title, Field... fields) {
        return Optional.of(new Ask(title, "Write it down", fields));
    }

    private static Ask agree(JobCard card) {
        return new Ask(
                "What is agreed",
                "Write it down",
                Field.number("quoted", "Quoted, minutes", card.quotedMin() == null ? "" : card.quotedMin() + ""),
                Field.number("promised", DAY, card.promised() == null ? "" : card.promised() + ""),
                Field.choice("status", "It is", choices("open", "waiting", "declined"))
                        .holding(card.status()),
                Field.text("note", "Note", card.note()));
    }

    private static Ask close(JobPage page) {
        List<Field> fields = new ArrayList<>();
        fields.add(Field.text("sentence", "How it went, in a sentence: what should the next one know?", ""));
        fields.add(Field.choice("grade", "It went", choices("smooth", "fair", "rough")));
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
        return new Ask("Close " + page.card().id() + clock, fields, "Close it", null);
    }

    /** The reading itself, with what is to be known before it is taken. */
    static Ask reading(Usualness usual, List<ShopTool> gauges, List<Choice> cups) {
        String range = usual.usual().isEmpty() ? "" : "  Usual: " + usual.usual() + " " + usual.unit() + ".";
        String consent = usual.consent() == null ? "" : "  First the owner's yes: " + usual.consent() + ".";
        List<Choice> tools = new ArrayList<>();
        tools.add(new Choice("", "not named"));
        gauges.forEach(tool -> tools.add(new Choice(tool.id(), tool.title())));
        return new Ask(
                usual.title() + "." + range + "  " + usual.how() + "." + consent,
                "Write it down",
                Field.number("value", "As read" + (usual.unit().isEmpty() ? "" : ", " + usual.unit()), ""),
                Field.choice("where", "Where", cups),
                Field.choice("left", "It is", List.of(new Choice("", "as found"), new Choice("left", "as left"))),
                Field.choice("tool", "Read with", tools),
                Field.text("note", "Note", ""));
    }

    /** What was observed. */
    static Ask observation(Trait trait) {
        List<Choice> values = trait.values().stream()
                .map(value -> new Choice(value.id(), value.id().replace('-', ' ')))
                .toList();
        Field value = values.isEmpty() ? Field.text("value", "As seen", "") : Field.choice("value", "As seen", values);
        return new Ask(trait.question(), "Write it down", value, Field.text("note", "Note", ""));
    }

    /** Where a fault is. */
    static Ask fault(String title, List<Choice> cups) {
        return new Ask(title, "Write it down", Field.choice("where", "Where", cups), Field.text("note", "Note", ""));
    }

    /** How many of a lot. */
    static Ask part(String title) {
        return new Ask(
                "Take out of: " + title,
                "Take",
                Field.number("pieces", "How many", "1"),
                Field.text("for", "What for", ""));
    }

    static Ask photo(String file) {
        return new Ask("Photo " + file, "Keep it", Field.text("word", "What to see on it", ""));
    }

    private static List<Choice> choices(String... words) {
        return Arrays.stream(words).map(word -> new Choice(word, word)).toList();
    }
}
