package hornbook.viewer.hand;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What hands do to the drawer that is open, without a widget. */
public final class HandModel {
    private final Work work;
    private final Hands hands;
    private Consumer<HandView> listener = view -> {};
    private Consumer<Done> after = done -> {};
    private Consumer<String> fits = lot -> {};
    private HandView view = HandView.NOTHING;
    private Optional<String> lastJob = Optional.empty();
    private Answers said = new Answers(java.util.Map.of());
    private boolean relabelled;
    private boolean writing;

    public HandModel(Work work, Hands hands) {
        this.work = work;
        this.hands = hands;
    }

    HandView view() {
        return view;
    }

    void onChange(Consumer<HandView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /**
     * What was done to the open drawer.
     *
     * @param looked whether it was looked through
     * @param labelled whether it has another label now
     */
    public record Done(String drawer, boolean looked, boolean labelled) {}

    /** Told after each deed: what is shown is no longer what is. */
    public void onDeed(Consumer<Done> told) {
        after = told;
    }

    /** @param open asks what on hand fits like a lot, by its id */
    public void onFit(Consumer<String> open) {
        fits = open;
    }

    /** A drawer was pulled, or the pulled one asked again; the lot in hand and a question begun stay where they can. */
    public void show(Opened opened) {
        boolean same =
                view.card() != null && view.card().id().equals(opened.card().id());
        HandView now = HandView.of(opened, same ? view.chosen() : 0);
        Ask ask = view.ask();
        show(same && ask != null && view.act() != null ? now.asking(view.act(), ask) : now);
    }

    /** Takes that lot in hand, if it lies here. */
    public void choose(String lot) {
        DrawerCard card = view.card();
        if (card == null) {
            return;
        }
        card.lots().stream()
                .filter(line -> line.id().equals(lot))
                .findFirst()
                .ifPresent(line -> show(view.choosing(card.lots().indexOf(line))));
    }

    public void close() {
        show(HandView.NOTHING);
    }

    void step(int by) {
        show(view.choosing(view.chosen() + by));
    }

    /** Begins an act: asks what must be known, or does it at once. */
    void begin(Act act) {
        if (view.card() == null || (act.onLot() && view.lot().isEmpty())) {
            return;
        }
        if (act == Act.FIT) {
            view.lot().map(LotLine::id).ifPresent(fits);
            return;
        }
        Questions.before(act, view, lastJob)
                .ifPresentOrElse(ask -> show(view.asking(act, ask)), () -> act(act, new Answers(java.util.Map.of())));
    }

    /** Asks whether the drawer is as its label says. */
    public void look() {
        begin(Act.LOOK);
    }

    /** A sign typed over the open drawer: a digit begins a count, a letter its act. Whether it meant something. */
    public boolean press(char sign) {
        if (Character.isDigit(sign)) {
            count(String.valueOf(sign));
            return true;
        }
        Optional<Act> act = Act.of(Character.toLowerCase(sign));
        act.ifPresent(this::begin);
        return act.isPresent();
    }

    void count(String digit) {
        if (view.lot().isPresent()) {
            Questions.before(Act.COUNT, view, lastJob)
                    .ifPresent(ask -> show(view.asking(Act.COUNT, begun(ask, digit))));
        }
    }

    private static Ask begun(Ask ask, String digit) {
        Field field = ask.fields().getFirst();
        return new Ask(ask.title(), ask.doIt(), field.begunWith(digit));
    }

    void answer(Answers answers) {
        if (view.act() != null) {
            act(view.act(), answers);
        }
    }

    /** Leaves the question; whether there was one. */
    public boolean leave() {
        if (view.ask() == null) {
            return false;
        }
        show(view.answered());
        return true;
    }

    /** The code of a label was read while a place was asked for: it is the answer. Whether it was. */
    public boolean scanned(String code) {
        Ask ask = view.ask();
        boolean place = ask != null
                && ask.fields().stream().anyMatch(field -> field.name().equals("to"));
        if (!place || view.act() == Act.SPLIT) {
            return false;
        }
        answer(new Answers(java.util.Map.of("to", code)));
        return true;
    }

    private void act(Act act, Answers answers) {
        if (view.card() == null) {
            return;
        }
        if (act == Act.SORT_OUT) {
            view.lot().ifPresent(bag -> sortOut(bag, answers));
        } else if (act.onLot()) {
            view.lot().ifPresent(lot -> toLot(act, lot, answers));
        } else {
            DrawerCard card = view.card();
            relabelled = !answers.text("label").equals(card.label());
            doing(act, () -> hands.toDrawer(act, card, answers), () -> {});
        }
    }

    /** Two questions: what it is, and then, of the places where such pieces lie, which. */
    private void sortOut(LotLine bag, Answers answers) {
        DrawerCard card = view.card();
        if (card != null && answers.byField().containsKey("title")) {
            said = answers;
            work.read(
                    progress -> hands.whereTo(answers, card),
                    new Ends<>(ask -> show(view.asking(Act.SORT_OUT, ask)), this::failed));
        } else {
            doing(Act.SORT_OUT, () -> hands.sortOut(bag, said, answers), () -> {});
        }
    }

    private void toLot(Act act, LotLine lot, Answers answers) {
        doing(act, () -> hands.toLot(act, lot, answers), () -> {
            if (act == Act.TAKE) {
                lastJob = Optional.of(answers.text("job")).filter(job -> !job.isEmpty());
            }
            if (act == Act.COUNT) {
                // Whoever counts goes on to the next.
                step(1);
            }
        });
    }

    void bringBack(LotLine lot) {
        doing(Act.RETIRE, () -> hands.bringBack(lot.id()), () -> {});
    }

    /** One deed at a time: Enter pressed twice, while the first is being written, must not take two. */
    private void doing(Act act, Supplier<Deed> deed, Runnable then) {
        if (writing) {
            return;
        }
        writing = true;
        Done done = new Done(open(), act == Act.LOOK, act == Act.LABEL || (act == Act.LOOK && relabelled));
        work.write(progress -> deed.get(), new Ends<>(written -> done(done, then), this::failed));
    }

    private void done(Done done, Runnable then) {
        writing = false;
        if (open().equals(done.drawer())) {
            show(view.answered());
            then.run();
        }
        after.accept(done);
    }

    private String open() {
        return view.card() == null ? "" : view.card().id();
    }

    private void failed(Throwable thrown) {
        writing = false;
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(HandView now) {
        view = now;
        listener.accept(now);
    }
}
