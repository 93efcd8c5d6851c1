package hornbook.viewer.drawers;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.stock.CabinetBook;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** What is set up before the cabinets, without a widget: a new cabinet, and labels to print. */
public final class DeskModel {
    private final Work work;
    private final CabinetBook cabinets;
    private final LabelPrint labels;
    private Consumer<DeskView> listener = view -> {};
    private DeskView view = DeskView.NOTHING;
    private Consumer<Answers> answered = answers -> {};

    public DeskModel(Work work, CabinetBook cabinets, LabelPrint labels) {
        this.work = work;
        this.cabinets = cabinets;
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
        answered = answers -> work.write(
                progress -> cabinets.add(
                        answers.needed("name", "the name"),
                        answers.whole("rows", "rows"),
                        answers.whole("columns", "columns"),
                        answers.text("where")),
                new Ends<>(
                        deed -> {
                            show(view.saying(null));
                            then.run();
                        },
                        this::failed));
        show(view.asking(new Ask(
                "A cabinet with drawers in rows and columns",
                "Set it up",
                Field.text("name", "What you call it", ""),
                Field.number("rows", "Rows", ""),
                Field.number("columns", "Drawers in a row", ""),
                Field.text("where", "Where it stands", ""))));
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
