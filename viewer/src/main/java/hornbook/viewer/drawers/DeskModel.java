package hornbook.viewer.drawers;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.stock.CabinetBook;
import hornbook.shared.stock.PlaceBook;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is set up before the cabinets, without a widget: a new cabinet or place, and labels to print. */
public final class DeskModel {
    private final Work work;
    private final CabinetBook cabinets;
    private final PlaceBook places;
    private final LabelPrint labels;
    private Consumer<DeskView> listener = view -> {};
    private DeskView view = DeskView.NOTHING;
    private Consumer<Answers> answered = answers -> {};

    public DeskModel(Work work, CabinetBook cabinets, PlaceBook places, LabelPrint labels) {
        this.work = work;
        this.cabinets = cabinets;
        this.places = places;
        this.labels = labels;
    }

    DeskView view() {
        return view;
    }

    void onChange(Consumer<DeskView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Lays the label of a drawer aside to be printed. */
    void layAside(String drawer) {
        Set<String> all = new LinkedHashSet<>(view.toPrint());
        all.add(drawer);
        show(view.printing(List.copyOf(all)));
    }

    /** Asks how these labels are to be printed, or those laid aside where none are named. */
    void print(List<String> drawers) {
        List<String> all = drawers.isEmpty() ? view.toPrint() : drawers;
        answered = answers -> printed(all, answers);
        show(view.asking(labels.ask(all.size())));
    }

    private void printed(List<String> drawers, Answers answers) {
        work.read(
                progress -> labels.print(drawers, answers),
                new Ends<>(
                        said -> show(view.printing(view.toPrint().stream()
                                        .filter(drawer -> !drawers.contains(drawer))
                                        .toList())
                                .saying(said)),
                        this::failed));
    }

    /** Asks how a new cabinet is built. @param then told once it stands */
    void cabinet(Runnable then) {
        ask(
                new Ask(
                        "A cabinet with drawers in rows and columns",
                        "Set it up",
                        Field.text("name", "What you call it", ""),
                        Field.number("rows", "Rows", ""),
                        Field.number("columns", "Drawers in a row", ""),
                        Field.text("where", "Where it stands", "")),
                answers -> cabinets.add(
                        answers.needed("name", "the name"),
                        answers.whole("rows", "rows"),
                        answers.whole("columns", "columns"),
                        answers.text("where")),
                then);
    }

    /** Asks what a new place is that is no drawer. @param then told once it is there */
    void place(Runnable then) {
        ask(
                new Ask(
                        "A hook, a shelf, a tube, a horn kept for parts",
                        "Set it up",
                        Field.text("name", "What you call it", ""),
                        Field.choice(
                                "kind",
                                "It is a",
                                Stream.of("hook", "shelf", "tube", "parts horn", "rack", "box", "bench")
                                        .map(kind -> new Choice(kind, kind))
                                        .toList()),
                        Field.text("where", "Where it is", ""),
                        Field.text("note", "What is to be said of it", "")),
                answers -> places.add(
                        answers.needed("name", "the name"),
                        answers.text("kind"),
                        answers.text("where"),
                        null,
                        answers.text("note")),
                then);
    }

    private void ask(Ask ask, Function<Answers, Deed> deed, Runnable then) {
        answered = answers -> work.write(
                progress -> deed.apply(answers),
                new Ends<>(
                        done -> {
                            show(view.saying(null));
                            then.run();
                        },
                        this::failed));
        show(view.asking(ask));
    }

    void answer(Answers answers) {
        answered.accept(answers);
    }

    /** Leaves the question; whether there was one. */
    boolean leave() {
        if (view.ask() == null) {
            return false;
        }
        show(view.saying(null));
        return true;
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(DeskView now) {
        view = now;
        listener.accept(now);
    }
}
