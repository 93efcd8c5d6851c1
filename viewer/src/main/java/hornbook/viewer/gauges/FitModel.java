package hornbook.viewer.gauges;

import hornbook.indexer.fit.FitAnswer;
import hornbook.indexer.fit.FitQuestion;
import hornbook.viewer.gauges.FitAsked.Field;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** What on hand can be made to fit, without a widget. */
public final class FitModel {
    private static final int MOST_OFFERED = 6;

    private final Function<FitQuestion, FitAnswer> fit;
    private final Supplier<List<PieceKind>> kinds;
    private final FitFrom from;
    private final Latest asking;
    private final Latest filling;
    private Consumer<FitAsked> fill = asked -> {};
    private Consumer<FitView> listener = view -> {};
    private FitView view = FitView.NOTHING;

    /**
     * @param fit the planner; asked beside the window
     * @param kinds all kinds that can be asked for, likewise
     * @param from what another record fills the fields with, likewise
     */
    public FitModel(Work work, Function<FitQuestion, FitAnswer> fit, Supplier<List<PieceKind>> kinds, FitFrom from) {
        this.fit = fit;
        this.kinds = kinds;
        this.from = from;
        this.filling = work.latest();
        this.asking = work.latest();
    }

    FitView view() {
        return view;
    }

    void onChange(Consumer<FitView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** @param filled is told when the fields were filled from another record */
    void onFill(Consumer<FitAsked> filled) {
        fill = filled;
    }

    /**
     * Fills the fields from another record, and asks.
     *
     * @param kind of the record, as {@code find} names it
     */
    public void about(String kind, String id) {
        filling.ask(
                progress -> from.of(kind, id),
                new Ends<>(
                        this::fill,
                        thrown -> show(
                                new FitView(FitAsked.NOTHING, List.of(), null, String.valueOf(thrown.getMessage())))));
    }

    private void fill(FitAsked asked) {
        change(before -> asked);
        fill.accept(asked);
    }

    /** A field has changed. */
    void change(UnaryOperator<FitAsked> field) {
        FitAsked asked = field.apply(view.asked());
        if (asked.at(Field.KIND).isBlank()) {
            asking.cancel();
            show(new FitView(asked, List.of(), null, null));
            return;
        }
        view = new FitView(asked, view.offered(), view.answer(), view.trouble());
        asking.ask(
                progress -> answered(asked),
                new Ends<>(
                        this::show,
                        thrown -> show(new FitView(asked, List.of(), null, String.valueOf(thrown.getMessage())))));
    }

    /** Asks again; the shop may have changed. */
    void refresh() {
        change(asked -> asked);
    }

    private FitView answered(FitAsked asked) {
        List<PieceKind> all = kinds.get();
        Optional<PieceKind> chosen =
                all.stream().filter(kind -> kind.named(asked.at(Field.KIND))).findFirst();
        if (chosen.isEmpty()) {
            List<PieceKind> meant = all.stream()
                    .filter(kind -> kind.meantBy(asked.at(Field.KIND)))
                    .limit(MOST_OFFERED)
                    .toList();
            return new FitView(
                    asked, meant, null, meant.isEmpty() ? "No kind of part or supply is called that." : null);
        }
        return new FitView(
                asked,
                List.of(),
                fit.apply(asked.with(Field.KIND, chosen.get().id()).question()),
                null);
    }

    private void show(FitView now) {
        view = now;
        listener.accept(now);
    }
}
