package hornbook.viewer.hand;

import hornbook.shared.shop.LotState;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.OpenJob;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is asked before each act; nothing where it can be done at once. */
final class Questions {
    private static final int LONGEST_JOB = 46;

    private Questions() {}

    static Optional<Ask> before(Act act, HandView view, Optional<String> lastJob) {
        DrawerCard card = view.card();
        if (card == null) {
            return Optional.empty();
        }
        return act.onLot()
                ? view.lot().flatMap(lot -> onLot(act, lot, view, lastJob))
                : Optional.of(onDrawer(act, card, view.proposal()));
    }

    private static Optional<Ask> onLot(Act act, LotLine lot, HandView view, Optional<String> lastJob) {
        String title = act.words() + ": " + lot.title();
        return switch (act) {
            case COUNT ->
                Optional.of(
                        new Ask(title, "Counted", Field.number("count", "How many, or f few, s some, p plenty", "")));
            case TAKE -> Optional.of(take(title, lot, view.jobs(), lastJob));
            case PUT_IN ->
                Optional.of(new Ask(
                        title,
                        "Put in",
                        Field.number("pieces", "How many", "1"),
                        Field.choice(
                                "how",
                                "They are",
                                List.of(new Choice("saved", "saved from a horn"), new Choice("bought", "bought"))),
                        Field.text("from", "From which horn, or from whom", "")));
            case MOVE -> Optional.of(new Ask(title, "Move", to("")));
            case SPLIT ->
                Optional.of(new Ask(title, "Split off", Field.number("pieces", "How many", "1"), to(id(view))));
            case JOIN -> join(title, lot, view);
            case DESCRIBE -> Optional.of(new Ask(title, Described.again(lot), "Put right", null));
            case SORT_OUT -> Optional.of(SortingOut.what(lot));
            default -> Optional.empty();
        };
    }

    private static Ask onDrawer(Act act, DrawerCard card, String proposal) {
        return switch (act) {
            case LABEL ->
                new Ask(
                        "Label of " + card.where(),
                        "Label it",
                        Field.text("label", "What the label is to say", proposal.isEmpty() ? card.label() : proposal));
            case LOOK -> looking(card);
            case STRIP -> new Ask("Everything goes to another place", "Move all", to(""));
            default ->
                new Ask(
                        "Something new in it",
                        Described.fields("How many, or f, s, p", "", LotState.NEW),
                        "Put in",
                        null);
        };
    }

    private static Field to(String offered) {
        return Field.text("to", "To which drawer or place: its label or number, or read its code", offered);
    }

    private static String id(HandView view) {
        return view.card() == null ? "" : view.card().id();
    }

    private static Ask take(String title, LotLine lot, List<OpenJob> jobs, Optional<String> lastJob) {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "no job")));
        jobs.forEach(job -> choices.add(new Choice(job.id(), words(job))));
        String likely = jobs.stream()
                .filter(OpenJob::clockRuns)
                .map(OpenJob::id)
                .findFirst()
                .or(() -> lastJob.filter(
                        id -> jobs.stream().anyMatch(job -> job.id().equals(id))))
                .orElse("");
        Ask ask = new Ask(
                title,
                "Take out",
                Field.number("pieces", "How many", "1"),
                Field.choice("job", "For", choices).holding(likely));
        if (!Hands.reserve(lot)) {
            return ask;
        }
        Field reserve = Field.choice(
                "reserve",
                "It is set aside as reserve",
                List.of(new Choice("no", "leave it"), new Choice("yes", "take from it all the same")));
        return new Ask(
                title, Stream.concat(ask.fields().stream(), Stream.of(reserve)).toList(), "Take out", null);
    }

    private static String words(OpenJob job) {
        String words = job.id() + "  " + job.what();
        String cut = words.length() > LONGEST_JOB ? words.substring(0, LONGEST_JOB) + "\u2026" : words;
        return job.clockRuns() ? cut + "  (clock runs)" : cut;
    }

    private static Optional<Ask> join(String title, LotLine lot, HandView view) {
        List<Choice> others = view.card() == null
                ? List.of()
                : view.card().lots().stream()
                        .filter(other -> !other.id().equals(lot.id()))
                        .map(other -> new Choice(other.id(), other.count() + "  " + other.title() + "  " + other.id()))
                        .toList();
        return others.isEmpty()
                ? Optional.of(new Ask(title, "Join", Field.text("into", "To which lot: its number", "")))
                : Optional.of(new Ask(title, "Join", Field.choice("into", "To which lot", others)));
    }

    private static Ask looking(DrawerCard card) {
        boolean drifted = "drifted".equals(card.labelState());
        Field says = Field.choice(
                "says",
                "Does the label say so?",
                List.of(new Choice("yes", "yes"), new Choice("no", "no, and it stays for now")));
        return new Ask(
                "Looked through",
                "It is so; next",
                Field.text("contents", "What is really in it", Proposal.of(card)),
                Field.text("label", "Its label (write another, or leave it)", card.label()),
                drifted ? says.holding("no") : says);
    }
}
