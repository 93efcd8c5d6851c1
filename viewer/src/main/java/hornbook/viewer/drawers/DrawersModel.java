package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.Furniture;
import hornbook.shared.stock.Stock;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** What the screen Drawers knows and does, without a widget. */
public final class DrawersModel {
    private final Furniture furniture;
    private final Stock stock;
    private final Latest plans;
    private final Latest cards;
    private Consumer<DrawersView> listener = view -> {};
    private DrawersView view = DrawersView.NOTHING;

    public DrawersModel(Work work, Furniture furniture, Stock stock) {
        this.furniture = furniture;
        this.stock = stock;
        this.plans = work.latest();
        this.cards = work.latest();
    }

    DrawersView view() {
        return view;
    }

    /** The one who draws; told of each change, and of what there is now. */
    void onChange(Consumer<DrawersView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks again how the cabinets look, and what is in the open drawer. */
    void refresh() {
        plans.ask(progress -> furniture.plans(), ends(this::plansCame));
        DrawerCard open = view.open();
        if (open != null) {
            open(open.id());
        }
    }

    private void plansCame(List<CabinetPlan> now) {
        show(view.with(now));
    }

    void choose(String cabinet) {
        if (!cabinet.equals(view.chosen())) {
            show(view.choosing(cabinet));
        }
    }

    /** Pulls a drawer, or looks at another place; brings its cabinet into view. */
    public void open(String drawer) {
        cards.ask(progress -> stock.drawer(drawer), ends(card -> opened(drawer, card)));
    }

    private void opened(String drawer, Optional<DrawerCard> card) {
        show(card.map(view::opening).orElseGet(() -> view.troubled("There is no drawer " + drawer + " any more.")));
    }

    /** Pushes the drawer in again, if one is open. */
    boolean close() {
        if (view.open() == null) {
            return false;
        }
        cards.cancel();
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
        return new Ends<>(answered, thrown -> show(view.troubled(String.valueOf(thrown.getMessage()))));
    }

    private void show(DrawersView now) {
        view = now;
        listener.accept(now);
    }
}
