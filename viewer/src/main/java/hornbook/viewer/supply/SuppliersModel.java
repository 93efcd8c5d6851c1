package hornbook.viewer.supply;

import hornbook.shared.restock.OrderBook;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.SupplierBook;
import hornbook.shared.supply.SupplierCard;
import hornbook.shared.supply.Suppliers;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Knows who sells to the shop, and writes down what is said of them, without a widget. */
public final class SuppliersModel {
    private final Work work;
    private final Latest asking;
    private final Suppliers suppliers;
    private final SupplierBook book;
    private final OrderBook verdicts;
    private Consumer<SuppliersView> listener = view -> {};
    private SuppliersView view = SuppliersView.NOTHING;
    private Consumer<Answers> answered = answers -> {};

    public SuppliersModel(Work work, Suppliers suppliers, SupplierBook book, OrderBook verdicts) {
        this.work = work;
        this.asking = work.latest();
        this.suppliers = suppliers;
        this.book = book;
        this.verdicts = verdicts;
    }

    SuppliersView view() {
        return view;
    }

    void onChange(Consumer<SuppliersView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks again who there is. */
    public void refresh() {
        asking.ask(progress -> suppliers.all(), new Ends<>(all -> show(view.with(all)), this::failed));
    }

    void choose(String supplier) {
        show(view.choosing(supplier));
    }

    void askNew() {
        show(view.choosing(""));
        ask(SupplierQuestions.NEW, answers -> doing(() -> book.add(SupplierQuestions.said(answers))));
    }

    void askChange() {
        view.open()
                .ifPresent(now -> ask(
                        SupplierQuestions.change(now),
                        answers -> doing(() -> book.change(now.id(), SupplierQuestions.changed(answers, now)))));
    }

    void askVerdict() {
        view.open().ifPresent(now -> ask(SupplierQuestions.verdict(now), answers -> judge(now, answers)));
    }

    private void judge(SupplierCard now, Answers answers) {
        Verdict verdict = Verdict.valueOf(answers.text("verdict"));
        doing(() -> verdicts.supplier(now.id(), verdict, answers.text("why")));
    }

    /** Nothing more is bought there. */
    void retire() {
        view.open().ifPresent(now -> doing(() -> book.retire(now.id())));
    }

    private void ask(Ask ask, Consumer<Answers> then) {
        answered = then;
        show(view.asking(ask));
    }

    void answer(Answers answers) {
        answered.accept(answers);
    }

    private void doing(Supplier<Deed> deed) {
        work.write(
                progress -> deed.get(),
                new Ends<>(
                        done -> {
                            show(view.asking(null));
                            refresh();
                        },
                        this::failed));
    }

    /** Leaves the question, or the open supplier; whether there was one. */
    public boolean back() {
        if (view.ask() == null && view.chosen().isEmpty()) {
            return false;
        }
        show(view.ask() != null ? view.asking(null) : view.choosing(""));
        return true;
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(SuppliersView now) {
        view = now;
        listener.accept(now);
    }
}
