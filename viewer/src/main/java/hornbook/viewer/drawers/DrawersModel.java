package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import hornbook.shared.stock.Furniture;
import hornbook.viewer.hand.HandModel;
import hornbook.viewer.hand.Opened;
import hornbook.viewer.hand.Pull;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** What the screen Drawers knows and does, without a widget. */
public final class DrawersModel {
    private final Furniture furniture;
    private final Pull pull;
    private final HandModel hand;
    private final Latest plans;
    private final Latest cards;
    private Consumer<DrawersView> listener = view -> {};
    private Consumer<String> labelled = drawer -> {};
    private DrawersView view = DrawersView.NOTHING;
    private boolean pulling;

    /** @param hand what is done to the drawer that is open */
    public DrawersModel(Work work, Furniture furniture, Pull pull, HandModel hand) {
        this.furniture = furniture;
        this.pull = pull;
        this.hand = hand;
        this.plans = work.latest();
        this.cards = work.latest();
        hand.onDeed(this::done);
    }

    DrawersView view() {
        return view;
    }

    /** The one who draws; told of each change, and of what there is now. */
    void onChange(Consumer<DrawersView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks again how the cabinets look, and what is in the open drawer unless another is being pulled. */
    void refresh() {
        askForShop();
        String open = view.open();
        if (open != null && !pulling) {
            cards.ask(progress -> pull.drawer(open), ends(now -> opened(open, now)));
        }
    }

    private void askForShop() {
        plans.ask(
                progress -> new DrawersView.Shop(furniture.plans(), furniture.places()),
                ends(now -> show(view.with(now))));
    }

    /** Shows the newest cabinet once it is there. */
    void newest() {
        plans.ask(progress -> new DrawersView.Shop(furniture.plans(), furniture.places()), ends(now -> {
            show(view.with(now));
            if (!now.cabinets().isEmpty()) {
                choose(now.cabinets().getLast().id());
            }
        }));
    }

    void choose(String cabinet) {
        if (!cabinet.equals(view.chosen())) {
            hand.close();
            show(view.choosing(cabinet));
        }
    }

    /** Pulls a drawer, or looks at another place; brings its cabinet into view. */
    public void open(String called) {
        open(called, "", "");
    }

    /**
     * As {@link #open(String)}, and goes on at once.
     *
     * @param lot a lot that lies there, to be taken in hand; empty for none
     * @param then the sign that is typed over it; empty for none
     */
    public void open(String called, String lot, String then) {
        hand.leave();
        pulling = true;
        cards.ask(progress -> pull.drawer(called), ends(card -> {
            opened(called, card);
            if (!lot.isEmpty()) {
                hand.choose(lot);
            }
            then.chars().forEach(sign -> hand.press((char) sign));
        }));
    }

    /** The code of a label was read: the answer where a place is asked for, else the drawer to open. */
    public void scanned(String code) {
        if (!hand.scanned(code)) {
            show(view.looking(false));
            open(code);
        }
    }

    private void opened(String called, Optional<Opened> found) {
        pulling = false;
        if (found.isEmpty()) {
            show(view.troubled("There is no drawer or place \u201c" + called + "\u201d in this shop."));
            return;
        }
        String id = found.get().card().id();
        boolean other = !id.equals(view.open());
        show(view.opening(id));
        hand.show(found.get());
        if (other && view.looking()) {
            hand.look();
        }
    }

    /** Goes through the cabinet in view from its first drawer, or from the one that is open. */
    void lookThrough() {
        Optional<String> first = view.cabinet()
                .flatMap(plan -> plan.drawers().stream().map(DrawerFront::id).findFirst());
        String open = view.open();
        show(view.looking(true));
        if (open != null) {
            hand.look();
        } else {
            first.ifPresent(this::open);
        }
    }

    /** Leaves a drawer of the walk as it was found, and goes on to the next. */
    void next() {
        String open = view.open();
        if (open == null) {
            return;
        }
        view.after(open).ifPresentOrElse(this::open, () -> {
            close();
            show(view.troubled("That was the last drawer of this cabinet."));
        });
    }

    /** Told of each drawer that was labelled anew. */
    void onLabelled(Consumer<String> told) {
        labelled = told;
    }

    private void done(HandModel.Done done) {
        if (done.labelled()) {
            labelled.accept(done.drawer());
        }
        if (done.looked() && view.looking()) {
            askForShop();
            next();
        } else {
            refresh();
        }
    }

    /** Leaves the question, the walk, or the drawer: one step back. */
    boolean back() {
        return hand.leave() || close();
    }

    /** Pushes the drawer in again, if one is open. */
    boolean close() {
        if (view.open() == null) {
            return false;
        }
        cards.cancel();
        pulling = false;
        hand.close();
        show(view.closed());
        return true;
    }

    /** Lights these drawers; where none of them is in the cabinet in view, shows the first cabinet that has one. */
    public void light(Set<String> drawers) {
        DrawersView lit = view.lighting(drawers);
        boolean inView = lit.cabinet().map(lit::litIn).orElse(0L) > 0;
        Optional<CabinetPlan> other = inView
                ? Optional.empty()
                : lit.cabinets().stream().filter(p -> lit.litIn(p) > 0).findFirst();
        show(other.filter(p -> lit.open() == null)
                .map(p -> lit.choosing(p.id()))
                .orElse(lit));
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, thrown -> {
            pulling = false;
            show(view.troubled(String.valueOf(thrown.getMessage())));
        });
    }

    private void show(DrawersView now) {
        view = now;
        listener.accept(now);
    }
}
